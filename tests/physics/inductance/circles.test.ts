import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  circleAndSegment,
  circleExternal,
  circlePotential,
  coaxialCircles,
  parallelCircles,
  roundTrip
} from '#physics/inductance/circles';
import { between, SEED } from '../support/arbitraries';
import { ofKind, referenceOf, relativeError } from '../support/reference';

const MU0 = 4e-7 * Math.PI;

type CircleCase =
  | {
      readonly kind: 'coaxial';
      readonly radius1: number;
      readonly radius2: number;
      readonly apart: number;
      readonly mutual_H: number;
    }
  | {
      readonly kind: 'parallel planes';
      readonly radius1: number;
      readonly radius2: number;
      readonly offset: number;
      readonly apart: number;
      readonly mutual_H: number;
    }
  | {
      readonly kind: 'circle and polygon';
      readonly name: string;
      readonly radius: number;
      readonly polygon: readonly (readonly [number, number, number])[];
      readonly mutual_H: number;
    };

const { cases, tolerance, generator } = referenceOf<CircleCase>('circles');

describe(`circles (${generator})`, () => {
  it.each(ofKind(cases, 'coaxial'))('on one axis: $radius1 m, $radius2 m, $apart m apart', (row) => {
    const found = coaxialCircles(row.radius1, row.radius2, row.apart);
    expect(relativeError(found, row.mutual_H)).toBeLessThan(tolerance);
  });

  it.each(ofKind(cases, 'parallel planes'))(
    'side by side: $radius1 m, $radius2 m, $offset m beside, $apart m above',
    (row) => {
      const found = parallelCircles(row.radius1, row.radius2, row.offset, row.apart);
      expect(relativeError(found, row.mutual_H)).toBeLessThan(tolerance);
    }
  );

  it.each(ofKind(cases, 'circle and polygon'))('and a polygon: $name', ({ radius, polygon, mutual_H }) => {
    const found = polygon.reduce((sum, [x, y, z], k) => {
      const [endX, endY] = polygon[(k + 1) % polygon.length]!;
      const l = Math.hypot(endX - x, endY - y);
      return sum + circleAndSegment(radius, x, y, (endX - x) / l, (endY - y) / l, l, z);
    }, 0);
    expect(relativeError(found, mutual_H)).toBeLessThan(tolerance);
  });
});

describe('two circles', () => {
  it('have M_ij = M_ji', () => {
    fc.assert(
      fc.property(between(0.2, 2), between(0.2, 2), between(0, 5), between(0.01, 1), (a, b, offset, z) => {
        const one = parallelCircles(a, b, offset, z);
        const other = parallelCircles(b, a, offset, z);
        // both are integrated to 1e-8 of themselves, which may be a small difference of large parts
        const size = coaxialCircles(a, b, Math.hypot(z, Math.max(0, offset - a - b)));
        expect(Math.abs(one - other)).toBeLessThan(1e-7 * size);
      }),
      { seed: SEED, numRuns: 60 }
    );
  });

  it('far apart are dipoles: M = −µ0·(πa²)(πb²)/(4πr³) in one plane, twice that on one axis', () => {
    const [a, b, r] = [0.1, 0.15, 20];
    const dipoles = (MU0 * Math.PI * a * a * Math.PI * b * b) / (4 * Math.PI * r ** 3);
    expect(relativeError(parallelCircles(a, b, r, 0), -dipoles)).toBeLessThan(1e-3);
    expect(relativeError(coaxialCircles(a, b, r), 2 * dipoles)).toBeLessThan(1e-3);
  });

  it('join their two formulas: a small sideways shift changes M by the square of the shift', () => {
    const on = coaxialCircles(0.9, 0.5, 0.3);
    const shift = (d: number): number => Math.abs(parallelCircles(0.9, 0.5, d, 0.3) / on - 1);
    expect(shift(1e-6)).toBeLessThan(1e-9);
    expect(shift(0.02) / shift(0.01)).toBeCloseTo(4, 1);
  });
});

describe('a circle', () => {
  it('alone has µ0·r·(ln(8r/a) − 2) outside its wire, the limit of two circles a wire radius apart', () => {
    const [r, a] = [0.9, 1e-4];
    expect(relativeError(circleExternal(r, a), MU0 * r * (Math.log((8 * r) / a) - 2))).toBeLessThan(1e-14);
    expect(relativeError(coaxialCircles(r, r, a), circleExternal(r, a))).toBeLessThan(1e-6);
  });

  it('has a potential whose circulation near the axis is the flux µ0·r²/2(r²+z²)^1.5 of the axis', () => {
    for (const [r, z] of [
      [0.9, 0],
      [0.9, 0.6],
      [0.3, 2]
    ] as const) {
      const onAxis = (MU0 * r * r) / (2 * Math.hypot(r, z) ** 3);
      const rho = 1e-5 * r;
      expect(relativeError(circlePotential(r, rho, z), (onAxis * rho) / 2)).toBeLessThan(1e-8);
    }
    expect(circlePotential(0.9, 0, 0.5)).toBe(0);
  });

  it('has a potential without a step where the series takes over from the closed form (m = 1e-4)', () => {
    const [r, z] = [0.5, 0.2];
    // m = 4rρ/((r+ρ)²+z²) solved for ρ at both sides of the change
    const rhoAt = (m: number): number => {
      let rho = (m * (r * r + z * z)) / (4 * r);
      for (let k = 0; k < 50; k++) rho = (m * ((r + rho) ** 2 + z * z)) / (4 * r);
      return rho;
    };
    const [below, above] = [rhoAt(0.9999e-4), rhoAt(1.0001e-4)];
    const slope = circlePotential(r, above, z) / above / (circlePotential(r, below, z) / below);
    expect(Math.abs(slope - 1)).toBeLessThan(1e-7);
  });
});

describe('the mean round a circle', () => {
  it('is exact for smooth functions', () => {
    // ∮ e^{cos φ} dφ = 2π·I0(1), I0(1) = 1.2660658777520084 (Abramowitz & Stegun table 9.8)
    expect(
      relativeError(
        roundTrip((angle) => Math.exp(Math.cos(angle))),
        2 * Math.PI * 1.2660658777520084
      )
    ).toBeLessThan(1e-12);
  });

  it('sees a logarithmic peak a few millimetres wide to 1e-6', () => {
    // ∮ ln(1 + p² − 2p·cos φ) dφ = 0 for p < 1 (Gradshteyn & Ryzhik 4.224.14)
    const p = 0.995;
    expect(
      Math.abs(roundTrip((angle) => 1 + Math.log(1 + p * p - 2 * p * Math.cos(angle))) - 2 * Math.PI)
    ).toBeLessThan(1e-6);
  });
});
