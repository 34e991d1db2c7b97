/** Wire lengths, saw cuts, areas and winding sense by hand. */
import { describe, expect, it } from 'vitest';
import { distance, rotate, subtract } from '#plan/geometry/points';
import { signedArea } from '#plan/geometry/polygons';
import type { Shape } from '#plan/schema';
import { pathOf } from '#plan/shapes/index';
import type { Cell, Edge } from '#plan/shapes/path';
import { circle, diagonal, polygon, quadrupole, rectangle } from './examples';

const edges = (cell: Cell | undefined): readonly Edge[] => (cell?.kind === 'polygon' ? cell.edges : []);
const areas = (shape: Shape) =>
  pathOf(shape).cells.map((cell) => signedArea(edges(cell).map(({ from }) => from)));
const wire = (shape: Shape) =>
  pathOf(shape)
    .cells.flatMap(edges)
    .reduce((sum, { from, to }) => sum + distance(from, to), 0);
const turned = <S extends Shape>(shape: S, rotation: number): S => ({ ...shape, rotation });

describe('rectangle', () => {
  it('runs counter-clockwise along its four sides', () => {
    const path = pathOf(rectangle);
    expect(edges(path.cells[0]).map(({ from }) => from)).toEqual([
      [0.4, 0.8],
      [1.6, 0.8],
      [1.6, 3.2],
      [0.4, 3.2]
    ]);
    expect(path.sawCut).toBeCloseTo(7.2, 12);
    expect(wire(rectangle)).toBeCloseTo(7.2, 12);
    expect(areas(rectangle)[0]).toBeCloseTo(2.88, 12);
  });

  it('loses the cut at both ends of every side and gains √2 of it at each corner', () => {
    const cut = { ...rectangle, cornerCut: 0.2 };
    const [cell] = pathOf(cut).cells;
    const lengths = edges(cell).map(({ from, to }) => distance(from, to));
    const across = 0.2 * Math.SQRT2;
    [0.8, across, 2, across, 0.8, across, 2, across].forEach((length, index) => {
      expect(lengths[index]).toBeCloseTo(length, 12);
    });
    expect(lengths).toHaveLength(8);
    expect(areas(cut)[0]).toBeCloseTo(2.88 - 4 * 0.02, 12);
  });

  it('turns about its centre, counter-clockwise', () => {
    const [cell] = pathOf(turned(rectangle, 90)).cells;
    const first = edges(cell)[0];
    expect(first?.from[0]).toBeCloseTo(2.2, 12);
    expect(first?.from[1]).toBeCloseTo(1.4, 12);
    expect(areas(turned(rectangle, 90))[0]).toBeCloseTo(2.88, 12);
  });
});

describe('quadrupole', () => {
  it('winds the half at −x counter-clockwise and the other clockwise', () => {
    const [left, right] = areas(quadrupole);
    expect(left).toBeCloseTo(5.4, 12);
    expect(right).toBeCloseTo(-5.4, 12);
    const xs = edges(pathOf(quadrupole).cells[0]).map(({ from }) => from[0]);
    expect(Math.max(...xs)).toBe(4);
  });

  it('cuts the middle slot once and lays wire in it twice', () => {
    expect(pathOf(quadrupole).sawCut).toBeCloseTo(2 * (1.8 + 6) + 6, 12);
    expect(wire(quadrupole)).toBeCloseTo(2 * 2 * (0.9 + 6), 12);
  });
});

describe('diagonal', () => {
  it('winds the triangle on the −x side counter-clockwise and the other clockwise', () => {
    const [left, right] = areas(diagonal);
    expect(left).toBeCloseTo((1.8 * 2.4) / 2, 12);
    expect(right).toBeCloseTo((-1.8 * 2.4) / 2, 12);
    const corners = edges(pathOf(diagonal).cells[0]).map(({ from }) => from);
    expect(corners.at(-1)?.[0]).toBeCloseTo(8 - 0.9, 12);
    expect(corners.at(-1)?.[1]).toBeCloseTo(1 + 1.2, 12);
  });

  it('cuts the slot between corner (−w/2, −l/2) and corner (+w/2, +l/2) once: 1.8, 2.4, 3.0', () => {
    expect(pathOf(diagonal).sawCut).toBeCloseTo(8.4 + 3, 12);
    expect(wire(diagonal)).toBeCloseTo(2 * (1.8 + 2.4 + 3), 12);
    const shared = edges(pathOf(diagonal).cells[0]).find((edge) => edge.shared);
    expect(shared?.from[0]).toBeCloseTo(7.1, 12);
    expect(shared?.from[1]).toBeCloseTo(-0.2, 12);
    expect(shared?.to[0]).toBeCloseTo(8.9, 12);
    expect(shared?.to[1]).toBeCloseTo(2.2, 12);
  });
});

describe.each([
  ['quadrupole', quadrupole],
  ['diagonal', diagonal]
])('the shared slot of a %s', (_, shape) => {
  it.each([0, 33, 180])(
    'is one edge of each cell, and both currents run the same way in it, turned by %d°',
    (by) => {
      const slots = pathOf(turned(shape, by)).cells.map((cell) => edges(cell).filter((edge) => edge.shared));
      expect(slots.map((list) => list.length)).toEqual([1, 1]);
      expect(slots[0]?.[0]).toEqual(slots[1]?.[0]);
      const { from, to } = slots[0]![0]!;
      const upright = rotate(subtract(to, from), -by);
      expect(upright[1]).toBeGreaterThan(0);
    }
  );
});

describe('circle and polygon', () => {
  it('keeps the circle a true circle', () => {
    expect(pathOf(circle).cells).toEqual([{ kind: 'circle', centre: [0, 4], radius: 0.9 }]);
    expect(pathOf(circle).sawCut).toBeCloseTo(Math.PI * 1.8, 12);
  });

  it('winds a polygon in the order of its points', () => {
    expect(areas(polygon)[0]).toBe(6);
    expect(areas({ ...polygon, points: [...polygon.points].reverse() })[0]).toBe(-6);
    expect(pathOf(polygon).sawCut).toBe(12);
  });
});
