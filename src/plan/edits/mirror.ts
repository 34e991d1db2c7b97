/**
 * Mirroring: what is drawn is turned over, the sense of its current is not.
 *
 * Every shape is counter-clockwise as drawn, so a mirrored rectangle or circle is one too. The wire itself, mirrored, would
 * run the other way round; here it is a mirror image with its current reversed, of every shape alike. So loops that are
 * mirrored together keep the sign of their mutual inductance, a quadrupole keeps its counter-clockwise half at −x, and the
 * slot that a diagonal's triangles share runs to the other corner, which is the same shape with width and length changed
 * over and turned by a quarter. A polygon's points are taken in the other order, because they say which way it is wound.
 * `reversed` in a circuit stays as it is.
 */
import { dot, normalAngle, rotate, scale, subtract, add } from '../geometry/points';
import type { ArrowTurn, Mark, Point, Shape, Site } from '../schema';
import type { Change } from './transform';
import { changedThings } from './transform';
import type { Thing } from './thing';

/** A line through a point, degrees counter-clockwise from +x. */
export interface Axis {
  readonly through: Point;
  readonly angle: number;
}

const TURNED_OVER: Readonly<Record<ArrowTurn, ArrowTurn>> = {
  ahead: 'ahead',
  left: 'right',
  right: 'left',
  'ahead-left': 'ahead-right',
  'ahead-right': 'ahead-left',
  'left-right': 'left-right',
  back: 'back'
};

/** The point on the other side of the axis. */
export function mirrorPoint(point: Point, { through, angle }: Axis): Point {
  const along = rotate([1, 0], angle);
  const away = subtract(point, through);
  return add(through, subtract(scale(along, 2 * dot(away, along)), away));
}

function mirrorShape(shape: Shape, axis: Axis): Shape {
  if (shape.kind === 'polygon') {
    const points = shape.points.map((point) => mirrorPoint(point, axis));
    return { ...shape, points: [...points.slice(0, 1), ...points.slice(1).reverse()] };
  }
  const centre = mirrorPoint(shape.centre, axis);
  if (shape.kind === 'circle') return { ...shape, centre };
  const rotation = normalAngle(2 * axis.angle - shape.rotation);
  if (shape.kind !== 'diagonal') return { ...shape, centre, rotation };
  const { width, length } = shape;
  return { ...shape, centre, width: length, length: width, rotation: normalAngle(rotation + 90) };
}

/** What else is left or right about a mark: where a leaf swings to, where an arrow points, where a dimension's line lies. */
function mirrorMark(mark: Mark): Mark {
  const { opening, turn, offset } = mark;
  return {
    ...mark,
    ...(opening?.kind === 'swing' ? { opening: { ...opening, angle: -opening.angle + 0 } } : {}),
    ...(turn ? { turn: TURNED_OVER[turn] } : {}),
    ...(offset === undefined ? {} : { offset: -offset + 0 })
  };
}

/** All of the things, in place; pictures stay, since what they show cannot be turned over. */
export function mirrorThings(site: Site, things: readonly Thing[], axis: Axis): Site {
  const change: Change = {
    shape: (shape) => mirrorShape(shape, axis),
    point: (point) => mirrorPoint(point, axis),
    heading: (heading) => normalAngle(2 * axis.angle - heading),
    mark: mirrorMark
  };
  return changedThings(
    site,
    things.filter(({ kind }) => kind !== 'underlay'),
    change
  );
}
