import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowRank } from '#physics/numeric/low-rank';
import { between, SEED } from '../support/arbitraries';

const SIZE = 9;

/** B·Bᵀ of SIZE × SIZE numbers. */
const gram = (b: readonly number[], power: (k: number) => number): Float64Array =>
  Float64Array.from({ length: SIZE * SIZE }, (_, at) => {
    const [i, j] = [Math.floor(at / SIZE), at % SIZE];
    let sum = 0;
    for (let k = 0; k < SIZE; k++) sum += power(k) * b[i * SIZE + k]! * b[j * SIZE + k]!;
    return sum;
  });
const trace = (matrix: Float64Array): number =>
  Array.from({ length: SIZE }, (_, i) => matrix[i * SIZE + i]!).reduce((sum, value) => sum + value, 0);
const product = (rows: readonly Float64Array[]): Float64Array =>
  Float64Array.from({ length: SIZE * SIZE }, (_, at) =>
    rows.reduce((sum, row) => sum + row[Math.floor(at / SIZE)]! * row[at % SIZE]!, 0)
  );
const squares = fc.array(between(-1, 1), { minLength: SIZE * SIZE, maxLength: SIZE * SIZE });

describe('a matrix of few rows', () => {
  it('leaves no more of the trace than was allowed, and nothing negative on the diagonal', () => {
    fc.assert(
      fc.property(squares, between(1e-6, 0.3), (b, share) => {
        const matrix = gram(b, (k) => 0.2 ** k);
        const rows = lowRank(matrix, SIZE, share * trace(matrix));
        const left = matrix.map((value, at) => value - product(rows)[at]!);
        expect(trace(left)).toBeLessThanOrEqual(share * trace(matrix) * (1 + 1e-9));
        for (let i = 0; i < SIZE; i++) expect(left[i * SIZE + i]).toBeGreaterThan(-1e-12 * trace(matrix));
      }),
      { seed: SEED, numRuns: 40 }
    );
  });

  it('is the whole of it where nothing may be left', () => {
    fc.assert(
      fc.property(squares, (b) => {
        const matrix = gram(b, () => 1);
        const rebuilt = product(lowRank(matrix, SIZE, 0));
        matrix.forEach((value, at) => {
          expect(Math.abs(rebuilt[at]! - value)).toBeLessThan(1e-10 * trace(matrix));
        });
      }),
      { seed: SEED, numRuns: 40 }
    );
  });

  it('takes the fewest rows: of a diagonal matrix its largest entries', () => {
    const diagonal = [5, 1e-3, 2, 1e-4, 0.5, 0, 1e-5, 1, 0.25];
    const matrix = new Float64Array(SIZE * SIZE);
    diagonal.forEach((value, i) => (matrix[i * SIZE + i] = value));
    const powers = lowRank(matrix, SIZE, 0.3).map((row) =>
      row.reduce((sum, value) => sum + value * value, 0)
    );
    expect(powers).toHaveLength(4);
    [5, 2, 1, 0.5].forEach((value, k) => {
      expect(powers[k]).toBeCloseTo(value, 12);
    });
  });

  it('has none where there is nothing', () => {
    expect(lowRank(new Float64Array(SIZE * SIZE), SIZE, 0)).toEqual([]);
  });
});
