import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choleskyFactor, dot, forwardSubstitute } from '#physics/numeric/cholesky';
import { between, SEED } from '../support/arbitraries';

const SIZE = 11;

describe('Cholesky factor', () => {
  it('is the one of the textbook example', () => {
    // 4 12 −16 / 12 37 −43 / −16 −43 98 has the factor 2 / 6 1 / −8 5 3
    const { lower } = choleskyFactor(Float64Array.from([4, 12, -16, 12, 37, -43, -16, -43, 98]), 3)!;
    expect([...lower]).toEqual([2, 6, 1, -8, 5, 3]);
  });

  it('reads the lower triangle alone and leaves the matrix as it is', () => {
    const matrix = Float64Array.from([4, 99, 12, 37]);
    const { lower } = choleskyFactor(matrix, 2)!;
    expect([...lower]).toEqual([2, 6, 1]);
    expect([...matrix]).toEqual([4, 99, 12, 37]);
  });

  it('refuses a matrix that is not positive definite', () => {
    expect(choleskyFactor(Float64Array.from([1, 2, 2, 1]), 2)).toBeNull();
    expect(choleskyFactor(Float64Array.from([0]), 1)).toBeNull();
    expect(choleskyFactor(Float64Array.from([NaN]), 1)).toBeNull();
  });

  it('gives bᵀA⁻¹c as the dot product of two substitutions, for sizes that no block divides', () => {
    fc.assert(
      fc.property(
        fc.array(between(-1, 1), { minLength: SIZE * SIZE, maxLength: SIZE * SIZE }),
        fc.array(between(-1, 1), { minLength: 2 * SIZE, maxLength: 2 * SIZE }),
        fc.integer({ min: 1, max: SIZE }),
        (entries, sides, size) => {
          const at = (i: number, j: number): number => entries[i * SIZE + j]!;
          const matrix = new Float64Array(size * size);
          for (let i = 0; i < size; i++)
            for (let j = 0; j < size; j++) {
              let sum = i === j ? 1 : 0;
              for (let k = 0; k < size; k++) sum += at(i, k) * at(j, k);
              matrix[i * size + j] = sum;
            }
          // x and c = A·x are known, so bᵀA⁻¹c must be bᵀx
          const b = Float64Array.from(sides.slice(0, size));
          const x = Float64Array.from(sides.slice(SIZE, SIZE + size));
          const c = new Float64Array(size);
          for (let i = 0; i < size; i++)
            for (let j = 0; j < size; j++) c[i]! += matrix[i * size + j]! * x[j]!;
          const factor = choleskyFactor(matrix, size)!;
          const found = dot(forwardSubstitute(factor, b), forwardSubstitute(factor, c));
          const wanted = b.reduce((sum, value, k) => sum + value * x[k]!, 0);
          expect(Math.abs(found - wanted)).toBeLessThan(1e-11);
        }
      ),
      { seed: SEED }
    );
  });
});
