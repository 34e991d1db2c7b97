/**
 * The network of `network.ts` for programs that solve it thousands of times: the same equations on flat arrays, and the
 * impedance alone. Complex numbers are pairs of entries, real part first.
 */
import { divide, type Complex } from '../numeric/complex';
import type { Chain } from './line';

/** Gauss with row pivoting, in place: `a` (size × size) is destroyed, `b` (size × columns) becomes the solution. */
const eliminate = (a: Float64Array, b: Float64Array, size: number, columns: number): void => {
  for (let k = 0; k < size; k++) {
    let pivot = k;
    let most = -1;
    for (let i = k; i < size; i++) {
      const at = 2 * (i * size + k);
      const norm = a[at]! * a[at]! + a[at + 1]! * a[at + 1]!;
      if (norm > most) [pivot, most] = [i, norm];
    }
    if (!(most > 0)) throw new RangeError('singular matrix');
    if (pivot !== k) {
      swapRows(a, size, k, pivot);
      swapRows(b, columns, k, pivot);
    }
    const at = 2 * (k * size + k);
    const [pr, pi] = [a[at]! / most, -a[at + 1]! / most];
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const from = 2 * (i * size + k);
      const [xr, xi] = [a[from]!, a[from + 1]!];
      if (xr === 0 && xi === 0) continue;
      const fr = xr * pr - xi * pi;
      const fi = xr * pi + xi * pr;
      subtractRow(a, size, i, k, fr, fi);
      subtractRow(b, columns, i, k, fr, fi);
    }
  }
  for (let k = 0; k < size; k++) {
    const at = 2 * (k * size + k);
    const norm = a[at]! * a[at]! + a[at + 1]! * a[at + 1]!;
    const [pr, pi] = [a[at]! / norm, -a[at + 1]! / norm];
    for (let j = 2 * k * columns; j < 2 * (k + 1) * columns; j += 2) {
      const [re, im] = [b[j]!, b[j + 1]!];
      b[j] = re * pr - im * pi;
      b[j + 1] = re * pi + im * pr;
    }
  }
};

const swapRows = (matrix: Float64Array, columns: number, i: number, k: number): void => {
  for (let j = 0; j < 2 * columns; j++) {
    const kept = matrix[2 * i * columns + j]!;
    matrix[2 * i * columns + j] = matrix[2 * k * columns + j]!;
    matrix[2 * k * columns + j] = kept;
  }
};

/** Row i less (fr + j·fi) times row k. */
const subtractRow = (
  matrix: Float64Array,
  columns: number,
  i: number,
  k: number,
  fr: number,
  fi: number
): void => {
  let to = 2 * i * columns;
  let from = 2 * k * columns;
  for (let j = 0; j < columns; j++, to += 2, from += 2) {
    const [re, im] = [matrix[from]!, matrix[from + 1]!];
    matrix[to]! -= fr * re - fi * im;
    matrix[to + 1]! -= fr * im + fi * re;
  }
};

/** What lies between a coil and the pull box, and how it is joined there. */
export interface FlatBranch {
  readonly chain: Chain;
  /** Strings are numbered from 0 without gaps; −1 for a coil whose string carries no current. */
  readonly string: number;
  readonly reversed: boolean;
}

/**
 * Closed rings drop out of the matrix of coils and rings: with V = 0 in the ring, Z_ij − Z_ir·Z_rj/Z_rr. In place; the
 * rings are the rows behind the first `coils`.
 */
export const eliminateRings = (z: Float64Array, size: number, coils: number): void => {
  for (let r = size - 1; r >= coils; r--) {
    const at = 2 * (r * size + r);
    const norm = z[at]! * z[at]! + z[at + 1]! * z[at + 1]!;
    const [pr, pi] = [z[at]! / norm, -z[at + 1]! / norm];
    for (let i = 0; i < r; i++) {
      const from = 2 * (i * size + r);
      const [xr, xi] = [z[from]!, z[from + 1]!];
      const fr = xr * pr - xi * pi;
      const fi = xr * pi + xi * pr;
      for (let j = 0; j < r; j++) {
        const to = 2 * (i * size + j);
        const row = 2 * (r * size + j);
        z[to]! -= fr * z[row]! - fi * z[row + 1]!;
        z[to + 1]! -= fr * z[row + 1]! + fi * z[row]!;
      }
    }
  }
};

/**
 * Impedance at the pull box, Ω; null where no string carries current. `z` holds the coils' impedances in its first rows
 * and columns, `stride` entries to a row.
 */
export const boxImpedance = (
  z: Float64Array,
  stride: number,
  branches: readonly FlatBranch[]
): Complex | null => {
  const used = branches.flatMap(({ string }, i) => (string < 0 ? [] : [i]));
  const size = used.length;
  if (size === 0) return null;
  const strings = 1 + Math.max(...used.map((i) => branches[i]!.string));
  const bottom = new Float64Array(2 * size * size);
  const currents = new Float64Array(2 * size * strings);
  for (let p = 0; p < size; p++) {
    const { chain, string, reversed } = branches[used[p]!]!;
    for (let q = 0; q < size; q++) {
      const from = 2 * (used[p]! * stride + used[q]!);
      const to = 2 * (p * size + q);
      const [re, im] = [z[from]!, z[from + 1]!];
      bottom[to] = chain.c.re * re - chain.c.im * im;
      bottom[to + 1] = chain.c.re * im + chain.c.im * re;
    }
    bottom[2 * (p * size + p)]! += chain.d.re;
    bottom[2 * (p * size + p) + 1]! += chain.d.im;
    currents[2 * (p * strings + string)] = reversed ? -1 : 1;
  }
  // coil currents that give each string one ampere
  eliminate(bottom, currents, size, strings);
  const between = new Float64Array(2 * strings * strings);
  for (let p = 0; p < size; p++) {
    const { chain, string, reversed } = branches[used[p]!]!;
    const sign = reversed ? -1 : 1;
    for (let t = 0; t < strings; t++) {
      let [re, im] = [0, 0];
      for (let q = 0; q < size; q++) {
        const at = 2 * (used[p]! * stride + used[q]!);
        const current = 2 * (q * strings + t);
        re += z[at]! * currents[current]! - z[at + 1]! * currents[current + 1]!;
        im += z[at]! * currents[current + 1]! + z[at + 1]! * currents[current]!;
      }
      const own = 2 * (p * strings + t);
      const [ir, ii] = [currents[own]!, currents[own + 1]!];
      const to = 2 * (string * strings + t);
      between[to]! += sign * (chain.a.re * re - chain.a.im * im + chain.b.re * ir - chain.b.im * ii);
      between[to + 1]! += sign * (chain.a.re * im + chain.a.im * re + chain.b.re * ii + chain.b.im * ir);
    }
  }
  const shares = new Float64Array(2 * strings);
  for (let s = 0; s < strings; s++) shares[2 * s] = 1;
  eliminate(between, shares, strings, 1);
  let [re, im] = [0, 0];
  for (let s = 0; s < strings; s++) {
    re += shares[2 * s]!;
    im += shares[2 * s + 1]!;
  }
  return divide({ re: 1, im: 0 }, { re, im });
};
