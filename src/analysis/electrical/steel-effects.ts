/**
 * What one vehicle does to a circuit over steel at many places, by its compressed form: with the steel's currents as further
 * sources of the field that is sampled, and with a form of its own for the images in each plane that it stands over.
 */
import type { Placement } from '#physics/field/filaments';
import type { CompressedBody } from '#physics/vehicle/compressed';
import { reducedOverSteel, sampleOverSteel, type SteelSamples } from '#physics/vehicle/reduce-over-steel';
import type { Steps } from '../steps';
import type { VehicleBody } from './bodies';
import type { SolvedCircuit } from './circuit-model';
import { compressedOf, compressedOver } from './compressed-bodies';
import { standing } from './standing';
import { blended, complexChange } from './vehicle-effect';

/** −ΔL/L at the terminals at every place; null for a vehicle that cannot be compressed. A step is one place. */
export function* responsesOverSteel(
  circuit: SolvedCircuit,
  vehicle: VehicleBody,
  placements: readonly Placement[],
  onShare: (share: number) => number | void
): Steps<Float64Array | null> {
  const steel = circuit.steel!;
  const dipoles = steel.dipoles();
  const plain = yield* compressedOf(vehicle);
  if (!plain) return null;
  const responses = new Float64Array(placements.length);
  for (const [k, placement] of placements.entries()) {
    const stands = standing(vehicle.parts, placement, steel.pieces, circuit.frequency);
    const over = stands && (yield* compressedOver(vehicle, stands.depth));
    if (stands && !over) return null;
    // with and without images a vehicle is sampled alike
    const samples = circuit.input.loops.map(({ model }, loop) =>
      sampleOverSteel(plain, model.filaments, dipoles[loop]!, placement)
    );
    const change = blended(stands, (depth) => changeBy(depth === null ? plain : over!, samples));
    responses[k] = 1 - circuit.inductanceWith((i, j) => change[i]![j]!) / circuit.inductance;
    yield onShare(k / placements.length);
  }
  return responses;
}

const changeBy = (form: CompressedBody, samples: readonly SteelSamples[]) =>
  complexChange(
    samples.map((each) => {
      const [inPhase, ahead] = reducedOverSteel(form, each);
      return { inPhase: inPhase!, ahead: ahead! };
    })
  );
