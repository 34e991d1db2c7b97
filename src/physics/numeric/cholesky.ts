/**
 * Cholesky factorisation A = L·Lᵀ of a symmetric positive definite matrix stored row by row.
 * Only the lower triangle of `matrix` is read. Throws if A is not positive definite.
 */
export interface CholeskyFactor {
  readonly size: number;
  /** Lower triangle of L, row by row, full square storage. */
  readonly lower: Float64Array;
}

export const choleskyFactor = (matrix: Float64Array, size: number): CholeskyFactor => {
  const lower = new Float64Array(matrix);
  for (let i = 0; i < size; i++) {
    const rowI = i * size;
    for (let j = 0; j <= i; j++) {
      const rowJ = j * size;
      let sum = lower[rowI + j]!;
      for (let k = 0; k < j; k++) sum -= lower[rowI + k]! * lower[rowJ + k]!;
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
    let sum = b[i]!;
    for (let k = 0; k < i; k++) sum -= lower[row + k]! * y[k]!;
    y[i] = sum / lower[row + i]!;
  }
  return y;
};

export const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
};
