/** Where a mark's lines lie on the plan, which is more than the points that it holds. */
import { add, cross, distance, scale, subtract } from '#plan/geometry/points';
import { enclosesArea } from '#plan/edits/index';
import type { Mark, Point } from '#plan/schema';

/** Whether the last point is joined to the first one. */
export const isClosedMark = ({ kind, points }: Mark): boolean => enclosesArea(kind) && points.length > 2;

/** The points in order, back to the first one where the mark encloses something. */
export const markLine = (mark: Mark): readonly Point[] =>
  isClosedMark(mark) ? [...mark.points, mark.points[0]!] : mark.points;

/** The unit vector to the left of the way from one point to the other; null where they coincide. */
function leftOf([from, to]: readonly [Point, Point]): Point | null {
  const length = distance(from, to);
  return length === 0 ? null : [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
}

/** How far a place lies to the left of the way between two points, metres. */
export function offsetFrom(ends: readonly [Point, Point], at: Point): number {
  const length = distance(...ends);
  return length === 0 ? 0 : cross(subtract(ends[1], ends[0]), subtract(at, ends[0])) / length;
}

/** The two ends of a dimension's own line, beside the points that it measures between. */
export function dimensionLine({ points, offset = 0 }: Mark): readonly [Point, Point] | null {
  const [from, to] = points;
  const left = from && to && leftOf([from, to]);
  if (!from || !to || !left) return null;
  const aside = scale(left, offset);
  return [add(from, aside), add(to, aside)];
}

/** What is seen of a mark as a line: where it is taken hold of, and what is outlined when it is selected. */
export function seenLine(mark: Mark): readonly Point[] {
  const beside = mark.kind === 'dimension' ? dimensionLine(mark) : null;
  return beside ? [mark.points[0]!, ...beside, mark.points[1]!] : markLine(mark);
}
