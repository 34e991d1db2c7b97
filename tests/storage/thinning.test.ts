import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { statesToDrop, YOUNGEST } from '#storage/thinning';

const KEPT = 10;
const MINUTE = 60;

/** The states that are left, newest first, when one is kept at each of these moments. */
function work(moments: readonly number[], look: (left: readonly number[], now: number) => void): number[] {
  let left: number[] = [];
  for (const now of moments) {
    const all = [now, ...left];
    const dropped = new Set(statesToDrop(all, KEPT, now));
    left = all.filter((_, at) => !dropped.has(at));
    look(left, now);
  }
  return left;
}

const ages = (left: readonly number[], now: number) => left.map((moment) => now - moment + YOUNGEST);

describe('states by age', () => {
  test('a few states are all kept', () => {
    expect(statesToDrop([500, 400, 3], KEPT, 500)).toEqual([]);
  });

  test('of states kept every minute for a month, some are minutes, some hours and some days old', () => {
    const moments = Array.from({ length: 30 * 24 * 60 }, (_, step) => step * MINUTE);
    const left = work(moments, () => undefined);
    const now = moments.at(-1)!;
    expect(left).toHaveLength(KEPT);
    expect(left[0]).toBe(now);
    expect(left.at(-1)).toBe(0);
    const between = (from: number, to: number) =>
      left.filter((moment) => now - moment >= from && now - moment < to).length;
    expect(between(MINUTE, 60 * MINUTE)).toBeGreaterThan(0);
    expect(between(60 * MINUTE, 24 * 60 * MINUTE)).toBeGreaterThan(0);
    expect(between(24 * 60 * MINUTE, 29 * 24 * 60 * MINUTE)).toBeGreaterThan(0);
  });

  test('whatever the rhythm: no gap that thinning makes is wider than the bound, the first and the last stay', () => {
    const rhythm = fc.array(fc.integer({ min: 60, max: 200_000 }), { minLength: KEPT + 1, maxLength: 120 });
    fc.assert(
      fc.property(rhythm, (pauses) => {
        const moments = pauses.reduce<number[]>((all, pause) => [...all, (all.at(-1) ?? 0) + pause], []);
        work(moments, (left, now) => {
          expect(left.length).toBeLessThanOrEqual(KEPT);
          expect(left[0]).toBe(now);
          expect(left.at(-1)).toBe(moments[0]);
        });
        // One thinning of all at once: every gap that spans a dropped one obeys the bound at that moment.
        const now = moments.at(-1)!;
        const eleven = moments.slice(-KEPT - 1).reverse();
        const [dropped] = statesToDrop(eleven, KEPT, now);
        const all = ages(eleven, now);
        const span = all.at(-1)! / all[0]!;
        const gap = all[dropped! + 1]! / all[dropped! - 1]!;
        expect(gap).toBeLessThanOrEqual(span ** (2 / (KEPT - 1)) * (1 + 1e-9));
      }),
      { seed: 61, numRuns: 200 }
    );
  });

  test('a clock that was set back loses nothing but the states too many', () => {
    const dropped = statesToDrop([100, 900, 800, 700], 3, 100);
    expect(dropped).toHaveLength(1);
    expect(dropped).not.toContain(0);
    expect(dropped).not.toContain(3);
  });
});
