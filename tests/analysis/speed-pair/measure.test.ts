/** Speed and length from two loops, against arithmetic done by hand on responses that rise and fall straight. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { responseAt } from '#analysis/passing/zones';
import { crossingOf, measureSpeed, shareOff, spacingFor } from '#analysis/speed-pair/measure';
import type { PairSide } from '#analysis/speed-pair/results';
import { differenceOf, scanOf, timeSpread } from '#analysis/speed-pair/timing';
import { siteOf, rowSite, unit } from '../support/sites';
import { passOf, side, triangle } from './triangle';

const SPACING = 5;
const measured = (
  thresholds: readonly [number, number],
  { peaks = [0.02, 0.02], scans = [0, 0], tolerance = 0, speed = 10 } = {}
) => {
  const sides: readonly [PairSide, PairSide] = [
    side(-0.9, thresholds[0], { scan_s: scans[0]! }),
    side(-0.9 + SPACING, thresholds[1], { scan_s: scans[1]! })
  ];
  const pass = passOf([triangle(0, peaks[0]!), triangle(SPACING, peaks[1]!)], sides);
  return measureSpeed({ sides, spacing_m: SPACING }, tolerance, pass, speed);
};

it('a vehicle that is lost on the way is there from its first trip to its last release', () => {
  // 0.02 at 0 m and at 10 m, nothing in between: trips at −3·(1 − 0.2), releases at 10 + 3·(1 − 0.12)
  const [front, rear] = [triangle(0, 0.02), triangle(10, 0.02)];
  const values = Float64Array.from({ length: 400 }, (_, k) =>
    Math.max(responseAt(front, -4 + 0.05 * k), responseAt(rear, -4 + 0.05 * k))
  );
  const crossing = crossingOf({ ...front, from: -4, values }, 0.004, 0.0024)!;
  expect(crossing.detections).toBe(2);
  expect(crossing.trip_m).toBeCloseTo(-2.4, 9);
  expect(crossing.release_m).toBeCloseTo(12.64, 9);
});

describe('two loops that are alike', () => {
  it('measure the speed exactly, and the length that the threshold gives', () => {
    const found = measured([0.004, 0.004])!;
    expect(found.tripDistance_m).toBeCloseTo(5, 9);
    expect(found.between_s).toBeCloseTo(0.5, 9);
    expect(found.speed_m_s).toBeCloseTo(10, 9);
    expect(found.errors.trips).toBeCloseTo(0, 9);
    // trips 3·(1 − 0.2) = 2.4 m before the middle and releases 3·(1 − 0.12) = 2.64 m after it: 5.04 m less 1.8 m of loop
    expect(found.on_s[0]).toBeCloseTo(0.504, 9);
    expect(found.length_m).toBeCloseTo(5.04 - 1.8, 9);
    expect(found.lengthChance_m).toBe(0);
  });

  it.each([
    // trips at −3·(1 − T1/P) and 5 − 3·(1 − T2/P): 5 + 3·(T2 − T1)/P from one to the other, P = 0.02
    { thresholds: [0.004, 0.008], distance: 5.6, share: 5 / 5.6 - 1 },
    { thresholds: [0.008, 0.004], distance: 4.4, share: 5 / 4.4 - 1 },
    { thresholds: [0.004, 0.014], distance: 6.5, share: 5 / 6.5 - 1 }
  ] as const)('with thresholds $thresholds trip $distance m apart', ({ thresholds, distance, share }) => {
    const found = measured(thresholds)!;
    expect(found.tripDistance_m).toBeCloseTo(distance, 9);
    expect(found.speed_m_s).toBeCloseTo((10 * 5) / distance, 9);
    expect(found.errors.trips).toBeCloseTo(share, 9);
    // all of it comes of the thresholds: with the first one's on both, the trips are 5 m apart
    expect(found.errors.thresholds).toBeCloseTo(share, 9);
    expect(found.errors.responses).toBeCloseTo(0, 9);
  });

  it('and one that answers half as much trips later: the response alone is to blame', () => {
    // the second trips at 5 − 3·(1 − 0.004/0.01) = 3.2 instead of 2.6
    const found = measured([0.004, 0.004], { peaks: [0.02, 0.01] })!;
    expect(found.tripDistance_m).toBeCloseTo(5.6, 9);
    expect(found.errors.thresholds).toBeCloseTo(0, 9);
    expect(found.errors.responses).toBeCloseTo(5 / 5.6 - 1, 9);
    // half the threshold on it makes good for that, and the two causes cancel
    const mended = measured([0.004, 0.002], { peaks: [0.02, 0.01] })!;
    expect(mended.errors.trips).toBeCloseTo(0, 9);
    expect(mended.errors.thresholds).toBeCloseTo(-(5 / 5.6 - 1), 9);
  });

  it('give no speed where one of them does not trip, or the second trips first', () => {
    expect(measured([0.004, 0.03])).toBeNull();
    // first at −3·0.05 = −0.15; second far away on the other side
    const sides: readonly [PairSide, PairSide] = [side(0, 0.019), side(0.5, 0.001)];
    const pass = passOf([triangle(0.9, 0.02), triangle(1.4, 0.02)], sides);
    expect(measureSpeed({ sides, spacing_m: 0.5 }, 0, pass, 10)).toBeNull();
  });
});

describe('what chance adds', () => {
  it('is the tolerance of the spacing over the distance', () => {
    const found = measured([0.004, 0.004], { tolerance: 0.02 })!;
    expect(found.errors.spacing).toBeCloseTo(0.004, 9);
    expect(found.errors.chance.usual).toBeCloseTo(0.004, 9);
    expect(shareOff(found)).toBeCloseTo(0.004, 9);
  });

  it('is the moment of looking: 10 ms each, half a second from trip to trip', () => {
    const found = measured([0.004, 0.004], { scans: [0.01, 0.01] })!;
    // the difference of two even lots of a: a·(1 − √0.05) nineteen times in twenty, a at worst
    expect(found.errors.time.usual).toBeCloseTo((0.01 * (1 - Math.sqrt(0.05))) / 0.5, 9);
    expect(found.errors.time.worst).toBeCloseTo(0.01 / 0.49, 9);
    const both = measured([0.004, 0.004], { scans: [0.01, 0.01], tolerance: 0.02 })!;
    expect(both.errors.chance.usual).toBeCloseTo(Math.hypot(0.004, found.errors.time.usual), 12);
    expect(both.errors.chance.worst).toBeCloseTo(0.004 + 0.01 / 0.49, 12);
    // 5.04 m occupied, off by the speed's share; and two looks on either loop, of which the mean counts
    const looks = (10 * Math.SQRT2 * 0.01 * (1 - Math.sqrt(0.05))) / 2;
    expect(both.lengthChance_m).toBeCloseTo(Math.hypot(5.04 * both.errors.chance.usual, looks), 9);
  });

  it('may swallow the whole of a short time', () => {
    expect(measured([0.004, 0.004], { scans: [0.6, 0.1] })!.errors.time.worst).toBe(Infinity);
  });

  it('of two lots that are drawn again and again stays inside nineteen times in twenty', () => {
    // a seeded generator, so that the same lots are drawn every time
    let state = 12_345;
    const lot = () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
    for (const [a, b] of [
      [0.01, 0.01],
      [0.01, 0.004],
      [0.01, 0.0001],
      [0.002, 0.01]
    ] as const) {
      const half = differenceOf(a, b);
      const draws = 40_000;
      let outside = 0;
      for (let k = 0; k < draws; k++) if (Math.abs(a * (lot() - 0.5) - b * (lot() - 0.5)) > half) outside++;
      expect(outside / draws).toBeGreaterThan(0.045);
      expect(outside / draws).toBeLessThan(0.055);
    }
    expect(differenceOf(0, 0)).toBe(0);
    expect(differenceOf(0.01, 0)).toBeCloseTo(0.004_75, 12);
    expect(timeSpread(0.004, 0.01).worst).toBe(0.01);
  });

  it('of a unit that scans in turn is as long as all its channels in use', () => {
    const three = rowSite([[0, 0], [0, 5], [0, 10]], { units: [unit('U1', { measuringTime_s: 0.005 })] }); // prettier-ignore
    expect(scanOf(three, three.units[0]!)).toBeCloseTo(0.015, 12);
    const apart = { ...three.units[0]!, scansInTurn: false };
    expect(scanOf(three, apart)).toBeCloseTo(0.005, 12);
    expect(scanOf(siteOf({ units: [unit('U1')] }), three.units[0]!)).toBeCloseTo(0.005, 12);
  });
});

describe('the spacing that brings the error down', () => {
  it('by hand: 0.6 m off, nothing by chance, 5 %', () => {
    // 0.6/(d + 0.6) = 0.05 → d = 11.4
    const found = measured([0.004, 0.008])!;
    expect(spacingFor(found, SPACING, 0.05)).toBeCloseTo(11.4, 9);
    // and off the other way: 0.6/(d − 0.6) = 0.05 → d = 12.6
    expect(spacingFor(measured([0.008, 0.004])!, SPACING, 0.05)).toBeCloseTo(12.6, 9);
  });

  it('is the one at which the share off is that', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.002, max: 0.009, noNaN: true }),
        fc.double({ min: 0.002, max: 0.009, noNaN: true }),
        fc.double({ min: 0.01, max: 0.2, noNaN: true }),
        (a, b, share) => {
          const scans = [0.01, 0.02];
          const wide = spacingFor(measured([a, b], { scans, tolerance: 0.02 })!, SPACING, share);
          fc.pre(wide > 1);
          const sides: readonly [PairSide, PairSide] = [
            side(0, a, { scan_s: 0.01 }),
            side(wide, b, { scan_s: 0.02 })
          ];
          const moved = passOf([triangle(0.9, 0.02), triangle(0.9 + wide, 0.02)], sides);
          const found = measureSpeed({ sides, spacing_m: wide }, 0.02, moved, 10)!;
          expect(shareOff(found)).toBeCloseTo(share, 6);
        }
      )
    );
  });
});

describe('whatever the speed', () => {
  it('the share that the trips are off by stays, and the spread of the time grows with it', () => {
    const thresholds = fc.double({ min: 0.001, max: 0.015, noNaN: true });
    fc.assert(
      fc.property(thresholds, thresholds, fc.double({ min: 1, max: 50, noNaN: true }), (a, b, speed) => {
        const [slow, fast] = [speed, 2 * speed].map((each) =>
          measured([a, b], { speed: each, scans: [0.004, 0.004] })!
        );
        expect(fast!.errors.trips).toBeCloseTo(slow!.errors.trips, 12);
        expect(fast!.speed_m_s / slow!.speed_m_s).toBeCloseTo(2, 9);
        expect(fast!.errors.time.usual / slow!.errors.time.usual).toBeCloseTo(2, 9);
        expect(fast!.length_m).toBeCloseTo(slow!.length_m, 9);
      })
    );
  });
});
