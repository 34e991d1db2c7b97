/**
 * Cholesky factorisation A = L·Lᵀ of a symmetric positive definite matrix stored row by row.
 * Only the lower triangle of `matrix` is read. Null if A is not positive definite.
 */
export interface CholeskyFactor {
  readonly size: number;
  /** Lower triangle of L packed row by row: entry (i, j) at i·(i+1)/2 + j. Half the memory, which is what limits a solve. */
  readonly lower: Float64Array;
}

/** Four running sums: one alone waits for itself at every step. */
const dotOf = (a: Float64Array, atA: number, b: Float64Array, atB: number, count: number): number => {
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  let k = 0;
  for (; k + 3 < count; k += 4) {
    s0 += a[atA + k]! * b[atB + k]!;
    s1 += a[atA + k + 1]! * b[atB + k + 1]!;
    s2 += a[atA + k + 2]! * b[atB + k + 2]!;
    s3 += a[atA + k + 3]! * b[atB + k + 3]!;
  }
  for (; k < count; k++) s0 += a[atA + k]! * b[atB + k]!;
  return s0 + s1 + (s2 + s3);
};

export const choleskyFactor = (matrix: Float64Array, size: number): CholeskyFactor | null => {
  const lower = new Float64Array((size * (size + 1)) / 2);
  for (let i = 0, rowI = 0; i < size; rowI += ++i) {
    for (let j = 0, rowJ = 0; j <= i; rowJ += ++j) {
      const rest = matrix[i * size + j]! - dotOf(lower, rowI, lower, rowJ, j);
      if (i !== j) lower[rowI + j] = rest / lower[rowJ + j]!;
      else if (rest > 0) lower[rowI + i] = Math.sqrt(rest);
      else return null;
    }
  }
  return { size, lower };
};

/** Solves L·y = b in place: `values` from `at` on hold b before and y after. */
export const forwardSubstituteInPlace = (
  { size, lower }: CholeskyFactor,
  values: Float64Array,
  at: number
): void => {
  for (let i = 0, row = 0; i < size; row += ++i)
    values[at + i] = (values[at + i]! - dotOf(lower, row, values, at, i)) / lower[row + i]!;
};

/** Solves L·y = b. With y for two right sides, b₁ᵀA⁻¹b₂ is their dot product. */
export const forwardSubstitute = (factor: CholeskyFactor, b: Float64Array): Float64Array => {
  const y = Float64Array.from(b);
  forwardSubstituteInPlace(factor, y, 0);
  return y;
};

export const dot = (a: Float64Array, b: Float64Array): number => dotOf(a, 0, b, 0, a.length);

/** Solves Lᵀ·x = y in place. */
export const backSubstituteInPlace = ({ size, lower }: CholeskyFactor, values: Float64Array): void => {
  for (let i = size - 1; i >= 0; i--) {
    const row = (i * (i + 1)) / 2;
    const value = values[i]! / lower[row + i]!;
    values[i] = value;
    for (let k = 0; k < i; k++) values[k]! -= value * lower[row + k]!;
  }
};
