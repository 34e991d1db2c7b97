import { describe, expect, it } from 'vitest';
import { normalPoints, normalQuantile } from '#analysis/tolerance/normal-points';

describe('the inverse of the normal distribution', () => {
  it.each([
    // tables of the normal distribution
    [0.5, 0],
    [0.9, 1.2815515655],
    [0.95, 1.644853627],
    [0.975, 1.9599639845],
    [0.99, 2.326347874],
    [0.999, 3.0902323062],
    [0.9999, 3.7190164855]
  ])('has %f of it below its value', (share, deviations) => {
    expect(normalQuantile(share)).toBeCloseTo(deviations, 8);
    expect(normalQuantile(1 - share)).toBeCloseTo(-deviations, 8);
  });
});

describe('points', () => {
  const COUNT = 4_096;
  const DIMENSIONS = 7;
  const points = normalPoints(COUNT, DIMENSIONS);
  const axis = (k: number): number[] => Array.from({ length: COUNT }, (_, n) => points[n * DIMENSIONS + k]!);
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / values.length;

  it('have mean 0 and deviation 1 along every axis', () => {
    for (let k = 0; k < DIMENSIONS; k++) {
      expect(Math.abs(mean(axis(k)))).toBeLessThan(0.005);
      expect(Math.abs(mean(axis(k).map((value) => value * value)) - 1)).toBeLessThan(0.01);
    }
  });

  it('put 95 % of every weighted sum of axes inside 1.96 of its deviations, as independent normal numbers do', () => {
    for (const weights of [
      [1, 1, 1, 1, 1, 1, 1],
      [3, -1, 2, 0, 0, 1, -2],
      [0, 0, 5, 4, 0, 0, 0]
    ]) {
      const deviation = Math.hypot(...weights);
      const inside = Array.from({ length: COUNT }, (_, n) =>
        weights.reduce((sum, weight, k) => sum + weight * points[n * DIMENSIONS + k]!, 0)
      ).filter((value) => Math.abs(value) < 1.959964 * deviation).length;
      expect(Math.abs(inside / COUNT - 0.95)).toBeLessThan(0.005);
    }
  });
});
