/** The edges of a lane: its centreline, half a width to the left and to the right, mitred at bends. */
import { add, distance, dot, scale, subtract } from '#plan/geometry/points';
import type { Lane, Point } from '#plan/schema';

/** A mitre at a hairpin would run off to infinity; beyond this many half widths it is cut short. */
const LONGEST_MITRE = 3;

/** The unit vector to the left of a → b; [0, 0] where the points coincide. */
function leftOf(a: Point, b: Point): Point {
  const length = distance(a, b);
  return length === 0 ? [0, 0] : [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
}

/** A polyline parallel to the points, `offset` metres to the left of them as walked. */
export function parallelTo(points: readonly Point[], offset: number): Point[] {
  return points.map((point, index) => {
    const before = points[index - 1];
    const after = points[index + 1];
    const into = before ? leftOf(before, point) : after ? leftOf(point, after) : ([0, 0] as const);
    const out = after ? leftOf(point, after) : into;
    const sum = add(into, out);
    const along = dot(sum, into);
    const stretch = along > 0 ? Math.min(1 / along, LONGEST_MITRE / Math.hypot(sum[0], sum[1])) : 0;
    const mitre = stretch > 0 ? scale(sum, stretch) : into;
    return add(point, scale(mitre, offset));
  });
}

/** A lane never changes, it is replaced: what was found of one holds. Curves have hundreds of points. */
function kept<T>(make: (lane: Lane) => T): (lane: Lane) => T {
  const known = new WeakMap<Lane, T>();
  return (lane) => {
    const found = known.get(lane);
    if (found !== undefined) return found;
    const made = make(lane);
    known.set(lane, made);
    return made;
  };
}

export const leftEdge = kept((lane): readonly Point[] => parallelTo(lane.centreline, lane.width / 2));
export const rightEdge = kept((lane): readonly Point[] => parallelTo(lane.centreline, -lane.width / 2));

/** The lane's surface as one closed outline. */
export const laneOutline = kept((lane): readonly Point[] => [
  ...leftEdge(lane),
  ...rightEdge(lane).toReversed()
]);

export interface Station {
  /** Nearest point of the centreline. */
  readonly at: Point;
  /** Direction of travel there, a unit vector. */
  readonly ahead: Point;
  /** Metres along the centreline from its start. */
  readonly along: number;
  /** Distance from the centreline. */
  readonly offset: number;
}

/** Where on the lane a point lies, or null for a lane without length. */
export function stationOf(lane: Lane, point: Point): Station | null {
  let best: Station | null = null;
  let walked = 0;
  for (const [index, to] of lane.centreline.slice(1).entries()) {
    const from = lane.centreline[index]!;
    const length = distance(from, to);
    if (length === 0) continue;
    const ahead = scale(subtract(to, from), 1 / length);
    const along = Math.min(length, Math.max(0, dot(subtract(point, from), ahead)));
    const at = add(from, scale(ahead, along));
    const offset = distance(at, point);
    if (best === null || offset < best.offset) best = { at, ahead, along: walked + along, offset };
    walked += length;
  }
  return best;
}

/** The lane that a point lies in, the one with the nearest centreline if several overlap. */
export function laneAt(lanes: readonly Lane[], point: Point): { lane: Lane; station: Station } | null {
  let best: { lane: Lane; station: Station } | null = null;
  for (const lane of lanes) {
    const station = stationOf(lane, point);
    if (station === null || station.offset > lane.width / 2) continue;
    if (best === null || station.offset < best.station.offset) best = { lane, station };
  }
  return best;
}
