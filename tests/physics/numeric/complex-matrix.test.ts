import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, complex, magnitude, ONE, scale, subtract, ZERO, type Complex } from '#physics/numeric/complex';
import { matrixOf, product, solve } from '#physics/numeric/complex-matrix';
import { between, SEED } from '../support/arbitraries';

const numbers = fc.tuple(between(-5, 5), between(-5, 5)).map(([re, im]) => complex(re, im));
const near = (a: Complex, b: Complex, tolerance: number): void =>
  expect(magnitude(subtract(a, b))).toBeLessThan(tolerance * (1 + magnitude(b)));

describe('complex matrices', () => {
  it('multiply row by column', () => {
    const a = [[complex(1), complex(0, 1)]];
    const b = [[complex(2)], [complex(0, 3)]];
    expect(product(a, b)).toEqual([[complex(-1, 0)]]);
  });

  it('solve what was multiplied, also with zeros on the diagonal', () => {
    fc.assert(
      fc.property(
        fc.array(numbers, { minLength: 9, maxLength: 9 }),
        fc.array(numbers, { minLength: 6, maxLength: 6 }),
        (entries, wanted) => {
          // dominant off the diagonal: the pivots have to be looked for
          const a = matrixOf(3, 3, (i, j) =>
            (i + 1) % 3 === j ? add(complex(20), entries[3 * i + j]!) : i === j ? ZERO : entries[3 * i + j]!
          );
          const x = matrixOf(3, 2, (i, j) => wanted[2 * i + j]!);
          const found = solve(a, product(a, x));
          found.forEach((row, i) => row.forEach((value, j) => near(value, x[i]![j]!, 1e-11)));
        }
      ),
      { seed: SEED }
    );
  });

  it('leave what they are given as it is', () => {
    const a = [
      [ZERO, ONE],
      [scale(ONE, 2), ONE]
    ];
    const copy = structuredClone(a);
    solve(a, [[ONE], [ONE]]);
    expect(a).toEqual(copy);
  });

  it('refuse a singular matrix', () => {
    const singular = [
      [ONE, ONE],
      [ONE, ONE]
    ];
    expect(() => solve(singular, [[ONE], [ONE]])).toThrow(/singular/);
  });
});
