import { describe, expect, it } from 'vitest';
import { logPriorsOf } from '#analysis/fault-finding/inference/posterior';
import { ANYTHING, KIND_WEIGHTS } from '#analysis/fault-finding/inference/priors';
import {
  logAnything,
  logNoise,
  logOver,
  logSound,
  logSoundOver
} from '#analysis/fault-finding/inference/unrelated';
import { CAUSE_KINDS } from '#analysis/fault-finding/results';
import { READING_QUANTITIES } from '#plan/schema';
import { prepared } from '../support/readings';

const { hypotheses } = prepared;

/** ∫ density over the logarithm of the value, and over the value itself. */
const integral = (logDensity: (value: number) => number, low: number, high: number): number => {
  const steps = 20_000;
  const factor = (high / low) ** (1 / steps);
  let sum = 0;
  for (let k = 0, value = low * Math.sqrt(factor); k < steps; k++, value *= factor)
    sum += Math.exp(logDensity(value)) * value * Math.log(factor);
  return sum;
};

describe('what is held for likely beforehand', () => {
  it.each([true, false])('adds up to one over all causes (commissioning: %s)', (isCommissioning) => {
    const logPrior = logPriorsOf(hypotheses, isCommissioning);
    const others = [{ kind: 'nothing wrong' }, { kind: 'something else' }] as const;
    const sum = [...hypotheses, ...others].reduce((all, each) => all + Math.exp(logPrior(each)), 0);
    expect(sum).toBeCloseTo(1, 12);
  });

  it('is that nothing is wrong before anything else, and mistakes of building first on the day', () => {
    for (const day of ['commissioning', 'later'] as const) {
      const most = Math.max(...CAUSE_KINDS.map((kind) => KIND_WEIGHTS[kind][day]));
      expect(KIND_WEIGHTS['nothing wrong'][day]).toBe(most);
    }
    for (const kind of ['wrong turns', 'wrong wire', 'reversed loop', 'missing loop'] as const)
      expect(KIND_WEIGHTS[kind].commissioning).toBeGreaterThan(KIND_WEIGHTS[kind].later);
    for (const kind of ['open', 'resistive splice', 'wet splice', 'cut insulation'] as const)
      expect(KIND_WEIGHTS[kind].later).toBeGreaterThan(KIND_WEIGHTS[kind].commissioning);
  });
});

describe('figures of which little is known', () => {
  it.each(READING_QUANTITIES)('%s could be anything with a density that adds up to one', (quantity) => {
    const [low, high] = ANYTHING[quantity];
    expect(integral((value) => logAnything(quantity, value, 0), low, high)).toBeCloseTo(1, 6);
  });

  it('are as likely at nought as at the least that the meter can tell', () => {
    expect(logAnything('insulation_ohm', 0, 5e4)).toBe(logAnything('insulation_ohm', 5e4, 5e4));
  });

  it('of sound insulation add up to one together with what is over the range', () => {
    const read = integral((value) => logSound(value, 'insulation_ohm', 0.05 * value, 0.05), 1e6, 1e12);
    expect(read + Math.exp(logSoundOver())).toBeCloseTo(1, 3);
    // per decade, four hundred kilohms take a slip
    const perDecade = (ohms: number) => logSound(ohms, 'insulation_ohm', 0.05 * ohms, 0.05) + Math.log(ohms);
    expect(perDecade(4e8)).toBeGreaterThan(perDecade(4e5) + 5);
  });

  it('are over the range the sooner the larger they are', () => {
    const at = (ohms: number) => logOver('resistanceDc_ohm', ohms);
    expect(at(1)).toBeLessThan(Math.log(0.01));
    expect(at(1e3)).toBeGreaterThan(at(1));
    expect(at(1e8)).toBeGreaterThan(Math.log(0.99));
  });

  it('are hardly read as a few ohms where the wire is parted', () => {
    expect(logNoise('resistanceDc_ohm', 2, 0.05)).toBeLessThan(
      Math.log(0.003) + logAnything('resistanceDc_ohm', 2, 0.05) + 1e-9
    );
    expect(logNoise('resistanceDc_ohm', 5e5, 2e3)).toBeGreaterThan(Math.log(0.05 / 5e5 / 10));
  });
});
