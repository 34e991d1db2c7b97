import { describe, expect, it } from 'vitest';
import { besselRatio } from '#physics/numeric/bessel-ratio';
import {
  complex,
  divide,
  magnitude,
  multiply,
  scale,
  subtract,
  type Complex
} from '#physics/numeric/complex';
import { referenceOf } from '../support/reference';

interface BesselCase {
  readonly aOverDelta: number;
  readonly j0OverJ1: readonly [number, number];
  readonly halfKaJ0OverJ1: readonly [number, number];
  readonly j2OverJ0: readonly [number, number];
}

const { cases, tolerance, generator } = referenceOf<BesselCase>('bessel');

const distance = (found: Complex, [re, im]: readonly [number, number]): number =>
  magnitude(subtract(found, complex(re, im))) / Math.hypot(re, im);

describe(`Bessel ratios on the ray of the round wire (${generator})`, () => {
  it.each(cases)('at a/δ = $aOverDelta', ({ aOverDelta, j0OverJ1, halfKaJ0OverJ1, j2OverJ0 }) => {
    const ka = complex(aOverDelta, -aOverDelta);
    const upside = divide(complex(1), besselRatio(1, ka));
    expect(distance(upside, j0OverJ1)).toBeLessThan(tolerance);
    expect(distance(multiply(scale(ka, 0.5), upside), halfKaJ0OverJ1)).toBeLessThan(tolerance);
    expect(distance(multiply(besselRatio(2, ka), besselRatio(1, ka)), j2OverJ0)).toBeLessThan(tolerance);
  });

  it('meets the first zeros of J1 and J0 on the real axis: Abramowitz & Stegun table 9.5', () => {
    // J1/J0 vanishes at the zero of J1 and changes sign through infinity at that of J0
    expect(magnitude(besselRatio(1, complex(3.8317059702)))).toBeLessThan(1e-10);
    expect(besselRatio(1, complex(2.4048)).re).toBeGreaterThan(1e4);
    expect(besselRatio(1, complex(2.4049)).re).toBeLessThan(-1e3);
  });

  it('tends to z/2n for a small argument', () => {
    for (const order of [1, 2, 3]) {
      const z = complex(1e-6, -1e-6);
      expect(distance(besselRatio(order, z), [z.re / (2 * order), z.im / (2 * order)])).toBeLessThan(1e-11);
    }
  });
});
