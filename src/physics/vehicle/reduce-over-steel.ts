/**
 * What a compressed vehicle makes of a loop over steel: the currents that the loop drives there are dipoles, further sources
 * of the field that is sampled. Its images in the steel are the business of its form.
 */
import { dipolesInFrame, type Dipoles } from '../field/dipoles';
import { inFrame, type Filaments, type Placement } from '../field/filaments';
import { FIELD, FIELD_AHEAD, room } from '../field/room';
import type { CompressedBody } from './compressed';
import { dipolesField, dipolesThroughRing } from './flux';
import { reducedBy, sampleWires } from './reduce';

/** Samples of a loop over steel: its wires and the currents that it drives there, in phase and a quarter period ahead. */
export interface SteelSamples {
  readonly inPhase: Float64Array;
  readonly ahead: Float64Array;
}

export const sampleOverSteel = (
  body: CompressedBody,
  filaments: Filaments,
  dipoles: Dipoles | null,
  placement: Placement
): SteelSamples => {
  const inPhase = new Float64Array(body.samples);
  const ahead = new Float64Array(body.samples);
  sampleWires(body, inFrame(filaments, placement), filaments.length, inPhase);
  if (!dipoles) return { inPhase, ahead };
  const local = dipolesInFrame(dipoles, placement);
  let at = 0;
  for (const plate of body.plates) {
    const count = plate.pointX.length;
    const fields = [room(FIELD, count), room(FIELD_AHEAD, count)] as const;
    dipolesField(dipoles, local, plate, placement, fields);
    for (let i = 0; i < count; i++) {
      inPhase[at + i]! += fields[0][i]!;
      ahead[at + i]! += fields[1][i]!;
    }
    at += count;
  }
  for (const ring of body.rings) {
    const flux = dipolesThroughRing(ring, local);
    inPhase[at]! += flux[0];
    ahead[at]! += flux[1];
    at++;
  }
  return { inPhase, ahead };
};

/** z of the two phases. */
export const reducedOverSteel = (body: CompressedBody, samples: SteelSamples): readonly Float64Array[] => {
  const phases = [samples.inPhase, samples.ahead];
  const both = reducedBy(body, 2, (k, into) => {
    into.set(phases[k]!);
  });
  return [both.subarray(0, body.rank), both.subarray(body.rank)];
};
