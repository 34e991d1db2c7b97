/** Trying as little as decides says what trying everything says. */
import { describe, expect, it } from 'vitest';
import { createAttempts, type Tried } from '#analysis/goal/attempts';
import { createJudge, type Judge } from '#analysis/goal/judge';
import { needsOf } from '#analysis/goal/needs';
import type { FindingRef } from '#analysis/goal/results';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { Site } from '#plan/schema';
import { experimentOn } from '#plan/variables/index';
import type { Variable } from '#plan/variables/variable';
import { smallSite, withMat } from '../sweep/support';

const one = smallSite(1);
const asking = (detect: readonly string[], tripThreshold: number): Site => ({
  ...one,
  circuits: one.circuits.map((circuit) => ({
    ...circuit,
    detect: [...detect],
    channel: { ...circuit.channel!, tripThreshold }
  }))
});

/** How many vehicles were driven over the circuit for each judgement. */
const watched = (judge: Judge['judge'], driven: number[]): Judge['judge'] =>
  function* (site, needs) {
    const judged = yield* judge(site, needs);
    driven.push(judged.result.circuits[0]!.responses.length);
    return judged;
  };

const means = createMeans();
const run = (site: Site, variable: Variable, finding: FindingRef, values: readonly number[]) => {
  const wish = { variable, finding };
  const driven: number[] = [];
  const quick = createAttempts(experimentOn(site), wish, watched(createJudge(means).judge, driven));
  const whole = createAttempts(experimentOn(site), wish, createJudge(means).judge);
  const start = finish(quick.whole(values[0]!))!;
  const helped = values.slice(1).map((value) => finish(quick.helps(value)));
  const seen = values.map((value) => finish(whole.whole(value)));
  const nearest = seen.reduce<Tried>(
    (least, each) => (each && each.shortfall < least.shortfall ? each : least),
    start
  );
  return { start, driven, helped, seen, nearest, quick };
};

describe('of several vehicles', { timeout: 120_000 }, () => {
  it('the one that falls short most decides, over steel too, and the best is the best of all', () => {
    const site = withMat(asking(['lorry', 'car'], 0.001));
    const finding: FindingRef = { code: 'steel-near', subject: 'C1', severity: 'caution' };
    const depths = [0.06, 0.08, 0.1, 0.07];
    const { start, driven, helped, seen, nearest, quick } = run(
      { ...site, steel: site.steel.map((steel) => ({ ...steel, depth: 0.06 })) },
      { kind: 'steelDepth', subject: 's1' },
      finding,
      depths
    );
    expect(start.isGone).toBe(false);
    expect(helped).toEqual(seen.slice(1).map((each) => each!.isGone));
    expect(helped).toEqual([false, false, false]);
    expect(driven[0]).toBe(2);
    expect(driven.slice(1).every((count) => count < 2)).toBe(true);
    expect(quick.count()).toBe(depths.length);
    const best = finish(quick.best(start));
    expect(best).toEqual(nearest);
    expect(best.value).toBe(0.1);
    expect(finish(quick.reason(start))).toBe('not enough');
  });

  it('the others are asked as soon as that one makes no finding any more, and decide then', () => {
    const variable: Variable = { kind: 'vehicleHeight', subject: 'car' };
    const finding: FindingRef = { code: 'undetected', subject: 'C1', severity: 'problem' };
    const heights = [2, 1.5, 0.45, 0.5];
    // the lorry is missed whatever the car does
    const missed = run(asking(['car', 'lorry'], 0.025), variable, finding, heights);
    expect(missed.helped).toEqual([false, false, false]);
    expect(missed.seen.map((each) => each!.isGone)).toEqual([false, false, false, false]);
    // first by the car, then by both, then by the lorry
    expect(missed.driven).toEqual([2, 1, 1, 2, 1]);
    const called = run(asking(['car', 'lorry'], 0.01), variable, finding, heights);
    expect(called.helped).toEqual([false, true, true]);
    expect(called.seen.map((each) => each!.isGone)).toEqual([false, false, true, true]);
    expect(called.driven).toEqual([2, 1, 1, 2, 1, 2]);
  });

  it('at the edge of a lane too: the one that comes least to the threshold is driven path by path', () => {
    const finding: FindingRef = { code: 'missed-at-edge', subject: 'C1', severity: 'caution' };
    const low = asking(['car', 'van', 'lorry'], 0.0005);
    const wanted = finish(createJudge(means).judge(low, needsOf(finding))).result.passes!.filter(
      (pass) => pass.wanted
    );
    const [least] = wanted
      .filter(({ offset_m }) => offset_m !== 0)
      .map(({ response, vehicle }) => ({ response, vehicle }))
      .sort((a, b) => a.response - b.response);
    const middle = wanted.find((pass) => pass.vehicle === least!.vehicle && pass.offset_m === 0)!;
    expect(middle.response).toBeGreaterThan(least!.response);
    const site = asking(['car', 'van', 'lorry'], (middle.response + least!.response) / 2);
    const passed: number[] = [];
    const watch: Judge['judge'] = function* (drawn, needs) {
      const judged = yield* createJudge(means).judge(drawn, needs);
      passed.push(new Set(judged.result.passes!.map(({ vehicle }) => vehicle)).size);
      return judged;
    };
    const wish = { variable: { kind: 'slotDepth', subject: 'L1' }, finding } as const;
    const attempts = createAttempts(experimentOn(site), wish, watch);
    const whole = createAttempts(experimentOn(site), wish, createJudge(means).judge);
    const from = site.loops[0]!.slot.depth;
    const depths = [from, from + 0.002, from + 0.004];
    const start = finish(attempts.whole(from))!;
    expect(start.isGone).toBe(false);
    expect(depths.slice(1).map((depth) => finish(attempts.helps(depth)))).toEqual([false, false]);
    expect(depths.map((depth) => finish(whole.whole(depth))!.isGone)).toEqual([false, false, false]);
    expect(passed[0]).toBeGreaterThan(1);
    expect(passed.slice(1)).toEqual([1, 1]);
  });

  it('a number that nothing hangs on has no effect', () => {
    const site = asking(['car', 'lorry'], 0.3);
    const finding: FindingRef = { code: 'undetected', subject: 'C1', severity: 'problem' };
    const unit = site.units[0]!.id;
    const { start, helped, quick } = run(
      site,
      { kind: 'measuringTime', subject: unit },
      finding,
      [0.1, 0.02, 0.3]
    );
    expect(start.isGone).toBe(false);
    expect(helped).toEqual([false, false]);
    expect(finish(quick.best(start))).toEqual(start);
    expect(finish(quick.reason(start))).toBe('no effect');
  });
});

it('a value that the drawing cannot take is neither here nor there', () => {
  const site = asking(['car'], 0.3);
  const finding: FindingRef = { code: 'undetected', subject: 'C1', severity: 'problem' };
  const { helped } = run(site, { kind: 'turns', subject: 'L1' }, finding, [3, -1, 2.5]);
  expect(helped).toEqual([null, null]);
});
