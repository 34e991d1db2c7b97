/** Where advance loops go: by hand, and what the rule promises at any speed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  MOST_LOOPS,
  planApproach,
  steppedDistances,
  SPEED_STEP,
  USUAL_APPROACH,
  usualSlowSpeed,
  type ApproachWish
} from '#analysis/approach/advance';
import { MILE_PER_HOUR } from '#analysis/approach/published';

const wish = (over: Partial<ApproachWish> = {}): ApproachWish => ({
  ...USUAL_APPROACH,
  speed: 20,
  slowSpeed: 15,
  extension_s: 2,
  loopLength: 2,
  ...over
});

describe('advance loops', () => {
  it('by hand: 20 and 15 m/s, 2 s of extension, loops of 2 m', () => {
    const plan = planApproach(wish());
    // 110 to 50 m; 2 + 15·2 = 32 m from edge to edge at most; 60/32 → two gaps of 30 m
    expect(plan.zone).toEqual({ from_m: 110, to_m: 50 });
    expect(plan.reach_m).toBe(32);
    expect(plan.distances_m).toEqual([110, 80, 50]);
    // the slow vehicle's own zone ends at 37.5 m; its call is held to 50 − 32 = 18 m
    expect(plan.slowZone.to_m).toBe(37.5);
    expect(plan.carriedTo_m).toBe(18);
    // (60 + 2 + 6.096)/20 + 2
    expect(plan.headwayHeld_s).toBeCloseTo(5.4048, 9);
  });

  it('goes nearer than the zone of the fast where a slow vehicle would lose its call', () => {
    const plan = planApproach(wish({ slowSpeed: 8, extension_s: 1, zone: { from_s: 3.5, to_s: 2.5 } }));
    // 70 to 50 m; reach 2 + 8 = 10 m; the slow zone ends at 20 m, so the last loop lies at 30 m; (70 − 30)/10 = 4 gaps
    expect(plan.distances_m).toEqual([70, 60, 50, 40, 30]);
    expect(plan.carriedTo_m).toBe(20);
  });

  it('says so where it would take more loops than anybody cuts', () => {
    // reach 2 + 4 = 6 m, the last at 26 m: (70 − 26)/6 → 8 gaps, nine loops
    const plan = planApproach(wish({ slowSpeed: 8, extension_s: 0.5, zone: { from_s: 3.5, to_s: 2.5 } }));
    expect(plan.reach_m).toBe(6);
    expect(plan.distances_m).toEqual([]);
  });

  it('finds none where there is no extension to speak of', () => {
    const plan = planApproach(wish({ extension_s: 0 }));
    expect(plan.distances_m).toEqual([]);
    expect(plan.carriedTo_m).toBeNull();
    expect(plan.headwayHeld_s).toBeNull();
  });

  it('keeps every slow vehicle on call through its zone, from the first loop on', () => {
    const speeds = fc.double({ min: 8, max: 35, noNaN: true });
    fc.assert(
      fc.property(
        speeds,
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        (speed, share, extension_s) => {
          const slowSpeed = speed * share;
          const plan = planApproach(wish({ speed, slowSpeed, extension_s }));
          fc.pre(plan.distances_m.length > 0);
          const loops = plan.distances_m;
          expect(loops[0]).toBeCloseTo(plan.zone.from_m, 9);
          expect(loops.length).toBeLessThanOrEqual(MOST_LOOPS);
          // a point that drives at the slow speed: on call over a loop and for the extension after it
          let heldTo = Infinity;
          for (const edge of loops) {
            if (heldTo < Infinity) expect(heldTo).toBeLessThanOrEqual(edge + 1e-9);
            heldTo = edge - 2 - slowSpeed * extension_s;
          }
          expect(heldTo).toBeLessThanOrEqual(plan.slowZone.to_m + 1e-9);
          // and not with a loop more than it takes
          const gaps = loops.length - 1;
          if (gaps > 1) expect((loops[0]! - loops.at(-1)!) / (gaps - 1)).toBeGreaterThan(plan.reach_m);
        }
      )
    );
  });

  it('an earlier rule beside it: one loop for every ten miles an hour less — FHWA-HOP-08-024, page 4-25 [S]', () => {
    // 55, 45, 35 and 25 mph at 5.5 s: 443.7, 363, 282.3 and 201.7 ft
    const feet = steppedDistances(55 * MILE_PER_HOUR, { from_s: 5.5 }).map((each) => each / 0.3048);
    [443.67, 363, 282.33, 201.67].forEach((each, k) => {
      expect(feet[k]).toBeCloseTo(each, 2);
    });
    expect(steppedDistances(15 * MILE_PER_HOUR, { from_s: 5.5 })).toHaveLength(2);
  });

  it('takes ten miles an hour off for the slow end, but never more than half', () => {
    expect(SPEED_STEP).toBeCloseTo(10 * MILE_PER_HOUR, 12);
    expect(usualSlowSpeed(55 * MILE_PER_HOUR)).toBeCloseTo(45 * MILE_PER_HOUR, 9);
    expect(usualSlowSpeed(12 * MILE_PER_HOUR)).toBeCloseTo(6 * MILE_PER_HOUR, 9);
  });
});
