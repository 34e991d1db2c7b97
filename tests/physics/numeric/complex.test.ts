import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  complex,
  divide,
  hyperbolicCosine,
  hyperbolicSine,
  magnitude,
  multiply,
  ONE,
  squareRoot,
  subtract,
  ZERO,
  type Complex
} from '#physics/numeric/complex';
import { between, SEED } from '../support/arbitraries';

const numbers = fc.tuple(between(-5, 5), between(-5, 5)).map(([re, im]) => complex(re, im));
const near = (a: Complex, b: Complex, tolerance = 1e-12): void =>
  expect(magnitude(subtract(a, b))).toBeLessThan(tolerance * (1 + magnitude(b)));

describe('complex numbers', () => {
  it('follow hand-computed examples', () => {
    near(multiply(complex(1, 2), complex(3, -4)), complex(11, 2));
    near(divide(complex(11, 2), complex(3, -4)), complex(1, 2));
    near(squareRoot(complex(-3, 4)), complex(1, 2));
    near(squareRoot(complex(-3, -4)), complex(1, -2));
    expect(magnitude(complex(3, -4))).toBe(5);
    near(hyperbolicCosine(complex(0, Math.PI / 3)), complex(0.5));
    near(hyperbolicSine(complex(0, Math.PI / 6)), complex(0, 0.5));
  });

  it('have a square root with a real part that is not negative', () => {
    fc.assert(
      fc.property(numbers, (a) => {
        const root = squareRoot(a);
        near(multiply(root, root), a);
        expect(root.re).toBeGreaterThanOrEqual(0);
      }),
      { seed: SEED }
    );
    expect(squareRoot(ZERO)).toEqual(ZERO);
    near(squareRoot(complex(-9, 0)), complex(0, 3));
  });

  it('divide as the inverse of multiplying, and cosh² − sinh² = 1', () => {
    fc.assert(
      fc.property(numbers, numbers, (a, b) => {
        fc.pre(magnitude(b) > 1e-3);
        near(divide(multiply(a, b), b), a, 1e-11);
        const [c, s] = [hyperbolicCosine(a), hyperbolicSine(a)];
        near(subtract(multiply(c, c), multiply(s, s)), ONE, 1e-12 * (1 + magnitude(multiply(c, c))));
      }),
      { seed: SEED }
    );
  });
});
