/** Keeping a change inside the coordinates that a document may hold. */
import { BOUNDS } from '../bounds';
import type { Point } from '../schema';

const { min, max } = BOUNDS.coordinate;

export const clampPoint = ([x, y]: Point): Point => [
  Math.min(max, Math.max(min, x)),
  Math.min(max, Math.max(min, y))
];

export const isInBounds = (points: readonly Point[]): boolean =>
  points.every(([x, y]) => x >= min && x <= max && y >= min && y <= max);

/** The shift, shortened per axis so that all points stay inside; what is not finite does not move at all. */
export function clampShift(points: readonly Point[], by: Point): Point {
  const axis = (index: 0 | 1): number => {
    const values = points.map((point) => point[index]);
    const shift = Math.min(max - Math.max(...values), Math.max(min - Math.min(...values), by[index]));
    return Number.isFinite(shift) ? shift : 0;
  };
  return [axis(0), axis(1)];
}
