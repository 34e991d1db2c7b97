/**
 * The field of straight wires in horizontal planes, every wire at its own height: the law of Biot and Savart for a finite
 * straight wire, closed form (any text on electromagnetism). With w from the axis, and `along` and `rest` the distances
 * of the foot point from the wire's ends,
 *   B = µ0·I/(4π·w)·(along/near + rest/far), round the wire.
 *
 * Within the wire's radius a the field falls to nothing on the axis as under a current spread evenly over the section,
 * w/a² in the place of 1/w: it is finite everywhere. At audio and radio frequencies the current crowds to the surface, and
 * the field inside is smaller than this.
 */
import { MU0 } from '../constants';
import type { Field, Points } from './points';

/** x, y, z of the start, ux, uy, length, current (A), radius; one wire after the other. */
export type StraightWires = Float64Array;
export const STRAIGHT = 8;

/** Adds the field of `wires`, tesla. */
export const addStraightField = (wires: StraightWires, points: Points, field: Field): void => {
  const { x: xs, y: ys, z: zs } = points;
  for (let at = 0; at < wires.length; at += STRAIGHT) {
    const x = wires[at]!;
    const y = wires[at + 1]!;
    const z = wires[at + 2]!;
    const ux = wires[at + 3]!;
    const uy = wires[at + 4]!;
    const length = wires[at + 5]!;
    const strength = (MU0 / (4 * Math.PI)) * wires[at + 6]!;
    const least = wires[at + 7]! * wires[at + 7]!;
    for (let k = 0; k < xs.length; k++) {
      const px = xs[k]! - x;
      const py = ys[k]! - y;
      const pz = zs[k]! - z;
      const along = px * ux + py * uy;
      const beside = ux * py - uy * px;
      const rest = length - along;
      const square = Math.max(beside * beside + pz * pz, least);
      const near = Math.sqrt(along * along + square);
      const far = Math.sqrt(rest * rest + square);
      // (along/near + rest/far)/square with one division
      const round = (strength * (along * far + rest * near)) / (near * far * square);
      // (ux, uy, 0) × (px, py, pz)
      field.x[k]! += round * uy * pz;
      field.y[k]! -= round * ux * pz;
      field.z[k]! += round * beside;
    }
  }
};
