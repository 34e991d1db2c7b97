/** Lengths are those that the drawing has by plane geometry. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthSideBySide } from '#plan/geometry/side-by-side';
import { rotate } from '#plan/geometry/points';
import type { Point } from '#plan/schema';

const APART = 0.15;
const beside = (...ways: (readonly Point[])[]): number => lengthSideBySide(ways, APART);

const straight: readonly Point[] = [
  [0, 0],
  [10, 0]
];
const moved = (way: readonly Point[], [dx, dy]: Point): readonly Point[] =>
  way.map(([x, y]) => [x + dx, y + dy]);

describe('ways side by side', () => {
  it('count as far as they are opposite to each other', () => {
    expect(beside(straight, moved(straight, [0, 0.1]))).toBeCloseTo(10, 9);
    expect(beside(straight, moved(straight, [4, 0.1]))).toBeCloseTo(6, 9);
    expect(beside(straight, moved(straight, [10, 0]))).toBe(0);
  });

  it('are the same way drawn from the other end', () => {
    expect(beside(straight, moved(straight, [4, 0.1]).toReversed())).toBeCloseTo(6, 9);
  });

  it('keep company up to fifteen degrees, and only cross beyond', () => {
    const slanting = (degrees: number) =>
      straight.map(([x, y]) => rotate([x - 5, y], degrees)).map(([x, y]): Point => [x + 5, y]);
    const within = (degrees: number) => (2 * APART) / Math.sin((degrees * Math.PI) / 180);
    // Square to the one way, at most `APART` off it: on the slanting one that is 2·APART / sin, on the other the same.
    expect(beside(straight, slanting(14))).toBeCloseTo(within(14), 9);
    expect(beside(straight, slanting(16))).toBe(0);
  });

  it('count no further apart than is asked', () => {
    expect(beside(straight, moved(straight, [0, 0.149]))).toBeCloseTo(10, 9);
    expect(beside(straight, moved(straight, [0, 0.151]))).toBe(0);
  });

  it('only cross at a right angle, and count for nothing', () => {
    expect(beside(straight, [[5, -5], [5, 5]])).toBe(0); // prettier-ignore
  });

  it('diverge: they are 0.15 m apart after 0.15 m over the sine of the angle, seen from either', () => {
    const sine = 1 / Math.hypot(20, 1);
    expect(beside(straight, [[0, 0], [20, 1]])).toBeCloseTo(0.15 / sine, 9); // prettier-ignore
  });

  it('count along both legs of a bend that they share', () => {
    const inner: readonly Point[] = [
      [0, 0.1],
      [9.9, 0.1],
      [9.9, 10]
    ];
    const outer: readonly Point[] = [
      [0, 0],
      [10, 0],
      [10, 10]
    ];
    // what is opposite to both of the inner one's legs: all of it
    expect(beside(inner, outer)).toBeCloseTo(9.9 + 9.9, 9);
  });

  it('are together where all of them are', () => {
    const third = moved(straight, [3, -0.05]);
    expect(beside(straight, moved(straight, [-2, 0.05]), third)).toBeCloseTo(5, 9);
  });

  it('is nothing for one way alone, and for ways without length', () => {
    expect(beside(straight)).toBe(0);
    expect(beside(straight, [[1, 0]])).toBe(0);
    expect(beside(straight, [[1, 0], [1, 0]])).toBe(0); // prettier-ignore
  });
});

const coordinate = fc.integer({ min: -40, max: 40 }).map((n) => n / 4);
const way = fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 5 });
const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, [x, y], at) => sum + Math.hypot(x - points[at]![0], y - points[at]![1]), 0);

describe('any ways', () => {
  it('a way beside itself has its whole length', () => {
    fc.assert(
      fc.property(way, (points) => {
        expect(beside(points, points)).toBeCloseTo(lengthOf(points), 6);
      }),
      { seed: 11 }
    );
  });

  it('the order, the direction, and where and how the drawing lies make no difference', () => {
    fc.assert(
      fc.property(way, way, fc.integer({ min: 0, max: 359 }), (a, b, angle) => {
        const length = beside(a, b);
        const turned = (points: readonly Point[]) => points.map((point) => rotate(point, angle, [3, 1]));
        // a distance of exactly the limit is no case for rounding to decide
        fc.pre(Math.abs(lengthSideBySide([a, b], APART * 1.001) - length) < 0.05);
        expect(beside(b, a)).toBeCloseTo(length, 9);
        expect(beside(a.toReversed(), b)).toBeCloseTo(length, 6);
        expect(beside(turned(a), turned(b))).toBeCloseTo(length, 2);
      }),
      { seed: 12 }
    );
  });
});
