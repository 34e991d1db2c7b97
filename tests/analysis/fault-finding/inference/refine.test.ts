import { describe, expect, it } from 'vitest';
import { logDensity, logSum } from '#analysis/fault-finding/inference/normal';
import { refine, type Axis, type Look, type Particle } from '#analysis/fault-finding/inference/refine';

interface Point extends Look {
  readonly at: readonly number[];
}

/** Readings of the unknowns themselves, each with its error. */
const landscape = (axes: readonly Axis[], read: readonly number[], errors: readonly number[]) => ({
  axes,
  look: (at: readonly number[]): Point => {
    const logNormal = at.reduce((sum, value, k) => sum + logDensity(read[k]!, value, errors[k]!), 0);
    const misfit = at.reduce((sum, value, k) => sum + ((read[k]! - value) / errors[k]!) ** 2, 0);
    return { at, logNormal, logLikelihood: logNormal, misfit };
  },
  apart: (a: Point, b: Point): number =>
    Math.hypot(...a.at.map((value, k) => (value - b.at[k]!) / errors[k]!))
});

const evenly = (scale: Axis['scale'], values: readonly number[]): Axis => ({
  scale,
  values,
  weights: values.map(() => 1 / values.length)
});

const meanOf = (particles: readonly Particle<Point>[], axis: number): number => {
  const all = logSum(particles.map(({ logMass }) => logMass));
  return particles.reduce((sum, { logMass, values }) => sum + Math.exp(logMass - all) * values[axis]!, 0);
};

const line = evenly('linear', [0, 20, 40, 60, 80, 100]);

describe('looking where it matters', () => {
  it('finds a sharp optimum from a coarse grid, with its evidence', () => {
    const particles = refine(landscape([line], [31.7], [0.2]), 200);
    // an even prior over a hundred: the evidence is one in a hundred
    expect(Math.exp(logSum(particles.map(({ logMass }) => logMass)))).toBeCloseTo(0.01, 3);
    expect(meanOf(particles, 0)).toBeCloseTo(31.7, 1);
  });

  it('finds one that lies in the far half of a box of decades', () => {
    // of the way from 1.4 to 10 the middle by ratio has covered a quarter: a bound by half of the way would give the box up
    const resistances = evenly(
      'log',
      Array.from({ length: 14 }, (_, k) => 0.2 * 2500 ** (k / 13))
    );
    const particles = refine(landscape([resistances], [9.5], [0.02]), 160);
    expect(meanOf(particles, 0)).toBeCloseTo(9.5, 2);
  });

  it('leaves the deviation that the reading has', () => {
    const particles = refine(landscape([line], [52], [3]), 200);
    const mean = meanOf(particles, 0);
    const all = logSum(particles.map(({ logMass }) => logMass));
    const variance = particles.reduce(
      (sum, { logMass, values }) => sum + Math.exp(logMass - all) * (values[0]! - mean) ** 2,
      0
    );
    expect(Math.sqrt(variance)).toBeCloseTo(3, 0);
  });

  it('keeps the prior where the reading says nothing', () => {
    const weighted: Axis = { scale: 'linear', values: [0, 1, 2], weights: [1, 3, 1] };
    const particles = refine(landscape([weighted], [0], [1e9]), 60);
    const all = logSum(particles.map(({ logMass }) => logMass));
    const first = particles
      .filter(({ spans }) => spans[0]![1] <= 1 + 1e-9)
      .reduce((sum, { logMass }) => sum + Math.exp(logMass - all), 0);
    expect(first).toBeCloseTo(0.5, 6);
    // spans cover the axis once
    const length = particles.reduce((sum, { spans }) => sum + spans[0]![1] - spans[0]![0], 0);
    expect(length).toBeCloseTo(2, 9);
  });

  it('finds a place in two dimensions within its budget', () => {
    let looks = 0;
    const base = landscape([line, evenly('log', [0.01, 0.1, 1, 10])], [77.3, 0.31], [0.8, 0.02]);
    const particles = refine(
      {
        ...base,
        look: (at) => {
          looks++;
          return base.look(at);
        }
      },
      300
    );
    expect(looks).toBeLessThan(310);
    expect(meanOf(particles, 0)).toBeCloseTo(77.3, 0);
    expect(meanOf(particles, 1)).toBeCloseTo(0.31, 1);
  });

  it('takes whole numbers one by one, with their weights', () => {
    const turns: Axis = { scale: 'whole', values: [2, 3, 5], weights: [0.5, 0.3, 0.2] };
    const particles = refine(landscape([turns], [4], [1e9]), 60);
    const all = logSum(particles.map(({ logMass }) => logMass));
    expect(particles.map(({ values }) => values[0])).toEqual([2, 3, 5]);
    particles.forEach(({ logMass }, k) => {
      expect(Math.exp(logMass - all)).toBeCloseTo(turns.weights[k]!, 9);
    });
  });

  it('has one place where nothing is unknown', () => {
    expect(refine(landscape([], [], []), 10)).toHaveLength(1);
  });
});
