import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dayText, hourText, momentText, wallOf, wallTime } from '#units/day';
import { stamped, wallClock } from '#ui/field-check/readings/clock';

const zone = process.env['TZ'];

describe('in a zone with a summer time', () => {
  beforeAll(() => {
    process.env['TZ'] = 'Europe/Berlin';
  });
  afterAll(() => {
    if (zone === undefined) delete process.env['TZ'];
    else process.env['TZ'] = zone;
  });

  test('the clock on the wall is written with the zone of its day', () => {
    expect(wallClock(Date.UTC(2025, 10, 26, 7, 12))).toBe('2025-11-26T08:12');
    expect(stamped('2025-11-26T08:12')).toBe('2025-11-26T08:12:00+01:00');
    expect(stamped('2025-07-01T08:12')).toBe('2025-07-01T08:12:00+02:00');
  });

  test('the day of a reading just after midnight is the day on the wall', () => {
    expect(stamped(wallClock(Date.UTC(2025, 10, 25, 23, 30))).slice(0, 10)).toBe('2025-11-26');
  });
});

test('a stamp of anywhere shows its own clock', () => {
  expect(wallOf('2025-11-26T08:12:30-07:00')).toBe('2025-11-26T08:12');
  expect(wallOf('2025-11-26')).toBe('2025-11-26T00:00');
  expect(wallOf('spring')).toBe('');
  expect(wallOf(undefined)).toBe('');
  expect(momentText('2025-11-26T08:12:30-07:00')).toBe('26 Nov 2025, 08:12');
  expect(dayText('2025-11-26')).toBe('26 Nov 2025');
  expect(hourText('2025-11-26')).toBe('');
  expect(momentText('spring')).toBe('spring');
});

test('along an axis an hour is an hour, and what is no date has no place', () => {
  expect(wallTime('2025-11-26T09:12:00+01:00')! - wallTime('2025-11-26T08:12:00-05:00')!).toBe(3_600_000);
  expect(wallTime('2025-13-45')).toBeNull();
  expect(wallTime(undefined)).toBeNull();
});
