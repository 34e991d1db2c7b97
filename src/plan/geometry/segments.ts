/** Straight segments of the plan. */
import type { Point } from '../schema';
import { add, cross, distance, dot, scale, subtract } from './points';

export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** The point of the segment nearest to `point`; a segment without length gives its start. */
export function nearestOnSegment(point: Point, { from, to }: Segment): Point {
  const along = subtract(to, from);
  const square = dot(along, along);
  if (square === 0) return from;
  const share = dot(subtract(point, from), along) / square;
  return add(from, scale(along, Math.min(1, Math.max(0, share))));
}

export const distanceToSegment = (point: Point, segment: Segment): number =>
  distance(point, nearestOnSegment(point, segment));

/** Where two segments cross or touch at a single point; null when they do not, or are parallel. */
export function segmentIntersection(a: Segment, b: Segment): Point | null {
  const u = subtract(a.to, a.from);
  const v = subtract(b.to, b.from);
  const between = subtract(b.from, a.from);
  const turn = cross(u, v);
  if (turn === 0) return null;
  const onA = cross(between, v) / turn;
  const onB = cross(between, u) / turn;
  if (onA < 0 || onA > 1 || onB < 0 || onB > 1) return null;
  return add(a.from, scale(u, onA));
}

/** Smallest distance between two segments, 0 where they cross. */
export function segmentDistance(a: Segment, b: Segment): number {
  if (segmentIntersection(a, b)) return 0;
  return Math.min(
    distanceToSegment(a.from, b),
    distanceToSegment(a.to, b),
    distanceToSegment(b.from, a),
    distanceToSegment(b.to, a)
  );
}
