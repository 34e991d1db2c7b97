/** Free polygon, wound in the order of its points. Handles are the points, named by their index. */
import { t } from '#i18n/message';
import { BOUNDS, COUNTS } from '../bounds';
import { add, distance, rotate } from '../geometry/points';
import { centroid, crossingSides, perimeter, signedArea } from '../geometry/polygons';
import type { Point, ShapeOf } from '../schema';
import { boxBetween, boxCorners } from './box';
import type { ShapeDefinition, ShapeProblem } from './definition';
import { edgesOf } from './path';

/** Points nearer than this are one point entered twice: no saw makes a side of a millimetre. */
const SAME_POINT = 0.001;

/** Square metres. */
const SMALLEST_AREA = 0.001;

const say = ([x, y]: Point): string => `(${x}, ${y})`;

function problem({ points }: ShapeOf<'polygon'>): ShapeProblem | null {
  const wrong = (found: string, expected: string): ShapeProblem => ({ key: 'points', found, expected });
  if (points.length < 3 || points.length > COUNTS.points)
    return wrong(
      t('shape.points', { count: points.length }),
      t('shape.pointsRange', { least: 3, most: COUNTS.points })
    );
  for (const [index, point] of points.entries()) {
    const next = points[(index + 1) % points.length]!;
    if (distance(point, next) < SAME_POINT)
      return wrong(t('shape.pointTwice', { point: say(point) }), t('shape.pointsApart'));
    if (distance(point, next) > BOUNDS.side.max)
      return wrong(
        t('shape.side', { length: distance(point, next) }),
        t('shape.sides', { most: BOUNDS.side.max })
      );
  }
  const crossing = crossingSides(points);
  if (crossing)
    return wrong(t('shape.crossing', { a: crossing[0] + 1, b: crossing[1] + 1 }), t('shape.simple'));
  if (Math.abs(signedArea(points)) < SMALLEST_AREA)
    return wrong(t('shape.empty'), t('shape.area', { least: `${SMALLEST_AREA} m²` }));
  return null;
}

export const polygon: ShapeDefinition<'polygon'> = {
  kind: 'polygon',
  dimensions: [],
  path: (shape) => ({
    cells: [{ kind: 'polygon', edges: edgesOf(shape.points) }],
    sawCut: perimeter(shape.points)
  }),
  outline: (shape) => shape.points,
  handles: (shape) => shape.points.map((at, index) => ({ id: String(index), at })),
  dragHandle: (shape, handle, to) => ({
    ...shape,
    points: shape.points.map((point, index) => (String(index) === handle ? to : point))
  }),
  move: (shape, by) => ({ ...shape, points: shape.points.map((point) => add(point, by)) }),
  rotate: (shape, degrees, pivot) => ({
    ...shape,
    points: shape.points.map((point) => rotate(point, degrees, pivot))
  }),
  fromBox: (a, b) => ({ kind: 'polygon', points: boxCorners(boxBetween(a, b)) }),
  problem,
  centre: (shape) => centroid(shape.points)
};
