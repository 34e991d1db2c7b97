/**
 * Bz of many dipoles on one horizontal plane, sampled where it is asked for and interpolated between: a vehicle that passes
 * asks for the same places again and again. Lagrange's cubic through four nodes a side; with steps of a third of the
 * distance to the dipoles it is good to about a percent of the strongest field, at the corners of a mat 3.5 (tests). Beyond `MARGIN` the
 * dipoles count as one.
 */
import { DIPOLE, dipoleFieldAt, type Dipoles } from './dipoles';

export interface FieldMap {
  /** Writes Bz over µ0/4π at (x, y) on the plan into `into`: in phase, and a quarter period ahead. */
  at(x: number, y: number, into: Float64Array): void;
}

const MARGIN = 3;
const LARGEST_STEP = 0.22;
const STEP_PER_CLEARANCE = 1 / 3;

/** Lagrange's weights of the nodes −1, 0, 1, 2 at t in [0, 1]. */
const cubic = (t: number, weights: Float64Array): void => {
  weights[0] = (-t * (t - 1) * (t - 2)) / 6;
  weights[1] = ((t + 1) * (t - 1) * (t - 2)) / 2;
  weights[2] = (-(t + 1) * t * (t - 2)) / 2;
  weights[3] = ((t + 1) * t * (t - 1)) / 6;
};

/** All of them as one, in the middle of their strength. */
const lumped = (dipoles: Dipoles): Dipoles => {
  const sum = new Float64Array(DIPOLE);
  let strength = 0;
  for (let at = 0; at < dipoles.length; at += DIPOLE) {
    const weight = Math.abs(dipoles[at + 3]!) + Math.abs(dipoles[at + 4]!);
    strength += weight;
    for (let k = 0; k < 3; k++) sum[k]! += weight * dipoles[at + k]!;
    sum[3]! += dipoles[at + 3]!;
    sum[4]! += dipoles[at + 4]!;
  }
  for (let k = 0; k < 3; k++) sum[k]! /= strength || 1;
  return sum;
};

const extentOf = (dipoles: Dipoles, axis: 0 | 1): readonly [number, number] => {
  let low = Infinity;
  let high = -Infinity;
  for (let at = axis; at < dipoles.length; at += DIPOLE) {
    low = Math.min(low, dipoles[at]!);
    high = Math.max(high, dipoles[at]!);
  }
  return [low - MARGIN, high + MARGIN];
};

const makeMap = (dipoles: Dipoles, z: number, clearance: number): FieldMap => {
  const step = Math.min(LARGEST_STEP, STEP_PER_CLEARANCE * clearance);
  const [left, right] = extentOf(dipoles, 0);
  const [near, far] = extentOf(dipoles, 1);
  const columns = Math.ceil((right - left) / step) + 1;
  const rows = Math.ceil((far - near) / step) + 1;
  const inPhase = new Float64Array(columns * rows).fill(NaN);
  const ahead = new Float64Array(columns * rows);
  const one = lumped(dipoles);
  const value = new Float64Array(2);
  const across = new Float64Array(4);
  const along = new Float64Array(4);
  return {
    at: (x, y, into) => {
      const u = (x - left) / step;
      const v = (y - near) / step;
      const i = Math.floor(u);
      const j = Math.floor(v);
      if (!(i >= 1 && j >= 1 && i + 2 < columns && j + 2 < rows)) {
        dipoleFieldAt(one, x, y, z, into);
        return;
      }
      cubic(u - i, across);
      cubic(v - j, along);
      let real = 0;
      let imaginary = 0;
      for (let a = 0; a < 4; a++)
        for (let b = 0; b < 4; b++) {
          const node = (i + a - 1) * rows + j + b - 1;
          if (Number.isNaN(inPhase[node])) {
            dipoleFieldAt(dipoles, left + (i + a - 1) * step, near + (j + b - 1) * step, z, value);
            inPhase[node] = value[0]!;
            ahead[node] = value[1]!;
          }
          const weight = across[a]! * along[b]!;
          real += weight * inPhase[node]!;
          imaginary += weight * ahead[node]!;
        }
      into[0] = real;
      into[1] = imaginary;
    }
  };
};

/** Closer to the dipoles than this the field is not smooth enough to be sampled, metres. */
const NEAREST = 0.15;

/** By the dipoles themselves, which nobody changes, and the height. */
const maps = new WeakMap<Dipoles, Map<number, FieldMap | null>>();

/** Null where the plane is too near to the dipoles. */
export const fieldMapOf = (dipoles: Dipoles, z: number): FieldMap | null => {
  const known = maps.get(dipoles) ?? new Map<number, FieldMap | null>();
  maps.set(dipoles, known);
  const found = known.get(z);
  if (found !== undefined) return found;
  let clearance = Infinity;
  for (let at = 0; at < dipoles.length; at += DIPOLE)
    clearance = Math.min(clearance, Math.abs(z - dipoles[at + 2]!));
  const made = clearance < NEAREST || dipoles.length === 0 ? null : makeMap(dipoles, z, clearance);
  known.set(z, made);
  return made;
};
