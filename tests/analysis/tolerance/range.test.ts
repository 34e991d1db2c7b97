import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TOLERANCE_INPUTS } from '#analysis/results';
import { quantile, rangeOf, type Bend } from '#analysis/tolerance/range';
import { between, SEED } from '../../physics/support/arbitraries';

/** Of figure `f` of the inputs, each in units of its tolerance. */
const bendsOf = (f: (k: number, at: number) => number, count: number): Bend[] =>
  TOLERANCE_INPUTS.slice(0, count).map((input, k) => ({
    input,
    below: { share: -1, value: f(k, -1) },
    above: { share: 1, value: f(k, 1) }
  }));

describe('a range', () => {
  it('of a straight figure adds the half widths as squares, the largest first', () => {
    const range = rangeOf(
      100,
      bendsOf((k, at) => 100 + [3, -4, 0, 12][k]! * at, 4)
    );
    expect(range).toMatchObject({ low: 87, high: 113, method: 'linear' });
    expect(range.contributions).toEqual([
      { input: 'leadInLength', halfWidth: 12 },
      { input: 'depth', halfWidth: 4 },
      { input: 'dimensions', halfWidth: 3 }
    ]);
  });

  it('of a figure that nothing moves is that figure', () => {
    expect(rangeOf(5, [])).toEqual({ low: 5, high: 5, method: 'linear', contributions: [] });
    expect(
      rangeOf(
        0,
        bendsOf(() => 0, 3)
      )
    ).toMatchObject({ low: 0, high: 0, contributions: [] });
  });

  it('of exp(x) of one normal input ends at exp(±1.96 deviations): the quantiles of the log-normal distribution', () => {
    const range = rangeOf(
      10,
      bendsOf((_, at) => 10 * Math.exp(0.4 * at), 1)
    );
    expect(range.method).toBe('sampled');
    expect(range.low).toBeCloseTo(10 * Math.exp(-0.4), 1);
    expect(range.high).toBeCloseTo(10 * Math.exp(0.4), 1);
  });

  it('of the product of seven normal inputs follows the log-normal distribution too', () => {
    const widths = [0.1, 0.2, 0.05, 0.3, 0.15, 0.1, 0.25];
    const total = Math.hypot(...widths);
    const range = rangeOf(
      -2,
      bendsOf((k, at) => -2 * Math.exp(widths[k]! * at), 7)
    );
    expect(range.low / -2).toBeCloseTo(Math.exp(total), 1);
    expect(range.high / -2).toBeCloseTo(Math.exp(-total), 1);
  });

  it('of x² about its foot reaches up from it as the chi-squared distribution with one degree of freedom does', () => {
    // 97.5 % of chi-squared with one degree of freedom: 5.0239; a tolerance is 1.96 deviations, 3.8415 of variance
    const range = rangeOf(
      0,
      bendsOf((_, at) => at * at, 1)
    );
    expect(range.method).toBe('sampled');
    expect(range.low).toBe(0);
    expect(range.high).toBeCloseTo(5.0239 / 3.8415, 2);
  });

  it('of an input that has no room below ends where the input does', () => {
    const [input] = TOLERANCE_INPUTS;
    const range = rangeOf(10, [{ input, below: { share: 0, value: 10 }, above: { share: 1, value: 12 } }]);
    expect(range.method).toBe('sampled');
    expect(range.low).toBeCloseTo(10, 9);
    expect(range.high).toBeCloseTo(12, 1);
    const under = rangeOf(10, [{ input, below: { share: -1, value: 9 }, above: { share: 0, value: 10 } }]);
    expect(under.high).toBeCloseTo(10, 9);
    expect(under.low).toBeCloseTo(9, 1);
  });

  it('always holds the figure as designed, whatever its neighbours', () => {
    fc.assert(
      fc.property(
        between(-10, 10),
        fc.array(fc.tuple(between(-10, 10), between(-10, 10)), { minLength: 1, maxLength: 7 }),
        (value, ends) => {
          const { low, high } = rangeOf(
            value,
            bendsOf((k, at) => ends[k]![at < 0 ? 0 : 1], ends.length)
          );
          expect(low).toBeLessThanOrEqual(value);
          expect(high).toBeGreaterThanOrEqual(value);
        }
      ),
      { seed: SEED, numRuns: 60 }
    );
  });
});

describe('a quantile', () => {
  it('lies between its neighbours in proportion and stops at the ends', () => {
    const sorted = Float64Array.of(1, 2, 4, 8);
    expect(quantile(sorted, 0.5)).toBe(3);
    expect(quantile(sorted, 0)).toBe(1);
    expect(quantile(sorted, 1)).toBe(8);
  });
});
