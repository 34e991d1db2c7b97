/** What the unit takes for the road: slow adaptation, tuning out and recovery, against their closed forms. */
import { describe, expect, it } from 'vitest';
import { outcomeInSteps } from '#analysis/calls/outcome';
import type { Rules } from '#analysis/calls/rules';
import type { Curve } from '#analysis/calls/signal';
import { referenceAt, tracedPart } from '#analysis/calls/traces';
import { finish } from '#analysis/steps';
import { curve, rules } from './script';

const outcomeOf = (response: Curve, given: Rules) => finish(outcomeInSteps(response, given));
const standing = (response: number, until: number): Curve =>
  curve([0, 0], [1, 0], [1 + 1e-9, response], [until, response]);
const TRIP = 0.0016;
const usual = (given: Partial<Rules> = {}) =>
  rules({ trip: TRIP, release: 0.6 * TRIP, adaptation: 1_800, ...given });

describe('slow adaptation', () => {
  // d = x·e^(−t/τ) falls to the release after τ·ln(x/release): 1800·ln(20/0.6) = 6311.8 s, 1800·ln(5/0.6) = 3816.5 s
  it.each([
    [20, 6_311.8],
    [5, 3_816.5]
  ])('a response of %d times the threshold is held for %d s', (times, seconds) => {
    const { events } = outcomeOf(standing(times * TRIP, 8_000), usual());
    expect(events.map(({ kind }) => kind)).toEqual(['detected', 'on', 'tuned-out', 'off']);
    expect(events[2]!.time_s - 1).toBeCloseTo(seconds, 1);
    expect(events[2]!.time_s - 1).toBeCloseTo(1_800 * Math.log(times / 0.6), 5);
  });

  it('holds for at least four minutes what is half as strong again as the threshold (common practice)', () => {
    // 1800·ln(1.5/0.6) = 1649 s
    const { events } = outcomeOf(standing(1.5 * TRIP, 3_000), usual());
    expect(events[2]!.time_s - 1).toBeCloseTo(1_800 * Math.log(1.5 / 0.6), 5);
    expect(events[2]!.time_s).toBeGreaterThan(240);
  });

  it('is told as leaving where the vehicle moves on', () => {
    const leaving = curve([0, 0], [1, 20 * TRIP], [600, 20 * TRIP], [601, 0], [700, 0]);
    expect(outcomeOf(leaving, usual()).events.map(({ kind }) => kind)).toEqual([
      'detected',
      'on',
      'left',
      'off'
    ]);
  });

  it('makes the leaving sooner: the reference that has come up counts', () => {
    // after 599 s R = x·(1 − e^(−599/1800)); the response falls by 20·TRIP in a second
    const leaving = curve([0, 0], [1, 0], [1 + 1e-9, 20 * TRIP], [600, 20 * TRIP], [601, 0], [700, 0]);
    const { events } = outcomeOf(leaving, usual());
    const reference = 20 * TRIP * (1 - Math.exp(-599 / 1_800));
    const expected = 600 + (20 * TRIP - reference - 0.6 * TRIP) / (20 * TRIP);
    expect(events[2]!.time_s).toBeCloseTo(expected, 3);
  });
});

describe('recovery', () => {
  const X = 10 * TRIP;
  const given = usual({ longest: 5, recovery: 0.5 / Math.log(100) });
  /** Tuned out at 6 s, gone at 10 s, and back with another response at `again`. */
  const back = (again: number, response: number): Curve =>
    curve(
      [0, 0],
      [1, 0],
      [1 + 1e-9, X],
      [10, X],
      [10 + 1e-9, 0],
      [again, 0],
      [again + 1e-9, response],
      [20, response]
    );

  it('takes the vehicle for road once it is tuned out, and 99 % of it back within the recovery time', () => {
    const response = back(15, 0);
    const outcome = outcomeOf(response, given);
    expect(referenceAt(response, outcome, given, 5.9)).toBeCloseTo(X * (1 - Math.exp(-4.9 / 1_800)), 8);
    expect(referenceAt(response, outcome, given, 8)).toBeCloseTo(X, 12);
    expect(referenceAt(response, outcome, given, 10.25) / X).toBeCloseTo(0.1, 6);
    expect(referenceAt(response, outcome, given, 10.5) / X).toBeCloseTo(0.01, 6);
  });

  it('lets the next one trip as soon as it is over the threshold and the rest of the reference', () => {
    // a response of 1.5·TRIP trips where X·100^(−t/0.5) is under 0.5·TRIP: t = 0.5·ln(20)/ln(100) = 0.32526 s
    const tripped = (again: number) =>
      outcomeOf(back(again, 1.5 * TRIP), given).detections.filter(({ from }) => from > 10);
    expect(tripped(10.32)).toHaveLength(0);
    expect(tripped(10.33)).toHaveLength(1);
    expect(0.5 * (Math.log(20) / Math.log(100))).toBeCloseTo(0.32526, 5);
  });
});

it('is drawn by chords that keep to within a hundredth of what it moves, coming up and falling back', () => {
  // up for 60 s at τ = 20 s, and back at τ = 0.5/ln 100 = 0.109 s
  const response = curve([0, 0], [1, 0], [1 + 1e-9, 0.02], [61, 0.02], [61 + 1e-9, 0], [70, 0]);
  const given = usual({ adaptation: 20 });
  const { times, references } = tracedPart(response, outcomeOf(response, given), given, 0, 70);
  const top = 0.02 * (1 - Math.exp(-3));
  const drawn = (time: number): number => {
    const k = times.findIndex((each) => each >= time);
    const share = (time - times[k - 1]!) / (times[k]! - times[k - 1]!);
    return references[k - 1]! + share * (references[k]! - references[k - 1]!);
  };
  for (let time = 1.3; time < 61; time += 0.9)
    expect(Math.abs(drawn(time) - 0.02 * (1 - Math.exp(-(time - 1) / 20)))).toBeLessThan(0.01 * 0.02);
  for (let time = 61.01; time < 62; time += 0.017)
    expect(Math.abs(drawn(time) - top * Math.exp(-(time - 61) / given.recovery))).toBeLessThan(0.01 * top);
});

it('a part looked at closely is the same as the whole, whatever its ends', () => {
  const response = curve([0, 0], [1, 0.01], [400, 0.01], [401, 0], [403, 0.02], [404, 0.001], [600, 0]);
  const given = usual({ longest: 100 });
  const outcome = outcomeOf(response, given);
  const whole = tracedPart(response, outcome, given, 0, 600);
  const part = tracedPart(response, outcome, given, 50, 450);
  expect(part.times[0]).toBe(50);
  expect(part.times.at(-1)).toBe(450);
  const at = (trace: typeof whole, time: number): number => {
    const k = Math.max(
      1,
      trace.times.findIndex((each) => each >= time)
    );
    const share = (time - trace.times[k - 1]!) / (trace.times[k]! - trace.times[k - 1]!);
    return trace.references[k - 1]! + share * (trace.references[k]! - trace.references[k - 1]!);
  };
  for (const time of [60.5, 99, 150, 300, 400.5, 401.2, 402.5, 420, 449])
    expect(at(part, time)).toBeCloseTo(at(whole, time), 5);
});
