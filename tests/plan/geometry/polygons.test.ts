import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, rotate } from '#plan/geometry/points';
import { centroid, contains, crossingSides, extentOf, perimeter, signedArea } from '#plan/geometry/polygons';
import type { Point } from '#plan/schema';

const triangle: Point[] = [
  [0, 0],
  [4, 0],
  [0, 3]
];
const bowTie: Point[] = [
  [0, 0],
  [2, 2],
  [2, 0],
  [0, 2]
];
const lShape: Point[] = [
  [0, 0],
  [3, 0],
  [3, 1],
  [1, 1],
  [1, 3],
  [0, 3]
];

describe('polygons', () => {
  it('measures the 3-4-5 triangle', () => {
    expect(signedArea(triangle)).toBe(6);
    expect(signedArea([...triangle].reverse())).toBe(-6);
    expect(perimeter(triangle)).toBe(12);
    expect(centroid(triangle)).toEqual([4 / 3, 1]);
    expect(extentOf(triangle)).toEqual({ min: [0, 0], max: [4, 3] });
  });

  it('places the centroid of an L by parts: 3 × 1 at (1.5, 0.5) and 1 × 2 at (0.5, 2)', () => {
    const [x, y] = centroid(lShape);
    expect(x).toBeCloseTo((3 * 1.5 + 2 * 0.5) / 5, 12);
    expect(y).toBeCloseTo((3 * 0.5 + 2 * 2) / 5, 12);
  });

  it('falls back to the mean of the corners when there is no area', () => {
    expect(
      centroid([
        [0, 0],
        [2, 0],
        [4, 0]
      ])
    ).toEqual([2, 0]);
  });

  it('keeps area and perimeter wherever the polygon lies and however it is turned', () => {
    const shift = fc.tuple(
      fc.double({ min: -9e3, max: 9e3, noNaN: true }),
      fc.double({ min: -9e3, max: 9e3, noNaN: true })
    );
    fc.assert(
      fc.property(shift, fc.double({ min: -360, max: 360, noNaN: true }), (by, degrees) => {
        const moved = lShape.map((corner) => add(rotate(corner, degrees), by));
        expect(signedArea(moved)).toBeCloseTo(5, 7);
        expect(perimeter(moved)).toBeCloseTo(12, 7);
      })
    );
  });

  it('knows inside from outside in the notch of an L', () => {
    expect(contains(lShape, [0.5, 2])).toBe(true);
    expect(contains(lShape, [2, 2])).toBe(false);
    expect(contains(lShape, [-1, 1])).toBe(false);
  });
});

describe('crossingSides', () => {
  it('passes simple polygons', () => {
    expect(crossingSides(triangle)).toBeNull();
    expect(crossingSides(lShape)).toBeNull();
  });

  it('names the sides of a bow tie that cross', () => {
    expect(crossingSides(bowTie)).toEqual([0, 2]);
  });

  it('finds a corner that touches a far side', () => {
    const touching: Point[] = [
      [0, 0],
      [4, 0],
      [4, 3],
      [2, 0],
      [0, 3]
    ];
    expect(crossingSides(touching)).not.toBeNull();
  });

  it('finds a side that runs back over the one before it', () => {
    const spike: Point[] = [
      [0, 0],
      [2, 0],
      [2, 2],
      [2, 1],
      [0, 1]
    ];
    expect(crossingSides(spike)).toEqual([1, 2]);
  });
});
