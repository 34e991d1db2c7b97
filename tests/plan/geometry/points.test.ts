import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bearing, distance, normalAngle, rotate } from '#plan/geometry/points';
import type { Point } from '#plan/schema';

const coordinate = fc.double({ min: -500, max: 500, noNaN: true });
const point = fc.tuple(coordinate, coordinate);

describe('rotate', () => {
  it.each<[number, Point]>([
    [0, [2, 1]],
    [90, [-1, 2]],
    [180, [-2, -1]],
    [-90, [1, -2]],
    [720, [2, 1]]
  ])('turns (2, 1) by %d° exactly', (degrees, expected) => {
    expect(rotate([2, 1], degrees).map((value) => value + 0)).toEqual(expected);
  });

  it('turns by 30° about a pivot: cos 30° = √3/2, sin 30° = 1/2', () => {
    const [x, y] = rotate([3, 1], 30, [1, 1]);
    expect(x).toBeCloseTo(1 + Math.sqrt(3), 12);
    expect(y).toBeCloseTo(2, 12);
  });

  it('keeps distances and comes back', () => {
    fc.assert(
      fc.property(point, point, fc.double({ min: -720, max: 720, noNaN: true }), (p, pivot, degrees) => {
        const turned = rotate(p, degrees, pivot);
        expect(distance(turned, pivot)).toBeCloseTo(distance(p, pivot), 9);
        expect(distance(rotate(turned, -degrees, pivot), p)).toBeLessThan(1e-9);
      })
    );
  });
});

describe('angles', () => {
  it.each([
    [0, 0],
    [180, 180],
    [-180, 180],
    [270, -90],
    [-540, 180],
    [725, 5]
  ])('%d° is %d°', (degrees, expected) => {
    expect(normalAngle(degrees)).toBe(expected);
  });

  it('measures a bearing counter-clockwise from +x', () => {
    expect(bearing([1, 1], [1, 5])).toBe(90);
    expect(bearing([0, 0], [-1, -1])).toBe(-135);
  });
});
