import { describe, expect, it } from 'vitest';
import { settlingTime, tuned, type Wanted } from '#physics/coupling/tuning';
import { crossingsOf, meanOf, within } from '../support/beating';
import { relativeError } from '../support/reference';

const wanted = (frequency: number, q: number, inductance: number): Wanted => ({
  frequency,
  q,
  inductance,
  amplitude: 1
});

describe('tuning', () => {
  it.each([
    [50e3, 8, 51e3, 30],
    [20e3, 5, 95e3, 12],
    [48_213, 60, 48_613, 6]
  ])('to %f Hz at Q %f and %f Hz at Q %f: either alone runs there', (f1, q1, f2, q2) => {
    const [a, b] = tuned(wanted(f1, q1, 1.2e-4), wanted(f2, q2, 3e-4));
    expect(a.inductance).toBe(1.2e-4);
    const step = 1 / (80 * Math.max(f1, f2));
    const crossings = crossingsOf(a, b, 0, 0.03, step);
    [f1, f2].forEach((frequency, side) => {
      expect(relativeError(meanOf(within(crossings[side]!, 0.02, 0.03)), frequency)).toBeLessThan(1e-5);
    });
  });

  it('takes more capacitance away the lower Q: about 1/Q² of it, for the shift of 1/2Q²', () => {
    const [a] = tuned(wanted(50e3, 6, 1e-4), wanted(60e3, 6, 1e-4));
    const lossless = 1 / ((2 * Math.PI * 50e3) ** 2 * 1e-4);
    // harmonics take some more
    expect((1 - a.capacitance / lossless) * 36).toBeGreaterThan(1);
    expect((1 - a.capacitance / lossless) * 36).toBeLessThan(1.2);
  });

  it('waits the longer the higher Q and the lower the frequency', () => {
    expect(settlingTime({ q: 10, frequency: 50e3 })).toBeCloseTo(100 / (Math.PI * 50e3), 12);
  });
});
