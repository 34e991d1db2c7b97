/** Onto the middle of a lane, straight across it. */
import { subtract } from '../../geometry/points';
import { nearestOn, pointAt } from '../../geometry/stations';
import type { Lane, Point, Site } from '../../schema';
import { laneLine } from './along-lane';
import { shiftEach, type Item } from './item';

/** Closer to the middle than this, metres, a thing is on it: what it is moved by may not creep. */
const ON_IT = 1e-6;

function across(lane: Lane | null, anchor: Point): Point {
  const line = lane && laneLine(lane);
  if (!line) return [0, 0];
  const { along, apart } = nearestOn(line, anchor, true);
  return apart < ON_IT ? [0, 0] : subtract(pointAt(line, along), anchor);
}

/** Each in the lane that is given for its anchor, null where it lies in none. The same site if all are there already. */
export const centreInLanes = (
  site: Site,
  items: readonly Item[],
  laneOf: (anchor: Point) => Lane | null
): Site =>
  shiftEach(
    site,
    items,
    items.map(({ anchor }) => across(laneOf(anchor), anchor))
  );
