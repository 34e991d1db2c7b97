import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completeElliptic } from '#physics/numeric/elliptic';
import { relativeError } from '../support/reference';
import { between, SEED } from '../support/arbitraries';

describe('complete elliptic integrals', () => {
  it('are π/2 at m = 0', () => {
    const { K, E } = completeElliptic(0);
    expect(relativeError(K, Math.PI / 2)).toBeLessThan(1e-15);
    expect(relativeError(E, Math.PI / 2)).toBeLessThan(1e-15);
  });

  it('have the values of Abramowitz & Stegun tables 17.1 and 17.2 at m = 0.5', () => {
    const { K, E } = completeElliptic(0.5);
    expect(K).toBeCloseTo(1.85407467730137, 13);
    expect(E).toBeCloseTo(1.35064388104768, 13);
  });

  it("satisfy Legendre's relation E·K' + E'·K − K·K' = π/2 (Abramowitz & Stegun 17.3.13)", () => {
    fc.assert(
      fc.property(between(1e-6, 1 - 1e-6), (m) => {
        const a = completeElliptic(m);
        const b = completeElliptic(1 - m);
        expect(relativeError(a.E * b.K + b.E * a.K - a.K * b.K, Math.PI / 2)).toBeLessThan(1e-12);
      }),
      { seed: SEED }
    );
  });

  it('grow and fall as the logarithm near m = 1: K → ln(4/√(1−m)), E → 1', () => {
    const { K, E } = completeElliptic(1 - 1e-10);
    expect(relativeError(K, Math.log(4 / 1e-5))).toBeLessThan(1e-7);
    expect(relativeError(E, 1)).toBeLessThan(1e-8);
  });
});
