import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correlatedFit, type Slip } from '#analysis/fault-finding/inference/correlated';
import { logDensity } from '#analysis/fault-finding/inference/normal';

const none: Slip = { share: 0, logDensity: 0 };

/** The density of two normal figures by its textbook formula. */
const bivariate = (x: number, y: number, a: number, b: number, r: number): number => {
  const rest = 1 - r * r;
  const q = (x / a) ** 2 - (2 * r * x * y) / (a * b) + (y / b) ** 2;
  return -q / (2 * rest) - Math.log(2 * Math.PI * a * b * Math.sqrt(rest));
};

describe('figures that stray together', () => {
  it('have the density of two correlated normal variables', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: -0.95, max: 0.95, noNaN: true }),
        (x, y, a, b, r) => {
          const covariance = Float64Array.of(a * a, r * a * b, r * a * b, b * b);
          const { logNormal, logLikelihood } = correlatedFit([x, y], covariance, [none, none]);
          expect(logNormal).toBeCloseTo(bivariate(x, y, a, b, r), 8);
          expect(logLikelihood).toBeCloseTo(logNormal, 10);
        }
      )
    );
  });

  it('weigh a slip of one figure as a mixture does', () => {
    const slip: Slip = { share: 0.01, logDensity: Math.log(0.002) };
    const { logLikelihood } = correlatedFit([7], Float64Array.of(1), [slip]);
    const sum = 0.99 * Math.exp(logDensity(7, 0, 1)) + 0.01 * 0.002;
    expect(logLikelihood).toBeCloseTo(Math.log(sum), 10);
  });

  it('weigh a slip of either of two as the sum over who slipped', () => {
    const slips: readonly Slip[] = [
      { share: 0.02, logDensity: Math.log(0.03) },
      { share: 0.05, logDensity: Math.log(0.01) }
    ];
    const [x, y] = [0.4, 4];
    const { logLikelihood } = correlatedFit([x, y], Float64Array.of(1, 0.6, 0.6, 1), slips);
    const sum =
      0.98 * 0.95 * Math.exp(bivariate(x, y, 1, 1, 0.6)) +
      0.02 * 0.95 * 0.03 * Math.exp(logDensity(y, 0, 1)) +
      0.98 * 0.05 * 0.01 * Math.exp(logDensity(x, 0, 1));
    expect(logLikelihood).toBeCloseTo(Math.log(sum), 10);
  });

  it('do not let one mistyped figure rule, nor two', () => {
    const slips = [0, 1, 2, 3].map((): Slip => ({ share: 0.003, logDensity: Math.log(1e-4) }));
    const covariance = new Float64Array(16);
    for (let i = 0; i < 4; i++) covariance[5 * i] = 1;
    const fine = correlatedFit([0.1, -0.2, 0.3, 0], covariance, slips).logLikelihood;
    const one = correlatedFit([0.1, -0.2, 0.3, 1e6], covariance, slips).logLikelihood;
    const two = correlatedFit([0.1, -0.2, 1e6, 1e6], covariance, slips).logLikelihood;
    const aSlip = Math.log(0.003 * 1e-4);
    expect(one).toBeGreaterThan(fine + aSlip - 1);
    expect(two).toBeGreaterThan(fine + 2 * aSlip - 1);
  });

  it('weigh a slip the same however far out it is', () => {
    const slips: readonly Slip[] = [
      { share: 0.003, logDensity: Math.log(1e-4) },
      { share: 0.003, logDensity: Math.log(1e-12) }
    ];
    // the first given alone that it is right, the second none of the circuit's
    const byHand = Math.log(0.997) + logDensity(0.5, 0, 1) + Math.log(0.003) + Math.log(1e-12);
    for (const far of [1e3, 1e6, 1e9, 1e12, 1e15]) {
      const { logLikelihood } = correlatedFit([0.5, far], Float64Array.of(1, 0.6, 0.6, 1), slips);
      expect(logLikelihood).toBeCloseTo(byHand, 3);
    }
  });

  it('are impossible with a covariance that is none', () => {
    expect(correlatedFit([1, 1], Float64Array.of(1, 2, 2, 1), [none, none]).logLikelihood).toBe(-Infinity);
  });
});
