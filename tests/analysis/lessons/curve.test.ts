/** Curves whose values are known. */
import { describe, expect, it } from 'vitest';
import { crossing, curveOf, exponentOf, extreme, valueAt } from '#analysis/lessons/curve';

const square = curveOf([1, 2, 4, 8], [3, 12, 48, 192], true);
const line = curveOf([0, 1, 3], [0, 2, 6], false);
const hill = curveOf([-2, -1, 0, 1, 2], [0, 3, 4, 3, 0], false);

describe('a curve', () => {
  it('is exact at its places and straight between them', () => {
    expect(valueAt(line, 1)).toBe(2);
    expect(valueAt(line, 2)).toBeCloseTo(4, 12);
  });

  it('is a power between the places of logarithmic axes', () => {
    expect(valueAt(square, 3)).toBeCloseTo(27, 9);
    expect(exponentOf(square, 1, 8)).toBeCloseTo(2, 12);
    expect(exponentOf(square, 3, 6)).toBeCloseTo(2, 12);
  });

  it('is straight where logarithms have no place', () => {
    expect(valueAt(curveOf([0, 1], [0, 2], true), 0.5)).toBeCloseTo(1, 12);
  });

  it('ends where it ends, and has no value beside a gap', () => {
    const gap = curveOf([0, 1, 2], [1, null, 3], false);
    expect(valueAt(line, -0.1)).toBeNull();
    expect(valueAt(line, 3.1)).toBeNull();
    expect(valueAt(gap, 0.5)).toBeNull();
    expect(valueAt(gap, 1)).toBeNull();
    expect(valueAt(gap, 2)).toBe(3);
    expect(crossing(gap, 2)).toBeNull();
  });

  it('does not mind the order of its values', () => {
    expect(valueAt(curveOf([3, 0, 1], [6, 0, 2], false), 2)).toBeCloseTo(4, 12);
  });

  it('has a highest and a lowest point, over a part of it too', () => {
    expect(extreme(hill, 1)).toEqual([0, 4]);
    expect(extreme(hill, -1)).toEqual([-2, 0]);
    expect(extreme(hill, 1, 0.5, 2)).toEqual([0.5, 3.5]);
    expect(extreme(hill, -1, -0.5, 1)).toEqual([1, 3]);
    expect(extreme(curveOf([0, 1], [null, null], false), 1)).toBeNull();
  });

  it('passes a level upwards and downwards, the first time', () => {
    expect(crossing(hill, 1.5)).toBeCloseTo(-1.5, 12);
    expect(crossing(curveOf([0, 1, 2], [5, 1, 5], false), 3)).toBeCloseTo(0.5, 12);
    expect(crossing(square, 27)).toBeCloseTo(3, 9);
    expect(crossing(hill, 5)).toBeNull();
  });

  it('has no exponent where anything is not positive', () => {
    expect(exponentOf(line, 0, 3)).toBeNull();
    expect(exponentOf(curveOf([1, 2], [-1, 2], false), 1, 2)).toBeNull();
  });
});
