/** A way that vehicles take: a lane's centreline or a drawn path, with places told by metres from its start. */
import type { Placement } from '#physics/field/filaments';
import { distance, scale, subtract } from '#plan/geometry/points';
import { directionAt, nearestOn, pointAt, stationed, type Stationed } from '#plan/geometry/stations';
import type { Point, Site } from '#plan/schema';
import type { WayRef } from './results';

export interface Way extends Stationed {
  readonly ref: WayRef;
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
  const line = stationed(drawn);
  return line && { ref, ...line };
};

/**
 * Where a vehicle stands whose middle is at `along`, `offset` metres to the right of the way: both its axles on the way, so
 * that it turns evenly in a bend. A long one that is jointed in reality stays straight.
 */
export const placeOn = (way: Way, along: number, offset: number, length: number): Placement => {
  const reach = HALF_WHEELBASE * length;
  const [rear, front] = [pointAt(way, along - reach), pointAt(way, along + reach)];
  const chord = distance(rear, front);
  const hasChord = chord > 1e-6;
  const [dx, dy] = hasChord ? scale(subtract(front, rear), 1 / chord) : directionAt(way, along);
  const middle: Point = hasChord ? [(rear[0] + front[0]) / 2, (rear[1] + front[1]) / 2] : pointAt(way, along);
  return {
    x: middle[0] + dy * offset,
    y: middle[1] - dx * offset,
    heading: (Math.atan2(dy, dx) * 180) / Math.PI
  };
};

/** The place of the way nearest to a point, beyond its ends too, and how far to the right of it the point lies. */
export const stationOf = (way: Way, point: Point): { readonly along: number; readonly offset: number } => {
  const { along, offset } = nearestOn(way, point, true);
  return { along, offset };
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
