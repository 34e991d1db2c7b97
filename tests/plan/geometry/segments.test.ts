import { describe, expect, it } from 'vitest';
import {
  distanceToSegment,
  nearestOnSegment,
  segmentDistance,
  segmentIntersection
} from '#plan/geometry/segments';
import type { Point } from '#plan/schema';

const segment = (from: Point, to: Point) => ({ from, to });

describe('segments', () => {
  it('finds the foot of the perpendicular and stops at the ends', () => {
    const along = segment([0, 0], [4, 0]);
    expect(nearestOnSegment([1, 3], along)).toEqual([1, 0]);
    expect(nearestOnSegment([9, 3], along)).toEqual([4, 0]);
    expect(distanceToSegment([7, 4], along)).toBe(5);
  });

  it('treats a segment without length as a point', () => {
    expect(nearestOnSegment([3, 4], segment([1, 1], [1, 1]))).toEqual([1, 1]);
  });

  it('crosses two diagonals in the middle', () => {
    expect(segmentIntersection(segment([0, 0], [2, 2]), segment([0, 2], [2, 0]))).toEqual([1, 1]);
  });

  it.each([
    ['parallel', segment([0, 0], [2, 0]), segment([0, 1], [2, 1]), 1],
    ['short of each other', segment([0, 0], [1, 0]), segment([3, -1], [3, 1]), 2],
    ['touching at an end', segment([0, 0], [1, 0]), segment([1, 0], [1, 1]), 0],
    ['overlapping on one line', segment([0, 0], [2, 0]), segment([1, 0], [3, 0]), 0]
  ])('measures the distance of segments that are %s', (_, a, b, expected) => {
    expect(segmentDistance(a, b)).toBe(expected);
  });
});
