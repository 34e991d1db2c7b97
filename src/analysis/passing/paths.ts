/** Which lanes a circuit serves, which run beside it, and on which paths a vehicle may cross it. */
import { distanceToSegment } from '#plan/geometry/segments';
import type { Lane, Loop, Point, Site } from '#plan/schema';
import { centreOf, outlineOf } from '#plan/shapes/index';
import { lineOf, lineWithoutLane, onLine, type LaneLine } from './lane-line';

/** Beyond this gap between a loop and a lane's edge the lane's traffic is not looked at, metres. */
const NEIGHBOUR_REACH = 4;
/** Two-wheelers keep this far from the lane's edge, metres. */
const EDGE_CLEARANCE = 0.4;
/** Paths of a two-wheeler across a lane. */
const PATHS = 5;

const distanceToLane = (point: Point, { centreline }: Lane): number => {
  let least = Infinity;
  for (let k = 0; k + 1 < centreline.length; k++)
    least = Math.min(least, distanceToSegment(point, { from: centreline[k]!, to: centreline[k + 1]! }));
  return least;
};

const inLane = (loop: Loop, lane: Lane): boolean =>
  distanceToLane(centreOf(loop.shape), lane) <= lane.width / 2;

const widthOf = (loop: Loop): number => {
  const across = outlineOf(loop.shape).map(([x]) => x);
  return Math.max(...across) - Math.min(...across);
};

/** One line for every loop and every lane in which its centre lies; a loop in no lane has one along +y, as wide as itself. */
export const servedLines = (loops: readonly Loop[], site: Site): readonly LaneLine[] =>
  loops.flatMap((loop) => {
    const centre = centreOf(loop.shape);
    const lines = site.lanes.filter((lane) => inLane(loop, lane)).map((lane) => lineOf(lane, centre));
    return lines.length > 0 ? lines : [lineWithoutLane(centre, widthOf(loop) + 2 * EDGE_CLEARANCE)];
  });

/** The same piece of the same lane, or the very same line. */
const sameLine = (a: LaneLine, b: LaneLine): boolean =>
  a === b ||
  (a.lane !== null &&
    a.lane === b.lane &&
    Math.abs(a.direction[0] * b.direction[1] - a.direction[1] * b.direction[0]) < 1e-9);

/** Loops one behind the other in one lane are one pass; the line past the first of them is that lane's. */
export const distinctLines = (lines: readonly LaneLine[]): readonly LaneLine[] =>
  lines.filter((line, k) => lines.findIndex((other) => sameLine(line, other)) === k);

/** Lanes beside the loops that none of them lies in, each with the line past the nearest loop. */
export const neighbourLines = (loops: readonly Loop[], site: Site): readonly LaneLine[] =>
  site.lanes
    .filter((lane) => !loops.some((loop) => inLane(loop, lane)))
    .flatMap((lane) => {
      const gaps = loops.map((loop) => ({
        loop,
        gap: Math.min(...outlineOf(loop.shape).map((point) => distanceToLane(point, lane))) - lane.width / 2
      }));
      const nearest = gaps.reduce((best, each) => (each.gap < best.gap ? each : best));
      return nearest.gap < NEIGHBOUR_REACH ? [lineOf(lane, centreOf(nearest.loop.shape))] : [];
    });

/** Offsets to the right of the line, metres, at which the vehicle is tried. */
export const pathOffsets = (paths: 'lane' | 'anywhere', width: number): readonly number[] => {
  const reach = width / 2 - EDGE_CLEARANCE;
  if (paths === 'lane' || reach <= 0) return [0];
  return Array.from({ length: PATHS }, (_, k) => reach * ((2 * k) / (PATHS - 1) - 1));
};

/** From one end of the loop to the other along the line, metres from the line's origin. */
export const extentAlong = (loop: Loop, line: LaneLine): readonly [number, number] => {
  const [x, y] = onLine(line, 0, 0);
  const along = outlineOf(loop.shape).map(
    (point) => (point[0] - x) * line.direction[0] + (point[1] - y) * line.direction[1]
  );
  return [Math.min(...along), Math.max(...along)];
};
