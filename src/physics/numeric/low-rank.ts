/**
 * A symmetric positive semidefinite matrix M as Wᵀ·W with few rows. Cholesky's method with the largest remaining pivot first
 * finds rows enough; turned to the principal axes of what they span, the strongest of them leave the least for their number
 * (Golub & Van Loan, *Matrix Computations*, pivoted Cholesky and the cyclic method of Jacobi; from memory of the text).
 */
import { dot } from './cholesky';

/** Of the given tail, how much the first step leaves: the second then chooses among more than it needs. */
const FINER = 0.1;

/**
 * `matrix` is stored row by row, all of it. The trace of M − Wᵀ·W is at most `tail`, in the units of M's diagonal. Rows
 * strongest first.
 */
export const lowRank = (matrix: Float64Array, size: number, tail: number): readonly Float64Array[] => {
  const rows = pivotedRows(matrix, size, FINER * tail);
  const turned = toPrincipalAxes(rows);
  let left = tail * (1 - FINER);
  let kept = turned.length;
  while (kept > 0) {
    const power = dot(turned[kept - 1]!, turned[kept - 1]!);
    if (power > left) break;
    left -= power;
    kept--;
  }
  return turned.slice(0, kept);
};

/** Below this share of the trace rounding is all that is left of a pivot. */
const ROUNDING = 1e-13;

const pivotedRows = (matrix: Float64Array, size: number, tail: number): readonly Float64Array[] => {
  const left = Float64Array.from({ length: size }, (_, i) => matrix[i * size + i]!);
  const least = Math.max(tail, left.reduce((sum, value) => sum + value, 0) * ROUNDING);
  const rows: Float64Array[] = [];
  for (;;) {
    const pivot = left.reduce((most, value, i) => (value > left[most]! ? i : most), 0);
    const rest = left.reduce((sum, value) => sum + value, 0);
    if (rows.length === size || rest <= least) return rows;
    const row = matrix.slice(pivot * size, (pivot + 1) * size);
    for (const known of rows) {
      const share = known[pivot]!;
      for (let i = 0; i < size; i++) row[i]! -= share * known[i]!;
    }
    const scale = 1 / Math.sqrt(left[pivot]!);
    for (let i = 0; i < size; i++) {
      row[i]! *= scale;
      left[i] = Math.max(0, left[i]! - row[i]! * row[i]!);
    }
    left[pivot] = 0;
    rows.push(row);
  }
};

const MOST_SWEEPS = 12;
const ORTHOGONAL = 1e-9;

/** Rotates pairs of rows until all are at right angles (Jacobi, one-sided); WᵀW stays what it is. Strongest first. */
const toPrincipalAxes = (given: readonly Float64Array[]): readonly Float64Array[] => {
  const rows = [...given];
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let turned = false;
    for (let p = 0; p < rows.length; p++)
      for (let q = p + 1; q < rows.length; q++) turned = turnPair(rows[p]!, rows[q]!) || turned;
    if (!turned) break;
  }
  return rows
    .map((row) => ({ row, power: dot(row, row) }))
    .sort((a, b) => b.power - a.power)
    .map(({ row }) => row);
};

const turnPair = (a: Float64Array, b: Float64Array): boolean => {
  const [aa, bb, ab] = [dot(a, a), dot(b, b), dot(a, b)];
  if (Math.abs(ab) <= ORTHOGONAL * Math.sqrt(aa * bb)) return false;
  const zeta = (bb - aa) / (2 * ab);
  const tangent = (zeta >= 0 ? 1 : -1) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta));
  const cosine = 1 / Math.sqrt(1 + tangent * tangent);
  const sine = cosine * tangent;
  for (let i = 0; i < a.length; i++) {
    const [x, y] = [a[i]!, b[i]!];
    a[i] = cosine * x - sine * y;
    b[i] = sine * x + cosine * y;
  }
  return true;
};
