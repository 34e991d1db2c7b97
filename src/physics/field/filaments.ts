/**
 * Straight wires as sources of field: the law of Biot and Savart for a finite straight wire and its vector potential, both
 * closed form. A column of wires counts at its mean height: they lie within millimetres of one another, whoever asks is
 * decimetres away. A round loop is a polygon of equal area with SIDES sides: its moments agree up to order SIDES, and
 * what differs dies away over height h as e^(−SIDES·h/r).
 */
import { meanHeight, type Run, type Winding } from '../inductance/winding';
import { FRAME, FROM_END, room } from './room';

/** A place on the plan, and a direction in degrees, 90 = along +y: the frame that a body has as its own. */
export interface Placement {
  readonly x: number;
  readonly y: number;
  readonly heading: number;
}

/** Straight wires in the plan: x, y, ux, uy, length, height, number of wires, one after the other. */
export type Filaments = Float64Array;
export const STRIDE = 7;
const SIDES = 24;
/** Enough to find where a response is strongest. */
export const FEW_SIDES = 10;

const polygonOf = (run: Extract<Run, { kind: 'round' }>, sides: number): number[] => {
  const step = (2 * Math.PI) / sides;
  const radius = run.radius * Math.sqrt(step / Math.sin(step));
  const length = 2 * radius * Math.sin(step / 2);
  return Array.from({ length: sides }, (_, k) => {
    const direction = step * (k + 0.5) + Math.PI / 2;
    return [
      run.x + radius * Math.cos(step * k),
      run.y + radius * Math.sin(step * k),
      Math.cos(direction),
      Math.sin(direction),
      length,
      meanHeight(run),
      run.heights.length
    ];
  }).flat();
};

export const filamentsOf = (winding: Winding, sides = SIDES): Filaments =>
  Float64Array.from(
    winding.runs.flatMap((run) =>
      run.kind === 'round'
        ? polygonOf(run, sides)
        : [run.x, run.y, run.ux, run.uy, run.length, meanHeight(run), run.heights.length]
    )
  );

/** The filaments as seen from a body: its frame has x to the right and y ahead. */
export const inFrame = (filaments: Filaments, { x, y, heading }: Placement): Filaments => {
  const turn = ((heading - 90) * Math.PI) / 180;
  const cosine = Math.cos(turn);
  const sine = Math.sin(turn);
  const turned = room(FRAME, filaments.length);
  turned.set(filaments);
  for (let at = 0; at < filaments.length; at += STRIDE) {
    const px = filaments[at]! - x;
    const py = filaments[at + 1]! - y;
    const ux = filaments[at + 2]!;
    const uy = filaments[at + 3]!;
    turned[at] = px * cosine + py * sine;
    turned[at + 1] = py * cosine - px * sine;
    turned[at + 2] = ux * cosine + uy * sine;
    turned[at + 3] = uy * cosine - ux * sine;
  }
  return turned;
};

/** The wire at `at` starts where the one before it ends, at the same height. */
const followsOn = (filaments: Filaments, at: number): boolean => {
  const before = at - STRIDE;
  const length = filaments[before + 4]!;
  return (
    filaments[before + 5] === filaments[at + 5] &&
    Math.abs(filaments[before]! + filaments[before + 2]! * length - filaments[at]!) < 1e-9 &&
    Math.abs(filaments[before + 1]! + filaments[before + 3]! * length - filaments[at + 1]!) < 1e-9
  );
};

/**
 * Bz over µ0/4π, per ampere, at many points of one height. Wires outside, points inside: this is the loop in which a
 * dragged vehicle spends its time, and it keeps one wire's constants at hand.
 */
export const verticalField = (
  filaments: Filaments,
  end: number,
  xs: Float64Array,
  ys: Float64Array,
  z: number,
  field: Float64Array
): void => {
  // distance of each point from the end of the wire before, which most often is the start of the next
  const fromEnd = room(FROM_END, xs.length);
  field.fill(0, 0, xs.length);
  for (let at = 0; at < end; at += STRIDE) {
    const x = filaments[at]!;
    const y = filaments[at + 1]!;
    const ux = filaments[at + 2]!;
    const uy = filaments[at + 3]!;
    const length = filaments[at + 4]!;
    const height = z - filaments[at + 5]!;
    const wires = filaments[at + 6]!;
    const heightSquare = height * height;
    const continues = at > 0 && followsOn(filaments, at);
    for (let k = 0; k < xs.length; k++) {
      const px = xs[k]! - x;
      const py = ys[k]! - y;
      const along = px * ux + py * uy;
      const beside = ux * py - uy * px;
      const rest = length - along;
      const square = beside * beside + heightSquare;
      const near = continues ? fromEnd[k]! : Math.sqrt(along * along + square);
      const far = Math.sqrt(rest * rest + square);
      fromEnd[k] = far;
      // (along/near + rest/far)/square with one division
      field[k]! += (wires * beside * (along * far + rest * near)) / (near * far * square);
    }
  }
};

/** A·d over µ0/4π, per ampere, for a step (dx, dy) at (x, y, z): horizontal wires have no vertical potential. */
export const potentialAlong = (
  filaments: Filaments,
  end: number,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number
): number => {
  let sum = 0;
  for (let at = 0; at < end; at += STRIDE) {
    const px = x - filaments[at]!;
    const py = y - filaments[at + 1]!;
    const ux = filaments[at + 2]!;
    const uy = filaments[at + 3]!;
    const facing = ux * dx + uy * dy;
    if (facing === 0) continue;
    const dz = z - filaments[at + 5]!;
    const along = px * ux + py * uy;
    const beside = ux * py - uy * px;
    const square = beside * beside + dz * dz;
    const rest = filaments[at + 4]! - along;
    // asinh(a/w) + asinh(b/w) as one logarithm, with the smaller addend of each root kept from cancelling
    const near = Math.abs(along) + Math.sqrt(along * along + square);
    const far = Math.abs(rest) + Math.sqrt(rest * rest + square);
    const potential = Math.log((along >= 0 ? near : square / near) * (rest >= 0 ? far / square : 1 / far));
    sum += filaments[at + 6]! * potential * facing;
  }
  return sum;
};
