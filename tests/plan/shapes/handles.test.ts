import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, distance, rotate, subtract } from '#plan/geometry/points';
import type { Point, Shape } from '#plan/schema';
import { centreOf, definitionOf, problemOf, shapeDefinitions } from '#plan/shapes/index';
import { circle, diagonal, everyShape, polygon, quadrupole, rectangle } from './examples';

const OPPOSITE: Record<string, string> = {
  sw: 'ne',
  se: 'nw',
  ne: 'sw',
  nw: 'se',
  n: 's',
  s: 'n',
  e: 'w',
  w: 'e'
};
const handleOf = (shape: Shape, id: string): Point =>
  definitionOf(shape)
    .handles(shape)
    .find((handle) => handle.id === id)!.at;
const drag = (shape: Shape, id: string, to: Point, fromCentre?: boolean) =>
  definitionOf(shape).dragHandle(shape, id, to, fromCentre);

const boxes = [rectangle, quadrupole, diagonal] as const;
const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const turnedBox = fc
  .tuple(fc.constantFrom(...boxes), number(-180, 180))
  .map(([box, rotation]) => ({ ...box, rotation }));

describe('handles', () => {
  it('are four corners and four sides of a box, four points of a circle, the points of a polygon', () => {
    expect(everyShape.map((shape) => definitionOf(shape).handles(shape).length)).toEqual([8, 8, 8, 4, 3]);
  });

  it('lie where their names say before rotation', () => {
    expect(handleOf(rectangle, 'sw')).toEqual([0.4, 0.8]);
    expect(handleOf(rectangle, 'n')).toEqual([1, 3.2]);
    expect(handleOf(circle, 'e')).toEqual([0.9, 4]);
    expect(handleOf(polygon, '1')).toEqual([4, 0]);
  });
});

describe('dragging', () => {
  it('grows a box from its corner by hand: 1.2 × 2.4 pulled by (0.8, −0.4) is 2 × 2', () => {
    expect(drag(rectangle, 'ne', [2.4, 2.8])).toMatchObject({ width: 2, length: 2 });
    const dragged = centreOf(drag(rectangle, 'ne', [2.4, 2.8]));
    expect(distance(dragged, [1.4, 1.8])).toBeLessThan(1e-12);
  });

  it('puts a corner under the pointer and leaves the opposite one, however the box is turned', () => {
    fc.assert(
      fc.property(
        turnedBox,
        fc.constantFrom('sw', 'se', 'ne', 'nw'),
        fc.tuple(number(0.1, 20), number(0.1, 20)),
        (box, id, [width, length]) => {
          const fixed = handleOf(box, OPPOSITE[id]!);
          const outward: Point = [id.includes('e') ? width : -width, id.includes('n') ? length : -length];
          const to = add(fixed, rotate(outward, box.rotation));
          const dragged = drag(box, id, to);
          expect(distance(handleOf(dragged, id), to)).toBeLessThan(1e-8);
          expect(distance(handleOf(dragged, OPPOSITE[id]!), fixed)).toBeLessThan(1e-8);
        }
      )
    );
  });

  it('moves a side alone', () => {
    fc.assert(
      fc.property(turnedBox, fc.constantFrom('n', 's', 'e', 'w'), number(0.1, 20), (box, id, reach) => {
        const fixed = handleOf(box, OPPOSITE[id]!);
        const away = subtract(handleOf(box, id), fixed);
        const factor = reach / Math.hypot(...away);
        const dragged = drag(box, id, add(fixed, [away[0] * factor, away[1] * factor])) as typeof box;
        expect(distance(handleOf(dragged, OPPOSITE[id]!), fixed)).toBeLessThan(1e-8);
        const [moved, kept] =
          id === 'e' || id === 'w' ? (['width', 'length'] as const) : (['length', 'width'] as const);
        expect(dragged[moved]).toBeCloseTo(reach, 8);
        expect(dragged[kept]).toBe(box[kept]);
      })
    );
  });

  it('keeps the centre when asked to', () => {
    expect(drag(rectangle, 'ne', [3, 4], true)).toMatchObject({ centre: [1, 2], width: 4, length: 4 });
    expect(drag(circle, 'e', [2, 4], true)).toMatchObject({ centre: [0, 4], diameter: 4 });
  });

  it('never turns a shape inside out', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Shape>(rectangle, quadrupole, diagonal, circle, { ...rectangle, cornerCut: 0.5 }),
        fc.nat(7),
        fc.tuple(number(-2_000, 2_000), number(-2_000, 2_000)),
        fc.boolean(),
        (shape, index, to, fromCentre) => {
          const handles = definitionOf(shape).handles(shape);
          expect(problemOf(drag(shape, handles[index % handles.length]!.id, to, fromCentre))).toBeNull();
        }
      )
    );
  });

  it('holds the far side of a circle', () => {
    const dragged = drag(circle, 'n', [7, 6.1]);
    expect(distance(handleOf(dragged, 's'), [0, 3.1])).toBeLessThan(1e-12);
    expect(distance(handleOf(dragged, 'n'), [0, 6.1])).toBeLessThan(1e-12);
  });

  it('moves one point of a polygon', () => {
    expect(drag(polygon, '2', [1, 5])).toEqual({
      kind: 'polygon',
      points: [
        [0, 0],
        [4, 0],
        [1, 5]
      ]
    });
  });

  it('ignores a handle that the shape does not have', () => {
    for (const shape of everyShape) expect(drag(shape, 'nowhere', [9, 9])).toEqual(shape);
  });
});

describe('drawing in a box', () => {
  it.each(Object.values(shapeDefinitions))('fills the box between two corners in any order', (definition) => {
    const one = definition.fromBox([3, 1], [1, 5]);
    const other = definition.fromBox([1, 5], [3, 1]);
    expect(one).toEqual(other);
    expect(definitionOf(one).centre(one)).toEqual([2, 3]);
    expect(problemOf(one)).toBeNull();
    expect(problemOf(definition.fromBox([1, 1], [1, 1]))).toBeNull();
  });
});
