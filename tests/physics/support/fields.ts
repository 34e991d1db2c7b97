/** Fields at single points, and what calculus says of them, by rules that are written here. */
import { noField, type FieldMaker } from '#physics/field/points';

export type Vector = readonly [number, number, number];

export const fieldAt = (sources: readonly FieldMaker[], [x, y, z]: Vector): Vector => {
  const field = noField(1);
  const points = { x: Float64Array.of(x), y: Float64Array.of(y), z: Float64Array.of(z) };
  for (const source of sources) source.add(points, field);
  return [field.x[0]!, field.y[0]!, field.z[0]!];
};

/** Central differences of eighth order (Fornberg 1988). */
const DIFFERENCES = [4 / 5, -1 / 5, 4 / 105, -1 / 280];

const slope = (value: (by: number) => number, step: number): number =>
  DIFFERENCES.reduce((sum, weight, k) => sum + weight * (value((k + 1) * step) - value(-(k + 1) * step)), 0) /
  step;

/** Divergence times the step, over the field's strength. */
export const relativeDivergence = (
  sources: readonly FieldMaker[],
  [x, y, z]: Vector,
  step: number
): number => {
  const sum =
    slope((by) => fieldAt(sources, [x + by, y, z])[0], step) +
    slope((by) => fieldAt(sources, [x, y + by, z])[1], step) +
    slope((by) => fieldAt(sources, [x, y, z + by])[2], step);
  return Math.abs(sum * step) / Math.hypot(...fieldAt(sources, [x, y, z]));
};

/** Nodes and weights of Gauss and Legendre's rule with five points (Abramowitz & Stegun 25.4.30, table 25.4). */
const RULE = [
  [0, 0.568888888888889],
  [0.538469310105683, 0.478628670499366],
  [-0.538469310105683, 0.478628670499366],
  [0.906179845938664, 0.236926885056189],
  [-0.906179845938664, 0.236926885056189]
] as const;

export const integral = (f: (t: number) => number, from: number, to: number, pieces: number): number => {
  const half = (to - from) / (2 * pieces);
  let sum = 0;
  for (let k = 0; k < pieces; k++)
    for (const [node, weight] of RULE) sum += weight * half * f(from + (2 * k + 1 + node) * half);
  return sum;
};

/** Of Bz through a level rectangle. */
export const fluxUp = (
  sources: readonly FieldMaker[],
  [left, right, near, far]: readonly [number, number, number, number],
  z: number,
  pieces: number
): number =>
  integral((x) => integral((y) => fieldAt(sources, [x, y, z])[2], near, far, pieces), left, right, pieces);
