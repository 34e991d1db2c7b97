/**
 * Cholesky factorisation A = L·Lᵀ of a symmetric positive definite matrix stored row by row.
 * Only the lower triangle of `matrix` is read. Throws if A is not positive definite.
 */
export interface CholeskyFactor {
  readonly size: number;
  /** Lower triangle of L, row by row, full square storage. */
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

export const choleskyFactor = (matrix: Float64Array, size: number): CholeskyFactor => {
  const lower = new Float64Array(matrix);
  for (let i = 0; i < size; i++) {
    const rowI = i * size;
    for (let j = 0; j <= i; j++) {
      const rowJ = j * size;
      const sum = lower[rowI + j]! - dotOf(lower, rowI, lower, rowJ, j);
      if (i !== j) lower[rowI + j] = sum / lower[rowJ + j]!;
      else if (sum > 0) lower[rowI + i] = Math.sqrt(sum);
      else throw new RangeError(`matrix is not positive definite at row ${i}`);
    }
  }
  return { size, lower };
};

/** Solves L·y = b. With y for two right sides, b₁ᵀA⁻¹b₂ is their dot product. */
export const forwardSubstitute = ({ size, lower }: CholeskyFactor, b: Float64Array): Float64Array => {
  const y = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const row = i * size;
    y[i] = (b[i]! - dotOf(lower, row, y, 0, i)) / lower[row + i]!;
  }
  return y;
};

export const dot = (a: Float64Array, b: Float64Array): number => dotOf(a, 0, b, 0, a.length);
