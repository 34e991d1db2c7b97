/** A way that vehicles take: a lane's centreline or a drawn path, with places told by metres from its start. */
import type { Placement } from '#physics/field/filaments';
import { distance } from '#plan/geometry/points';
import type { Point, Site } from '#plan/schema';
import type { WayRef } from './results';

export interface Way {
  readonly ref: WayRef;
  readonly points: readonly Point[];
  /** Of each point, metres from the start. */
  readonly stations: readonly number[];
  readonly length: number;
}

/** Share of a vehicle's length from its middle to either axle. */
const HALF_WHEELBASE = 0.3;

/** Null for a way that is not there or has no length. */
export const wayOf = (site: Pick<Site, 'lanes' | 'paths'>, ref: WayRef): Way | null => {
  const drawn =
    ref.kind === 'lane'
      ? site.lanes.find(({ id }) => id === ref.id)?.centreline
      : site.paths.find(({ id }) => id === ref.id)?.points;
  return drawn ? wayAlong(ref, drawn) : null;
};

export const wayAlong = (ref: WayRef, drawn: readonly Point[]): Way | null => {
  const points = drawn.filter((point, k) => k === 0 || distance(point, drawn[k - 1]!) > 1e-9);
  const stations = [0];
  for (let k = 1; k < points.length; k++)
    stations.push(stations[k - 1]! + distance(points[k - 1]!, points[k]!));
  const length = stations[stations.length - 1]!;
  return length > 0 ? { ref, points, stations, length } : null;
};

/** Segment in which a place lies; before the start and beyond the end the outer segments go on. */
const segmentAt = ({ stations }: Way, along: number): number => {
  let low = 0;
  let high = stations.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (stations[middle]! <= along) low = middle;
    else high = middle - 1;
  }
  return low;
};

export const pointOn = (way: Way, along: number): Point => {
  const k = segmentAt(way, along);
  const [from, to] = [way.points[k]!, way.points[k + 1]!];
  const share = (along - way.stations[k]!) / (way.stations[k + 1]! - way.stations[k]!);
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
};

/**
 * Where a vehicle stands whose middle is at `along`, `offset` metres to the right of the way: both its axles on the way, so
 * that it turns evenly in a bend. A long one that is jointed in reality stays straight.
 */
export const placeOn = (way: Way, along: number, offset: number, length: number): Placement => {
  const reach = HALF_WHEELBASE * length;
  const [rear, front] = [pointOn(way, along - reach), pointOn(way, along + reach)];
  const chord = distance(rear, front);
  const k = segmentAt(way, along);
  const [from, to] = chord > 1e-6 ? [rear, front] : [way.points[k]!, way.points[k + 1]!];
  const size = distance(from, to);
  const [dx, dy] = [(to[0] - from[0]) / size, (to[1] - from[1]) / size];
  const middle: Point =
    chord > 1e-6 ? [(rear[0] + front[0]) / 2, (rear[1] + front[1]) / 2] : pointOn(way, along);
  return {
    x: middle[0] + dy * offset,
    y: middle[1] - dx * offset,
    heading: (Math.atan2(dy, dx) * 180) / Math.PI
  };
};

/** The place of the way nearest to a point, beyond its ends too, and how far to the right of it the point lies. */
export const stationOf = (way: Way, point: Point): { readonly along: number; readonly offset: number } => {
  let best = { along: 0, offset: 0 };
  let least = Infinity;
  const last = way.points.length - 2;
  for (let k = 0; k <= last; k++) {
    const [from, to] = [way.points[k]!, way.points[k + 1]!];
    const length = way.stations[k + 1]! - way.stations[k]!;
    const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const [px, py] = [point[0] - from[0], point[1] - from[1]];
    const free = px * ux + py * uy;
    const along = Math.min(k === last ? Infinity : length, Math.max(k === 0 ? -Infinity : 0, free));
    const apart = Math.hypot(px - along * ux, py - along * uy);
    if (apart >= least) continue;
    least = apart;
    best = { along: way.stations[k]! + along, offset: px * uy - py * ux };
  }
  return best;
};

/** One direction throughout: then it comes by everything once. */
export const isStraight = ({ points }: Way): boolean => {
  const [first] = points;
  const last = points[points.length - 1]!;
  const [dx, dy] = [last[0] - first![0], last[1] - first![1]];
  const size = Math.hypot(dx, dy);
  return points.every(
    (point, k) =>
      Math.abs((point[0] - first![0]) * dy - (point[1] - first![1]) * dx) < 1e-6 * size &&
      (k === 0 || (point[0] - points[k - 1]![0]) * dx + (point[1] - points[k - 1]![1]) * dy > 0)
  );
};
