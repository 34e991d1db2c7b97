/**
 * The currents that a loop drives in a vehicle of perfect conductors: A·i + φ = 0, the flux through every part stays
 * nought. Of a plate its stream function at the nodes, of a ring its current; a ring of real metal as the perfect one that
 * answers alike (`ring.ts`), which is the part of its current that opposes the loop's.
 */
import type { RoundWire } from '../field/round-field';
import { addRoundField } from '../field/round-field';
import type { FieldMaker } from '../field/points';
import { sheetSource, type SheetCurrent } from '../field/sheet-field';
import { backSubstituteInPlace } from '../numeric/cholesky';
import type { Body } from './body';
import { reduceBlocks } from './symmetry';

export interface DrivenCurrents {
  /** In the order of the body's plates, in its frame; ψ in amperes. */
  readonly sheets: readonly SheetCurrent[];
  /** In the order of the body's rings, amperes, counter-clockwise about the ring's axis. */
  readonly rings: readonly number[];
}

/** −A⁻¹·φ in the order of the body's unknowns. */
export const oppose = ({ blocks }: Body, flux: Float64Array): Float64Array => {
  const reduced = reduceBlocks(blocks, flux);
  const currents = new Float64Array(flux.length);
  let offset = 0;
  for (const { first, second, sign, factor } of blocks) {
    const own = reduced.subarray(offset, offset + factor.size);
    backSubstituteInPlace(factor, own);
    for (let k = 0; k < factor.size; k++) {
      const j = second[k]!;
      const value = j < 0 ? own[k]! : own[k]! * Math.SQRT1_2;
      currents[first[k]!]! -= value;
      if (j >= 0) currents[j]! -= sign * value;
    }
    offset += factor.size;
  }
  return currents;
};

/** `flux` through every unknown, webers: see `flux.ts`. */
export const drivenBy = (body: Body, flux: Float64Array): DrivenCurrents => {
  const currents = oppose(body, flux);
  let offset = 0;
  const sheets = body.plates.map(({ plate, xs, ys, index, unknowns }): SheetCurrent => {
    const psi = Float64Array.from(index, (unknown) => (unknown < 0 ? 0 : currents[offset + unknown]!));
    offset += unknowns;
    return { xs, ys, z: plate.height, psi };
  });
  return { sheets, rings: body.rings.map((_, k) => currents[offset + k]!) };
};

/** The field of these currents, in the body's frame. */
export const drivenSources = (body: Body, { sheets, rings }: DrivenCurrents): readonly FieldMaker[] => {
  const wires = body.rings.map(({ ring }, k): RoundWire => {
    const size = Math.hypot(...ring.axis);
    const [ax, ay, az] = ring.axis;
    return {
      x: ring.x,
      y: ring.y,
      z: ring.height,
      radius: ring.radius,
      thickness: ring.conductorRadius,
      axis: [ax / size, ay / size, az / size],
      current: rings[k]!
    };
  });
  const ofRings: FieldMaker = {
    add: (points, field) => {
      for (const wire of wires) addRoundField(wire, points, field);
    }
  };
  return [...sheets.map(sheetSource), ofRings];
};
