/**
 * Stopping, yellow, decision zone and passage time against published figures. The documents are NCHRP Report 812 (Signal
 * Timing Manual, second edition, 2015), FHWA-HOP-08-024 (Traffic Signal Timing Manual, 2008) and AASHTO's A Policy on
 * Geometric Design of Highways and Streets (2018), each as restated with document and page [S].
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decisionZone, widened } from '#analysis/approach/decision-zone';
import { AT_SIGNALS, SEEING, stoppingDistance, usualYellow, yellowTime } from '#analysis/approach/motion';
import { headwayHeld, meanSpeedOf, passageTime, VEHICLE_LENGTH } from '#analysis/approach/passage-time';
import {
  MILE_PER_HOUR,
  PUBLISHED_PASSAGES,
  PUBLISHED_ROWS,
  PUBLISHED_SIGHT_DISTANCES,
  PUBLISHED_YELLOWS,
  PUBLISHED_ZONES
} from '#analysis/approach/published';
import { FOOT } from '#units/constants';

const KILOMETRE_PER_HOUR = 1 / 3.6;
const upTo = (step: number, value: number): number => Math.ceil(value / step - 1e-9) * step;

describe('stopping', () => {
  it('is reaction and braking, by hand', () => {
    // 20 m/s: 20·1 + 400/(2·4) = 70
    expect(stoppingDistance(20, { reaction_s: 1, deceleration: 4 })).toBeCloseTo(70, 12);
    // 30 m/s, 2.5 s and 3.4 m/s²: 75 + 900/6.8 = 207.3529
    expect(stoppingDistance(30, { reaction_s: 2.5, deceleration: 3.4 })).toBeCloseTo(207.352_941, 5);
    // downhill 5 %: 4 − 0.4905 = 3.5095 are left: 20 + 400/7.019 = 76.98817
    expect(stoppingDistance(20, { reaction_s: 1, deceleration: 4 }, -0.05)).toBeCloseTo(76.988_175, 5);
  });

  it('never ends where the grade takes all that the brakes give', () => {
    expect(stoppingDistance(20, { reaction_s: 1, deceleration: 1 }, -0.2)).toBe(Infinity);
  });

  it.each(PUBLISHED_SIGHT_DISTANCES)(
    'stopping sight distance at $speed_mph mph is $sight_ft ft — AASHTO 2018, section 3.1.2 [S]',
    ({ speed_mph, sight_ft }) => {
      const feet = stoppingDistance(speed_mph * MILE_PER_HOUR, SEEING) / FOOT;
      expect(upTo(5, feet)).toBe(sight_ft);
    }
  );

  it.each([
    [50, 65],
    [60, 85],
    [70, 105],
    [80, 130],
    [100, 185]
  ])(
    'stopping sight distance at %i km/h is %i m — AASHTO, metric table, from memory [M]',
    (speed, metres) => {
      const found = stoppingDistance(speed * KILOMETRE_PER_HOUR, { reaction_s: 2.5, deceleration: 3.4 });
      expect(upTo(5, found)).toBe(metres);
    }
  );
});

describe('the yellow that belongs to it', () => {
  it.each(PUBLISHED_YELLOWS)(
    'is $yellow_s s at $speed_mph mph — NCHRP 812, exhibit 6-2 [S]',
    ({ speed_mph, yellow_s }) => {
      const found = usualYellow(yellowTime(speed_mph * MILE_PER_HOUR, AT_SIGNALS));
      expect(Math.round(found * 10) / 10).toBe(yellow_s);
    }
  );

  it('takes a tenth of a second for a percent of grade — NCHRP 812, exhibit 6-2, as restated [S]', () => {
    const at = (grade: number) => yellowTime(40 * MILE_PER_HOUR, AT_SIGNALS, grade);
    expect(at(-0.01) - at(0)).toBeGreaterThan(0.05);
    expect(at(-0.01) - at(0)).toBeLessThan(0.15);
    expect(at(0.01)).toBeLessThan(at(0));
  });

  it('stays between 3 and 6 s', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 70, noNaN: true }), (speed) => {
        const found = usualYellow(yellowTime(speed, AT_SIGNALS));
        expect(found).toBeGreaterThanOrEqual(3);
        expect(found).toBeLessThanOrEqual(6);
      })
    );
  });
});

describe('the decision zone', () => {
  it.each(PUBLISHED_ZONES)(
    'lies $from_ft to $to_ft ft before the line at $speed_mph mph — NCHRP 812, exhibit 4-7 [S]',
    ({ speed_mph, from_ft, to_ft }) => {
      const found = widened(decisionZone(speed_mph * MILE_PER_HOUR));
      expect(found.from_m / FOOT).toBeCloseTo(from_ft, 9);
      expect(found.to_m / FOOT).toBeCloseTo(to_ft, 9);
    }
  );

  it.each([
    [35, 86.9, 38.1],
    [55, 135.6, 61.0]
  ])('the same in metres: %i mph gives %f to %f m (feet of the exhibit times 0.3048)', (mph, from, to) => {
    const found = widened(decisionZone(mph * MILE_PER_HOUR));
    expect(found.from_m).toBeCloseTo(from, 1);
    expect(found.to_m).toBeCloseTo(to, 1);
  });

  it('by hand: 20 m/s, 5.5 to 2.5 s: 110 to 50 m', () => {
    expect(decisionZone(20)).toEqual({ from_m: 110, to_m: 50 });
    expect(widened({ from_m: 110.1, to_m: 49.9 }, 5)).toEqual({ from_m: 115, to_m: 45 });
    expect(widened({ from_m: 110, to_m: 50 }, 5)).toEqual({ from_m: 110, to_m: 50 });
  });
});

describe('passage time', () => {
  it.each(PUBLISHED_PASSAGES)(
    'over $zone_ft ft is $at25_s s at 25 mph and $at55_s s at 55 mph — NCHRP 812, exhibit 6-12 [S]',
    ({ zone_ft, at25_s, at55_s }) => {
      const at = (mph: number) => Math.round(passageTime(mph * MILE_PER_HOUR, zone_ft * FOOT) * 10) / 10;
      expect([at(25), at(55)]).toEqual([at25_s, at55_s]);
    }
  );

  it('by hand — FHWA-HOP-08-024, equation 5-5 [S]: 3 − (6 + 2)/10 = 2.2; never below nought', () => {
    expect(passageTime(10, 2, { vehicleLength: 6 })).toBeCloseTo(2.2, 12);
    expect(passageTime(10, 60)).toBe(0);
    // the mean speed is 0.88 of the 85th percentile, page 5-21
    expect(meanSpeedOf(25)).toBeCloseTo(22, 12);
  });

  it('and the headway that a row of loops holds, by hand', () => {
    // 60 m between, a loop of 2 m, 20 m/s, 1.5 s: (62 + 6.096)/20 + 1.5
    expect(VEHICLE_LENGTH).toBeCloseTo(6.096, 9);
    expect(headwayHeld(20, { between: 60, loopLength: 2, extension_s: 1.5 })).toBeCloseTo(4.9048, 9);
    // one loop: the passage time is what is left of the headway
    expect(headwayHeld(20, { between: 0, loopLength: 2, extension_s: passageTime(20, 2) })).toBeCloseTo(3, 9);
  });
});

it('the rows of the table hold each published figure once', () => {
  const zones = PUBLISHED_ROWS.filter(({ zone_ft }) => zone_ft !== null);
  expect(zones.map(({ speed_mph }) => speed_mph)).toEqual(PUBLISHED_ZONES.map(({ speed_mph }) => speed_mph));
  expect(PUBLISHED_ROWS.find(({ speed_mph }) => speed_mph === 35)).toEqual({
    speed_mph: 35,
    zone_ft: [285, 125],
    yellow_s: 3.6,
    sight_ft: 250
  });
});
