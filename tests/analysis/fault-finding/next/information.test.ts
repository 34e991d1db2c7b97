import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { informationOf, type Possible } from '#analysis/fault-finding/next/information';

const at = (cause: number, mass: number, mean: number, deviation = 1, over = 0): Possible => ({
  ...{ cause, mass, mean, deviation, over }
});

const entropy = (...shares: number[]): number =>
  shares.reduce((sum, share) => sum - share * Math.log2(share), 0);

/** The same by brute force: a Riemann sum of the textbook formula, far finer than the product's. */
const bruteForce = (possibles: readonly Possible[]): number => {
  const causes = [...new Set(possibles.map(({ cause }) => cause))];
  const prior = causes.map((c) =>
    possibles.filter(({ cause }) => cause === c).reduce((sum, { mass }) => sum + mass, 0)
  );
  const step = 0.002;
  let sum = 0;
  for (let x = -60; x < 60; x += step) {
    const joint = causes.map((c) =>
      possibles
        .filter(({ cause }) => cause === c)
        .reduce((density, { mass, mean, deviation }) => {
          const off = (x - mean) / deviation;
          return density + (mass * Math.exp(-off * off * 0.5)) / (deviation * Math.sqrt(2 * Math.PI));
        }, 0)
    );
    const all = joint.reduce((total, each) => total + each, 0);
    joint.forEach((each, c) => {
      if (each > 1e-290) sum += step * each * Math.log2(each / (all * prior[c]!));
    });
  }
  return sum;
};

describe('what a further reading is expected to tell', () => {
  it('is all that is open where two causes read far apart', () => {
    expect(informationOf([at(0, 0.5, 0), at(1, 0.5, 40)])).toBeCloseTo(1, 6);
    expect(informationOf([at(0, 0.9, 0), at(1, 0.1, 40)])).toBeCloseTo(entropy(0.9, 0.1), 6);
  });

  it('is nothing where they read alike', () => {
    expect(informationOf([at(0, 0.3, 2), at(1, 0.7, 2)])).toBeCloseTo(0, 9);
  });

  it.each([
    ['two of one error', [at(0, 0.5, 0), at(1, 0.5, 2)]],
    ['two of different errors', [at(0, 0.8, 0, 0.5), at(1, 0.2, 1, 3)]],
    ['mixtures', [at(0, 0.3, 0), at(0, 0.2, 5, 0.5), at(1, 0.4, 3, 2), at(2, 0.1, -4)]]
  ] as const)('agrees with brute force for %s', (_, possibles) => {
    expect(informationOf(possibles)).toBeCloseTo(bruteForce(possibles), 3);
  });

  it('is half the logarithm of one and the ratio of variances for a normal unknown', () => {
    // each value of the unknown a cause of its own: I = ½·log₂(1 + σ²/s²), the capacity of Shannon's Gaussian channel
    const [sigma, error] = [3, 1];
    const step = 0.1;
    const raw = Array.from({ length: 361 }, (__, k) => -18 + k * step);
    const possibles = raw.map((mean, cause) =>
      at(cause, (step * Math.exp(-0.5 * (mean / sigma) ** 2)) / (sigma * Math.sqrt(2 * Math.PI)), mean, error)
    );
    expect(informationOf(possibles)).toBeCloseTo(0.5 * Math.log2(1 + (sigma / error) ** 2), 2);
  });

  it('counts what leaves the meter without a figure', () => {
    expect(informationOf([at(0, 0.25, 0, 1, 1), at(1, 0.75, 0, 1, 0)])).toBeCloseTo(entropy(0.25, 0.75), 6);
    expect(informationOf([at(0, 0.5, 0, 1, 0.4), at(1, 0.5, 0, 1, 0.4)])).toBeCloseTo(0, 9);
    expect(informationOf([at(0, 0.5, 0, 1, 1), at(1, 0.5, 0, 1, 1)])).toBeCloseTo(0, 9);
  });

  it('lies between nothing and what is open, wherever the figures lie', () => {
    const possible = fc.record({
      cause: fc.integer({ min: 0, max: 3 }),
      mass: fc.double({ min: 0.01, max: 1, noNaN: true }),
      mean: fc.double({ min: -20, max: 20, noNaN: true }),
      deviation: fc.double({ min: 0.01, max: 5, noNaN: true }),
      over: fc.double({ min: 0, max: 1, noNaN: true })
    });
    fc.assert(
      fc.property(fc.array(possible, { minLength: 1, maxLength: 12 }), (possibles) => {
        const whole = possibles.reduce((sum, { mass }) => sum + mass, 0);
        const shares = [0, 1, 2, 3].map(
          (c) => possibles.filter(({ cause }) => cause === c).reduce((sum, { mass }) => sum + mass, 0) / whole
        );
        const open = entropy(...shares.filter((share) => share > 0));
        const told = informationOf(possibles);
        expect(told).toBeGreaterThanOrEqual(0);
        expect(told).toBeLessThanOrEqual(open + 1e-6);
        // on another axis the same is told
        expect(informationOf(possibles.map((each) => ({ ...each, mean: each.mean + 7 })))).toBeCloseTo(
          told,
          2
        );
      }),
      { numRuns: 60 }
    );
  });
});
