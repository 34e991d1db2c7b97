/** The straight line that traffic follows past a circuit: a lane's centreline where it comes nearest to a loop. */
import { distance } from '#plan/geometry/points';
import { nearestOnSegment } from '#plan/geometry/segments';
import type { Lane, Point } from '#plan/schema';

export interface LaneLine {
  /** Null where no lane serves: then the line runs along +y through the loop. */
  readonly lane: Lane | null;
  /** Point of the line nearest to the loop. */
  readonly origin: Point;
  /** Unit direction of travel. */
  readonly direction: Point;
  readonly width: number;
}

/** A path `offset` metres to the right of the line, at `along` metres from its origin. */
export const onLine = ({ origin, direction }: LaneLine, along: number, offset: number): Point => [
  origin[0] + direction[0] * along + direction[1] * offset,
  origin[1] + direction[1] * along - direction[0] * offset
];

/** Degrees, 90 = along +y. */
export const headingOf = ({ direction }: LaneLine): number =>
  (Math.atan2(direction[1], direction[0]) * 180) / Math.PI;

export const lineOf = (lane: Lane, near: Point): LaneLine => {
  let best: LaneLine | null = null;
  let least = Infinity;
  for (let k = 0; k + 1 < lane.centreline.length; k++) {
    const from = lane.centreline[k]!;
    const to = lane.centreline[k + 1]!;
    const length = distance(from, to);
    if (length === 0) continue;
    const origin = nearestOnSegment(near, { from, to });
    const apart = distance(near, origin);
    if (apart >= least) continue;
    least = apart;
    best = {
      lane,
      origin,
      direction: [(to[0] - from[0]) / length, (to[1] - from[1]) / length],
      width: lane.width
    };
  }
  return best ?? lineWithoutLane(near, lane.width);
};

export const lineWithoutLane = (near: Point, width: number): LaneLine => ({
  lane: null,
  origin: near,
  direction: [0, 1],
  width
});
