import { describe, expect, it } from 'vitest';
import { linePath, reachOf, rowsOf, stepPath, valueAt } from '#ui/frequencies/simulator/curves';

const CURVE = { times: [0, 1, 3], values: [5, -7, 2] };
const x = (time: number): number => 10 * time;
const y = (value: number): number => 100 - value;

describe('a curve as a path', () => {
  it('goes from point to point', () => {
    expect(linePath(CURVE, x, y)).toBe('M0.0 95.0L10.0 107.0L30.0 98.0');
    expect(linePath({ times: [], values: [] }, x, y)).toBe('');
  });

  it('or keeps each value for as long as a measurement takes', () => {
    expect(stepPath({ times: [0, 2], values: [1, 3] }, 2, x, y)).toBe(
      'M0.0 99.0L20.0 99.0L20.0 97.0L40.0 97.0'
    );
  });
});

describe('the value at a time', () => {
  it.each([
    [0, 5],
    [0.4, 5],
    [0.6, -7],
    [1.9, -7],
    [2.1, 2],
    [3, 2]
  ])('%f is that of the nearest point', (time, wanted) => {
    expect(valueAt(CURVE, time)).toBe(wanted);
  });

  it('is none outside the curve', () => {
    expect(valueAt(CURVE, -0.1)).toBeNull();
    expect(valueAt(CURVE, 3.1)).toBeNull();
    expect(valueAt({ times: [], values: [] }, 0)).toBeNull();
  });

  it('is that of the measurement which runs', () => {
    const readings = { times: [0, 2, 4], values: [10, 20, 30] };
    expect([0, 1.99, 2, 5.9].map((time) => valueAt(readings, time, 2))).toEqual([10, 10, 20, 30]);
    expect(valueAt(readings, 6, 2)).toBeNull();
    expect(valueAt(readings, -0.1, 2)).toBeNull();
  });
});

describe('the reach', () => {
  it('is the largest distance from zero of numbers and curves', () => {
    expect(reachOf(CURVE, 3)).toBe(7);
    expect(reachOf(CURVE, -8, { times: [0], values: [1] })).toBe(8);
    expect(reachOf()).toBe(0);
  });
});

describe('rows of a table', () => {
  it('are spread over the curve, first and last among them', () => {
    const long = { times: Array.from({ length: 101 }, (_, n) => n), values: [] };
    expect(rowsOf(long, 5)).toEqual([0, 25, 50, 75, 100]);
    expect(rowsOf(CURVE, 25)).toEqual([0, 1, 2]);
    expect(rowsOf({ times: [4], values: [1] }, 25)).toEqual([0]);
    expect(rowsOf({ times: [], values: [] }, 25)).toEqual([]);
  });
});
