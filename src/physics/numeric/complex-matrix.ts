/** Small dense complex matrices, row by row; sized by the loops of one circuit, so clarity goes before speed. */
import { add, divide, magnitude, multiply, subtract, ZERO, type Complex } from './complex';

export type ComplexMatrix = readonly (readonly Complex[])[];

export const matrixOf = (
  rows: number,
  columns: number,
  entry: (i: number, j: number) => Complex
): Complex[][] =>
  Array.from({ length: rows }, (_, i) => Array.from({ length: columns }, (_, j) => entry(i, j)));

export const product = (a: ComplexMatrix, b: ComplexMatrix): Complex[][] =>
  matrixOf(a.length, b[0]?.length ?? 0, (i, j) =>
    a[i]!.reduce((sum, value, k) => add(sum, multiply(value, b[k]![j]!)), ZERO)
  );

/** X with A·X = B, by Gaussian elimination with row pivoting. Throws if A is singular. */
export const solve = (a: ComplexMatrix, b: ComplexMatrix): Complex[][] => {
  const size = a.length;
  const left = a.map((row) => [...row]);
  const right = b.map((row) => [...row]);
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++)
      if (magnitude(left[row]![column]!) > magnitude(left[pivot]![column]!)) pivot = row;
    if (magnitude(left[pivot]![column]!) === 0) throw new RangeError('singular matrix');
    [left[column], left[pivot]] = [left[pivot]!, left[column]!];
    [right[column], right[pivot]] = [right[pivot]!, right[column]!];
    for (let row = 0; row < size; row++) {
      if (row === column) continue;
      const factor = divide(left[row]![column]!, left[column]![column]!);
      const clear = (target: Complex[], source: Complex[]) =>
        target.forEach((value, k) => (target[k] = subtract(value, multiply(factor, source[k]!))));
      clear(left[row]!, left[column]!);
      clear(right[row]!, right[column]!);
    }
  }
  return right.map((row, i) => row.map((value) => divide(value, left[i]![i]!)));
};
