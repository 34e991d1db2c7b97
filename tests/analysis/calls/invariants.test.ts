/** What holds for every response and every setting. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { outcomeInSteps, type Outcome } from '#analysis/calls/outcome';
import type { Rules } from '#analysis/calls/rules';
import type { Curve } from '#analysis/calls/signal';
import { finish } from '#analysis/steps';
import { curve, rules } from './script';

const SEED = 577_215;
const RUNS = 300;
const TRIP = 0.001;
const seconds = (most: number) => fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: most, noNaN: true }));

const anyRules: fc.Arbitrary<Rules> = fc
  .record({
    isPulse: fc.boolean(),
    release: fc.double({ min: 0.01, max: 0.999, noNaN: true }).map((share) => share * TRIP),
    delay: seconds(6),
    extension: seconds(6),
    longest: fc.oneof(fc.constant(Infinity), fc.double({ min: 0.5, max: 20, noNaN: true })),
    pulse: fc.double({ min: 0.05, max: 2, noNaN: true }),
    rearm: fc.double({ min: 0.5, max: 8, noNaN: true }),
    adaptation: fc.double({ min: 10, max: 3_000, noNaN: true }),
    recovery: fc.double({ min: 0.02, max: 2, noNaN: true })
  })
  .map((given) => rules({ trip: TRIP, ...given }));

/** Times ascend by 10 ms and more; responses from nothing to twenty times the threshold, some of them equal. */
const anyResponse: fc.Arbitrary<Curve> = fc
  .array(
    fc.tuple(
      fc.double({ min: 0.01, max: 5, noNaN: true }),
      fc.oneof(fc.constantFrom(0, 0.003, 0.02), fc.double({ min: 0, max: 0.02, noNaN: true }))
    ),
    { minLength: 2, maxLength: 40 }
  )
  .map((steps) => {
    let time = 0;
    return curve([0, 0], ...steps.map(([step, value]) => [(time += step), value] as const));
  });

const outcomeOf = (response: Curve, given: Rules): Outcome => finish(outcomeInSteps(response, given));

const holds = (predicate: (response: Curve, given: Rules, outcome: Outcome) => void): void => {
  fc.assert(
    fc.property(anyResponse, anyRules, (response, given) =>
      predicate(response, given, outcomeOf(response, given))
    ),
    { seed: SEED, numRuns: RUNS }
  );
};

const endOf = ({ at }: Curve): number => at[at.length - 1]!;

it('events come in the order of their times, and every kind after what it ends', () => {
  holds((response, _, { events }) => {
    let isDetecting = false;
    let isOn = false;
    let time = 0;
    for (const { kind, time_s } of events) {
      expect(time_s).toBeGreaterThanOrEqual(time);
      expect(time_s).toBeLessThanOrEqual(endOf(response));
      time = time_s;
      if (kind === 'detected') expect(isDetecting).toBe(false);
      if (kind === 'left' || kind === 'tuned-out') expect(isDetecting).toBe(true);
      if (kind === 'on') expect(isOn).toBe(false);
      if (kind === 'off') expect(isOn).toBe(true);
      if (kind === 'on' || kind === 'off') isOn = kind === 'on';
      else isDetecting = kind === 'detected';
    }
  });
});

it('the same is said again', () => {
  holds((response, given, { events }) => {
    expect(outcomeOf(response, given).events).toEqual(events);
  });
});

it('nothing hangs on what comes later', () => {
  fc.assert(
    fc.property(
      anyResponse,
      anyResponse,
      anyRules,
      fc.integer({ min: 1, max: 39 }),
      (one, other, given, kept) => {
        const nodes = Math.min(kept, one.at.length);
        const shift = one.at[nodes - 1]!;
        const changed: Curve = {
          at: Float64Array.of(
            ...one.at.subarray(0, nodes),
            ...other.at.subarray(1).map((time) => time + shift)
          ),
          values: Float64Array.of(...one.values.subarray(0, nodes), ...other.values.subarray(1))
        };
        const before = ({ events }: Outcome) => events.filter(({ time_s }) => time_s < shift);
        expect(before(outcomeOf(changed, given))).toEqual(before(outcomeOf(one, given)));
      }
    ),
    { seed: SEED, numRuns: RUNS }
  );
});

it('a node more on the line changes nothing', () => {
  holds((response, given, { events }) => {
    const at: number[] = [];
    const values: number[] = [];
    response.at.forEach((time, k) => {
      if (k > 0)
        for (const share of [0.3, 0.77]) {
          const [from, low] = [response.at[k - 1]!, response.values[k - 1]!];
          at.push(from + share * (time - from));
          values.push(low + share * (response.values[k]! - low));
        }
      at.push(time);
      values.push(response.values[k]!);
    });
    const split = outcomeOf({ at: Float64Array.from(at), values: Float64Array.from(values) }, given);
    expect(split.events.map(({ kind }) => kind)).toEqual(events.map(({ kind }) => kind));
    split.events.forEach(({ time_s }, k) => expect(time_s).toBeCloseTo(events[k]!.time_s, 6));
  });
});

it('no call is shorter than it can be', () => {
  holds((response, given, { calls, detections }) => {
    for (const { from, to, detection } of calls) {
      if (to >= endOf(response)) continue;
      if (given.isPulse) expect(to - from).toBeCloseTo(given.pulse, 9);
      else if (!detections.some((each) => each.by === 'longest presence' && each.to === to))
        expect(to - from).toBeGreaterThanOrEqual(given.extension - 1e-9);
      expect(from - detections[detection]!.from).toBeCloseTo(given.delay, 9);
    }
  });
});

it('a call lies within its detections, moved by delay and extension', () => {
  holds((_, given, { calls, detections }) => {
    for (const { from, to, detection } of calls) {
      const own = detections[detection]!;
      expect(from).toBeGreaterThanOrEqual(own.from + given.delay - 1e-9);
      expect(own.to).toBeGreaterThan(from - 1e-9);
      if (given.isPulse) continue;
      const last = detections.findLast((each) => each.from < to)!;
      expect(to).toBeLessThanOrEqual(last.to + given.extension + 1e-9);
      // never off in between: each gap that it holds is shorter than the extension
      const chain = detections.filter((each) => each.from >= own.from && each.from < to);
      chain
        .slice(1)
        .forEach((each, k) => expect(each.from - chain[k]!.to).toBeLessThanOrEqual(given.extension));
    }
  });
});

it('the times of all states add up to all of the time', () => {
  holds((response, _, { calls, detections }) => {
    const covered = (spans: readonly { from: number; to: number }[]) => {
      let [sum, until] = [0, 0];
      for (const { from, to } of spans) {
        expect(from).toBeGreaterThanOrEqual(until);
        expect(to).toBeGreaterThanOrEqual(from);
        sum += from - until + (to - from);
        until = to;
      }
      return sum + endOf(response) - until;
    };
    expect(covered(calls)).toBeCloseTo(endOf(response), 6);
    expect(covered(detections)).toBeCloseTo(endOf(response), 6);
  });
});

it('no presence is longer than the longest, counted from its last detection', () => {
  holds((_, given, { calls, detections }) => {
    if (given.isPulse) return;
    for (const { to } of calls) {
      const last = detections.findLast((each) => each.from < to)!;
      expect(Math.min(to, last.to) - last.from).toBeLessThanOrEqual(given.longest + 1e-9);
    }
  });
});
