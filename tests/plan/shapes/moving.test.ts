import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, distance, rotate } from '#plan/geometry/points';
import type { Point, Shape } from '#plan/schema';
import { centreOf, moveShape, outlineOf, pathOf, problemOf, rotateShape } from '#plan/shapes/index';
import { circle, diagonal, everyShape, polygon, quadrupole, rectangle } from './examples';

const shape = fc.constantFrom<Shape>(...everyShape, { ...rectangle, rotation: 20, cornerCut: 0.2 });
const number = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const point = fc.tuple(number(1_000), number(1_000));

const corners = (of: Shape): readonly Point[] =>
  pathOf(of).cells.flatMap((cell) =>
    cell.kind === 'circle' ? [cell.centre] : cell.edges.map(({ from }) => from)
  );

function expectSamePoints(found: readonly Point[], expected: readonly Point[]): void {
  expect(found).toHaveLength(expected.length);
  found.forEach((at, index) => expect(distance(at, expected[index]!)).toBeLessThan(1e-8));
}

describe('moving and turning a shape', () => {
  it('moves every point of the path alike', () => {
    fc.assert(
      fc.property(shape, point, (of, by) => {
        const moved = moveShape(of, by);
        expectSamePoints(
          corners(moved),
          corners(of).map((at) => add(at, by))
        );
        expect(distance(centreOf(moved), add(centreOf(of), by))).toBeLessThan(1e-8);
        expect(pathOf(moved).sawCut).toBeCloseTo(pathOf(of).sawCut, 8);
      })
    );
  });

  it('turns every point of the path about the pivot', () => {
    fc.assert(
      fc.property(shape, number(720), point, (of, degrees, pivot) => {
        const turned = rotateShape(of, degrees, pivot);
        expectSamePoints(
          corners(turned),
          corners(of).map((at) => rotate(at, degrees, pivot))
        );
        expect(pathOf(turned).sawCut).toBeCloseTo(pathOf(of).sawCut, 8);
        expect(problemOf(turned)).toBeNull();
      })
    );
  });

  it('keeps fields that it does not know', () => {
    for (const of of everyShape) {
      const marked = { ...of, colour: 'as surveyed' };
      expect(rotateShape(moveShape(marked, [1, 1]), 30, [0, 0])).toHaveProperty('colour', 'as surveyed');
    }
  });
});

describe('outline and centre', () => {
  it('draws the boxes by their four corners', () => {
    for (const box of [rectangle, quadrupole, diagonal]) {
      const xs = outlineOf(box).map((at) => at[0]);
      expect(outlineOf(box)).toHaveLength(4);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(box.width, 12);
    }
  });

  it('keeps the outline of a circle on the circle', () => {
    for (const at of outlineOf(circle)) expect(distance(at, circle.centre)).toBeCloseTo(0.9, 12);
  });

  it('takes the centre of area of a polygon', () => {
    expect(centreOf(polygon)).toEqual([4 / 3, 1]);
  });
});
