import { describe, expect, it } from 'vitest';
import { logDensity, logNormalShare, logSum, normalShare } from '#analysis/fault-finding/inference/normal';

describe('the normal distribution', () => {
  // Abramowitz and Stegun, Handbook of Mathematical Functions, tables 26.1 and 26.2
  it.each([
    [0, 0.5],
    [0.5, 0.69146246127],
    [1, 0.84134474607],
    [2, 0.97724986805],
    [3, 0.9986501019684]
  ])('up to %d deviations holds %d', (x, share) => {
    expect(normalShare(x)).toBeCloseTo(share, 10);
    expect(normalShare(-x)).toBeCloseTo(1 - share, 10);
  });

  // the same, table 26.2: −log₁₀ of what lies above
  it.each([
    [5, 6.54265],
    [10, 23.11805],
    [20, 88.5601]
  ])('below minus %d deviations it is ten to the minus %d', (x, decades) => {
    expect(-logNormalShare(-x) / Math.LN10).toBeCloseTo(decades, 4);
  });

  it('goes on smoothly where the formula changes', () => {
    expect(normalShare(3 + 1e-9) - normalShare(3 - 1e-9)).toBeCloseTo(0, 10);
    expect(logNormalShare(-3 - 1e-9) - logNormalShare(-3 + 1e-9)).toBeCloseTo(0, 7);
  });

  it('has a density that adds up to one', () => {
    let sum = 0;
    for (let x = -40; x < 60; x += 0.05) sum += 0.05 * Math.exp(logDensity(x, 3, 2));
    expect(sum).toBeCloseTo(1, 10);
  });

  it('adds what is too small for a number', () => {
    expect(logSum([-1000, -1000])).toBeCloseTo(-1000 + Math.LN2, 12);
    expect(logSum([])).toBe(-Infinity);
    expect(logSum([-Infinity, 2])).toBe(2);
  });
});
