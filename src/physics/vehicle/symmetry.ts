/**
 * A vehicle whose parts mirror onto themselves left to right falls into two problems of half the size.
 *
 * Mirrored at x = 0 a plate's stream function ψ(x, y) becomes −ψ(−x, y), the current of a ring across the vehicle's axis
 * stays, and that of any other ring in the middle turns round. The matrix does not mix currents that the mirror keeps with
 * those that it reverses. Unknowns of either kind are (φᵢ ± φⱼ)/√2 of mirrored nodes, or φᵢ alone: an orthonormal change
 * of unknowns, exact.
 */
import { choleskyFactor, forwardSubstituteInPlace, type CholeskyFactor } from '../numeric/cholesky';
import type { PlateMesh } from './plate-mesh';
import type { RingPath } from './ring';

export interface SymmetryBlock {
  /** Unknowns i and j of each member; j is −1 for one that stands alone. */
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Sign of j's share. */
  readonly sign: 1 | -1;
  readonly factor: CholeskyFactor;
}

type Pair = readonly [number, number];

/** Members of the two blocks, or of one block with everything where there is no symmetry. */
const members = (
  plates: readonly PlateMesh[],
  rings: readonly RingPath[]
): readonly { readonly pairs: readonly Pair[]; readonly sign: 1 | -1 }[] => {
  const symmetric =
    plates.every(({ plate }) => plate.x === 0) &&
    rings.every(({ ring }) => ring.x === 0 && isAcrossOrAlong(ring.axis));
  const firstRing = plates.reduce((sum, { unknowns }) => sum + unknowns, 0);
  if (!symmetric) {
    const all = Array.from({ length: firstRing + rings.length }, (_, i): Pair => [i, -1]);
    return [{ pairs: all, sign: 1 }];
  }
  const even: Pair[] = [];
  const odd: Pair[] = [];
  let offset = 0;
  for (const { xs, ys, index, unknowns } of plates) {
    const nx = xs.length - 1;
    const at = (p: number, q: number) => offset + index[p * ys.length + q]!;
    for (let q = 1; q < ys.length - 1; q++)
      for (let p = 1; 2 * p <= nx; p++) {
        if (2 * p === nx) even.push([at(p, q), -1]);
        else {
          even.push([at(p, q), at(nx - p, q)]);
          odd.push([at(p, q), at(nx - p, q)]);
        }
      }
    offset += unknowns;
  }
  rings.forEach(({ ring }, k) => (isAcross(ring.axis) ? odd : even).push([firstRing + k, -1]));
  return [
    { pairs: even, sign: 1 as const },
    { pairs: odd, sign: -1 as const }
  ].filter(({ pairs }) => pairs.length > 0);
};

type Axis = readonly [number, number, number];
const isAcross = ([, y, z]: Axis): boolean => y === 0 && z === 0;
const isAcrossOrAlong = (axis: Axis): boolean => isAcross(axis) || axis[0] === 0;

/** Factors the symmetric matrix (lower triangle of `size` rows) block by block; null if it is not positive definite. */
export const factorBlocks = (
  matrix: Float64Array,
  size: number,
  plates: readonly PlateMesh[],
  rings: readonly RingPath[]
): readonly SymmetryBlock[] | null => {
  const blocks = members(plates, rings).map(({ pairs, sign }) => {
    const entry = (i: number, j: number) => matrix[i >= j ? i * size + j : j * size + i]!;
    /** Entry between unknown i and member [j, m]. */
    const half = (i: number, [j, m]: Pair): number =>
      m < 0 ? entry(i, j) : (entry(i, j) + sign * entry(i, m)) * Math.SQRT1_2;
    const block = new Float64Array(pairs.length ** 2);
    pairs.forEach(([i, l], row) => {
      for (let column = 0; column <= row; column++) {
        const pair = pairs[column]!;
        block[row * pairs.length + column] =
          l < 0 ? half(i, pair) : (half(i, pair) + sign * half(l, pair)) * Math.SQRT1_2;
      }
    });
    const factor = choleskyFactor(block, pairs.length);
    if (!factor) return null;
    return {
      first: Int32Array.from(pairs, ([i]) => i),
      second: Int32Array.from(pairs, ([, j]) => j),
      sign,
      factor
    };
  });
  return blocks.every((block) => block !== null) ? blocks : null;
};

/** y with yᵀ·y = φᵀ·A⁻¹·φ, the blocks one after the other. */
export const reduceBlocks = (blocks: readonly SymmetryBlock[], flux: Float64Array): Float64Array => {
  const reduced = new Float64Array(flux.length);
  let offset = 0;
  for (const { first, second, sign, factor } of blocks) {
    for (let k = 0; k < factor.size; k++) {
      const j = second[k]!;
      reduced[offset + k] = j < 0 ? flux[first[k]!]! : (flux[first[k]!]! + sign * flux[j]!) * Math.SQRT1_2;
    }
    forwardSubstituteInPlace(factor, reduced, offset);
    offset += factor.size;
  }
  return reduced;
};
