import { describe, expect, it } from 'vitest';
import { mirrorPoint, mirrorThings, type Axis, type Thing } from '#plan/edits/index';
import type { Point, Shape, Site } from '#plan/schema';
import { pathOf } from '#plan/shapes/index';
import { fullSite } from './site';

const L1: Thing = { kind: 'loop', id: 'L1' };

const withShape = (shape: Shape): Site => {
  const site = fullSite();
  return { ...site, loops: site.loops.map((loop) => (loop.id === 'L1' ? { ...loop, shape } : loop)) };
};
const shapeOf = (site: Site): Shape => site.loops.find(({ id }) => id === 'L1')!.shape;

/** Of each cell of the wire: its signed area, positive counter-clockwise, and its first moments. */
function moments(shape: Shape): number[][] {
  return pathOf(shape).cells.map((cell) => {
    if (cell.kind === 'circle') {
      const area = Math.PI * cell.radius ** 2;
      return [area, cell.centre[0] * area, cell.centre[1] * area];
    }
    return cell.edges.reduce(
      ([area = 0, x = 0, y = 0], { from, to }) => {
        const part = (from[0] * to[1] - to[0] * from[1]) / 2;
        return [area + part, x + ((from[0] + to[0]) / 3) * part, y + ((from[1] + to[1]) / 3) * part];
      },
      [0, 0, 0]
    );
  });
}

/** The mirror image of a run of wire whose current is reversed: the area keeps its sign, its middle is mirrored. */
const mirrored = (cells: number[][], axis: Axis): number[][] =>
  cells.map(([area = 0, x = 0, y = 0]) => {
    const [mx, my] = mirrorPoint([x / area, y / area], axis);
    return [area, mx * area, my * area];
  });

const sorted = (cells: number[][]): number[][] =>
  cells
    .map((cell) => cell.map((value) => Math.round(value * 1e5) / 1e5 + 0))
    .sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!);

const AXES: readonly Axis[] = [
  { through: [1, 2], angle: 90 },
  { through: [1, 2], angle: 0 },
  { through: [-3, 1], angle: 37 }
];

const SHAPES: readonly Shape[] = [
  { kind: 'rectangle', centre: [2, 1], width: 1.8, length: 3, rotation: 20, cornerCut: 0.2 },
  { kind: 'quadrupole', centre: [2, 1], width: 2, length: 5, rotation: -35 },
  { kind: 'diagonal', centre: [2, 1], width: 2, length: 3, rotation: 15 },
  { kind: 'circle', centre: [2, 1], diameter: 1.8 },
  { kind: 'polygon', points: [[0, 0], [3, 0], [1, 2]] }, // prettier-ignore
  { kind: 'polygon', points: [[1, 2], [3, 0], [0, 0]] } // prettier-ignore
];

describe('a mirrored loop', () => {
  for (const shape of SHAPES)
    for (const axis of AXES)
      it(`${shape.kind} has the wire's mirror image, its sense kept, about ${axis.angle}°`, () => {
        const next = shapeOf(mirrorThings(withShape(shape), [L1], axis));
        expect(next.kind).toBe(shape.kind);
        expect(sorted(moments(next))).toEqual(sorted(mirrored(moments(shape), axis)));
      });

  it('is where it was after being mirrored twice', () => {
    for (const shape of SHAPES) {
      const once = mirrorThings(withShape(shape), [L1], AXES[0]!);
      const twice = shapeOf(mirrorThings(once, [L1], AXES[0]!));
      expect(sorted(moments(twice))).toEqual(sorted(moments(shape)));
    }
  });
});

describe('what has a left and a right', () => {
  const upright: Axis = { through: [0, 0], angle: 90 };
  const marks = [
    { id: 'g', kind: 'gate', points: [[1, 0], [4, 0]], opening: { kind: 'swing', angle: 90 } }, // prettier-ignore
    { id: 'a', kind: 'arrow', points: [[2, -1], [2, 2]], turn: 'ahead-left' }, // prettier-ignore
    { id: 'd', kind: 'dimension', points: [[1, 1], [1, 4]], offset: 0.5 } // prettier-ignore
  ] as const;
  const site: Site = { ...fullSite(), marks };
  const all = marks.map(({ id }): Thing => ({ kind: 'mark', id }));
  const next = mirrorThings(site, all, upright);

  it('is turned over', () => {
    expect(next.marks).toEqual([
      { id: 'g', kind: 'gate', points: [[-1, 0], [-4, 0]], opening: { kind: 'swing', angle: -90 } }, // prettier-ignore
      { id: 'a', kind: 'arrow', points: [[-2, -1], [-2, 2]], turn: 'ahead-right' }, // prettier-ignore
      { id: 'd', kind: 'dimension', points: [[-1, 1], [-1, 4]], offset: -0.5 } // prettier-ignore
    ]);
  });

  it('a vehicle looks the other way', () => {
    const turned = { ...fullSite(), probes: [{ vehicle: 'car', at: [3, 1] as Point, heading: 30 }] };
    const [probe] = mirrorThings(turned, [{ kind: 'probe', id: '0' }], upright).probes;
    expect(probe).toMatchObject({ at: [-3, 1], heading: 150 });
  });
});
