import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Trajectory } from '#analysis/calls/results';
import { contributionOf, NOTHING, sumInSteps, thinned, valueOn, type Curve } from '#analysis/calls/signal';
import { finish } from '#analysis/steps';
import { responseAt } from '#analysis/passing/zones';
import { curve } from './script';

const SEED = 141_421;

const driven = (...nodes: readonly (readonly [number, number])[]): Trajectory => ({
  vehicle: 'car',
  lane: 'lane1',
  offset_m: 0,
  times: Float64Array.from(nodes, ([time]) => time),
  places: Float64Array.from(nodes, ([, place]) => place)
});

/** Up from 10 m to 12 m, down to 15 m. */
const TENT = curve([10, 0], [12, 0.02], [15, 0]);

const rising = (most: number) =>
  fc
    .array(
      fc.tuple(fc.double({ min: 0.05, max: 3, noNaN: true }), fc.double({ min: 0, max: most, noNaN: true })),
      {
        minLength: 2,
        maxLength: 12
      }
    )
    .map((steps) => {
      let [time, place] = [0, 0];
      return driven(
        [0, 0],
        ...steps.map(([after, further]) => [(time += after), (place += further)] as const)
      );
    });

describe('what one vehicle adds', () => {
  it('is the profile at its place, straight in between', () => {
    // 2 m/s from 0 at 0 s: at 10 m after 5 s, at 12 m after 6 s, at 15 m after 7.5 s
    const added = contributionOf(driven([0, 0], [20, 40]), TENT);
    expect([...added.at]).toEqual([5, 6, 7.5]);
    expect([...added.values]).toEqual([0, 0.02, 0]);
  });

  it('stays as it is while the vehicle stands', () => {
    // stands at 11 m from 5.5 s to 65.5 s: half of the peak
    const added = contributionOf(driven([0, 0], [5.5, 11], [65.5, 11], [75.5, 31]), TENT);
    expect(valueOn(added, 5.5)).toBeCloseTo(0.01, 12);
    expect(valueOn(added, 40)).toBeCloseTo(0.01, 12);
    expect(valueOn(added, 66)).toBeCloseTo(0.02, 12);
  });

  it('equals the profile at the place at any time', () => {
    fc.assert(
      fc.property(rising(6), fc.double({ min: 0, max: 1, noNaN: true }), (trajectory, share) => {
        const last = trajectory.times.length - 1;
        const time = share * trajectory.times[last]!;
        const place = valueOn({ at: trajectory.times, values: trajectory.places }, time);
        expect(valueOn(contributionOf(trajectory, TENT), time)).toBeCloseTo(valueOn(TENT, place), 9);
      }),
      { seed: SEED, numRuns: 300 }
    );
  });

  it('comes and goes within a millisecond where the vehicle does so over the loops', () => {
    const added = contributionOf(driven([3, 11], [4, 12]), TENT);
    expect(added.at[0]).toBeCloseTo(2.999, 9);
    expect(valueOn(added, 3)).toBeCloseTo(0.01, 12);
    expect(valueOn(added, 4)).toBeCloseTo(0.02, 12);
    expect(valueOn(added, 4.01)).toBe(0);
  });

  it('is nothing out of reach', () => {
    expect(contributionOf(driven([0, 0], [5, 9.9]), TENT)).toBe(NOTHING);
    expect(contributionOf(driven([0, 15], [5, 40]), TENT)).toBe(NOTHING);
  });
});

describe('the sum', () => {
  it('is the sum at any time, from nothing to the end', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(rising(5), fc.double({ min: -5, max: 10, noNaN: true })), { maxLength: 6 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (drivers, share) => {
          const curves = drivers.map(([trajectory, later]) =>
            contributionOf({ ...trajectory, times: trajectory.times.map((time) => time + later) }, TENT)
          );
          const total = finish(sumInSteps(curves, 20));
          expect(total.at[0]).toBe(0);
          expect(total.at[total.at.length - 1]).toBe(20);
          const direct = curves.reduce((sum, each) => sum + valueOn(each, 20 * share), 0);
          expect(valueOn(total, 20 * share)).toBeCloseTo(direct, 9);
        }
      ),
      { seed: SEED, numRuns: 300 }
    );
  });
});

describe('a thinned profile', () => {
  const values = Float64Array.from({ length: 300 }, (_, k) => 0.03 * Math.exp(-(((k - 150) / 40) ** 2)));
  const profile = { circuit: 'C1', vehicle: 'car', from: -4, step: 0.05, values };
  const THRESHOLD = 0.0016;

  it('keeps to within a thousandth of the threshold and two thousandths of the response', () => {
    const thin: Curve = thinned(profile, THRESHOLD);
    expect(thin.at.length).toBeLessThan(150);
    values.forEach((value, k) => {
      const apart = Math.abs(valueOn(thin, -4 + k * 0.05) - value);
      expect(apart).toBeLessThanOrEqual(0.001 * THRESHOLD + 0.002 * value + 1e-15);
    });
  });

  it('is led to nothing at its ends', () => {
    const thin = thinned(profile, THRESHOLD);
    expect(thin.values[0]).toBe(0);
    expect(thin.values[thin.values.length - 1]).toBe(0);
    expect(thin.at[0]).toBeCloseTo(-4.05, 12);
  });

  it('is kept where it is too weak to trip: several together may', () => {
    const weak = thinned({ ...profile, values: values.map((value) => value / 40) }, THRESHOLD);
    expect(Math.max(...weak.values)).toBeCloseTo(0.03 / 40, 6);
  });

  it('is nothing where it says nothing', () => {
    expect(thinned({ ...profile, values: values.map((value) => value * 1e-6) }, THRESHOLD)).toBe(NOTHING);
    expect(responseAt(profile, 3.5)).toBeCloseTo(0.03, 3);
  });
});
