import { cross, subtract } from '#plan/geometry/points';
import { distanceToSegment, type Segment } from '#plan/geometry/segments';
import type { Point } from '#plan/schema';
import { boxAround, boxCorners, boxesTouch, boxHolds, type Box } from './box';

export const segmentsOf = (points: readonly Point[]): Segment[] =>
  points.slice(1).map((to, index) => ({ from: points[index]!, to }));

export const distanceToSegments = (segments: readonly Segment[], at: Point): number =>
  segments.reduce((least, segment) => Math.min(least, distanceToSegment(at, segment)), Infinity);

/** Whether a segment runs through the box or ends in it. */
export function segmentTouchesBox({ from, to }: Segment, box: Box): boolean {
  if (boxHolds(box, from) || boxHolds(box, to)) return true;
  const own = boxAround([from, to]);
  if (own === null || !boxesTouch(own, box)) return false;
  const along = subtract(to, from);
  const sides = boxCorners(box).map((corner) => cross(along, subtract(corner, from)));
  return sides.some((side) => side >= 0) && sides.some((side) => side <= 0);
}
