/** The nearest value that helps, against every value of a grid as fine as the search itself. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestHit, type Hit } from '#analysis/goal/nearest-hit';
import type { Steps } from '#analysis/steps';
import { finish } from '#analysis/steps';
import type { Grid } from '#plan/variables/grid';
import type { VariableRange } from '#plan/variables/variable';

const range: VariableRange = { least: 0, most: 40, step: 0.5, isWhole: false, choices: null };
const whole: VariableRange = { least: 1, most: 60, step: 1, isWhole: true, choices: null };

/** Multiples of a step. */
const gridOf = (step: number): Grid => ({
  step,
  placeOf: (value) => value / step,
  valueAt: (place) => Number((place * step).toPrecision(12))
});
const gridsOf = ({ step }: VariableRange): readonly Grid[] =>
  [10, 100, 1000].map((parts) => gridOf(step / parts));

const seek = (
  from: number,
  given: VariableRange,
  isGone: (value: number) => boolean
): { readonly hit: Hit | null; readonly tried: readonly number[]; readonly shares: readonly number[] } => {
  const tried: number[] = [];
  const shares: number[] = [];
  const steps = nearestHit(from, given, gridsOf(given), function* (value): Steps<boolean> {
    tried.push(value);
    yield 0.123;
    return isGone(value);
  });
  let step = steps.next();
  for (; !step.done; step = steps.next()) if (typeof step.value === 'number') shares.push(step.value);
  return { hit: step.value, tried, shares };
};

/** The distance of the nearest place of a grid of tenths of a step, on either side, at which it is gone. */
const bruteForce = (
  from: number,
  { least, most, step, isWhole }: VariableRange,
  isGone: (value: number) => boolean
): number | null => {
  const fine = isWhole ? step : step / 10;
  for (let k = 1; k * fine <= most - least; k++)
    for (const value of [from + k * fine, from - k * fine])
      if (value > least - 1e-9 && value < most + 1e-9 && isGone(Number(value.toFixed(9)))) return k * fine;
  return null;
};

/** It is there between two values, and gone beyond them on both sides. */
const between = (low: number, high: number) => (value: number) => value <= low + 1e-9 || value >= high - 1e-9;

describe('where both sides help', () => {
  it.each([
    ['up', 10, 9.6, 10.2, 10.2],
    ['down', 10, 9.8, 10.4, 9.8],
    ['up, many steps away', 20, 7.05, 32.9, 32.9],
    ['down, many steps away', 20, 7.15, 32.95, 7.15]
  ])('in the same step the nearer wins: %s', (_, from, low, high, wanted) => {
    const { hit } = seek(from, range, between(low, high));
    expect(hit!.to).toBeCloseTo(wanted, 9);
  });

  it('the nearest tenth of a step is found, whichever side it is on', () => {
    const won = { up: 0, down: 0 };
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 60 }).map((k) => k / 2),
        // both within one and the same step, a tenth of it at least apart
        fc.integer({ min: 0, max: 18 }),
        fc.integer({ min: 1, max: 10 }),
        fc.integer({ min: 1, max: 10 }),
        (from, steps, below, above) => {
          fc.pre(below !== above);
          const [low, high] = [from - (steps + below / 10) / 2, from + (steps + above / 10) / 2];
          const isGone = between(low, high);
          const { hit } = seek(from, range, isGone);
          expect(Math.abs(hit!.to - from)).toBeCloseTo(bruteForce(from, range, isGone)!, 9);
          expect(Math.sign(hit!.to - from)).toBe(above < below ? 1 : -1);
          expect(isGone(hit!.to)).toBe(true);
          won[hit!.to > from ? 'up' : 'down'] += 1;
        }
      ),
      { numRuns: 200, seed: 5 }
    );
    expect(Math.min(won.up, won.down)).toBeGreaterThan(50);
  });

  it('also far out, where not every step was tried', () => {
    // beyond 240 steps of 0.1 strides are of 12 and more
    const fine: VariableRange = { ...range, least: -100, most: 100, step: 0.1 };
    for (const [low, high, wanted] of [
      [-25.02, 24.61, 24.61],
      [-24.63, 25.04, -24.63]
    ] as const)
      expect(seek(0, fine, between(low, high)).hit!.to).toBeCloseTo(wanted, 9);
  });

  it('and where the end of the range lies nearer than a whole step', () => {
    const short: VariableRange = { ...range, most: 11.3 };
    // upwards only the end itself helps, 1.3 away; downwards already 1.2 away
    expect(seek(10, short, between(8.8, 11.3)).hit!.to).toBeCloseTo(8.8, 9);
    expect(seek(10, short, between(8.65, 11.3)).hit!.to).toBeCloseTo(11.3, 9);
  });
});

it('of whole numbers the nearest is found, and nothing between', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), fc.func(fc.boolean()), (from, gone) => {
      const { hit, tried } = seek(from, whole, gone);
      const nearest = bruteForce(from, whole, gone);
      if (nearest === null) expect(hit).toBeNull();
      else expect(Math.abs(hit!.to - from)).toBe(nearest);
      expect(tried.every(Number.isInteger)).toBe(true);
      expect(new Set(tried).size).toBe(tried.length);
    }),
    { numRuns: 150, seed: 9 }
  );
});

describe('how far it is', () => {
  it('only grows, also while the last step is made finer', () => {
    const { shares, tried } = seek(10, range, between(9.63, 10.37));
    expect(shares.every((share, k) => share >= (shares[k - 1] ?? 0) && share <= 1)).toBe(true);
    expect(shares).toHaveLength(tried.length);
    expect(shares).not.toContain(0.123);
    expect(shares.at(-1)).toBeGreaterThan(0.7);
  });

  it('comes to the end where nothing helps', () => {
    expect(seek(10, range, () => false).shares.at(-1)).toBe(1);
  });
});

it('a value that cannot be helps nobody', () => {
  const steps = nearestHit(10, range, gridsOf(range), function* (value): Steps<boolean | null> {
    yield;
    return value > 12 ? true : null;
  });
  expect(finish(steps)!.to).toBeCloseTo(12.05, 9);
});

describe('what is found is round', () => {
  const off = 10.013;

  it('wherever the number began, and helps', () => {
    const { hit } = seek(off, range, (value) => value >= 12.171);
    expect(hit).toEqual({ to: 12.2, within: 0.05 });
    expect(seek(off, range, (value) => value <= 7.729).hit).toEqual({ to: 7.7, within: 0.05 });
  });

  it('also where the round value lies beyond the step that helps', () => {
    // steps from 10.013 reach 12.513
    const { hit, tried } = seek(off, range, (value) => value >= 12.512);
    expect(hit).toEqual({ to: 12.55, within: 0.05 });
    expect(tried).toContain(12.55);
  });

  it('and finer where the next round one does not help any more', () => {
    const { hit } = seek(off, range, (value) => value >= 12.511 && value < 12.53);
    expect(hit).toEqual({ to: 12.515, within: 0.005 });
  });

  it('but for one alone, and for the end of what it can be', () => {
    expect(seek(off, range, (value) => Math.abs(value - 12.513) < 1e-7).hit!.to).toBe(12.513);
    const short: VariableRange = { ...range, most: 12.3331 };
    expect(seek(off, short, (value) => value > 12.333).hit!.to).toBe(12.3331);
  });
});
