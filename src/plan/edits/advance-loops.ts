/** Advance loops on a lane, at distances from its stop line. */
import { add, bearing, normalAngle, scale } from '../geometry/points';
import type { Lane, Point, Shape, Site } from '../schema';
import { placeOnLane, stopLineOf } from '../stop-line';
import { updateLane } from './lanes';
import { isInBounds } from './limits';
import { mapped, withList } from './list';
import { addWiredLoop, newLoop } from './new-loop';

/** An ordinary loop, and corner cuts that spare the wire a sharp bend. */
export const ADVANCE_LOOP = { width: 1.8, length: 1.8, cornerCut: 0.15 } as const;
/** A lane that is too short is drawn on for this much before the first loop, metres. */
const RUN_UP = 10;

const shapeAt = (lane: Lane, leadingEdge: number): Shape => {
  const { width, length, cornerCut } = ADVANCE_LOOP;
  const { at, ahead } = placeOnLane(lane, leadingEdge + length / 2);
  const rotation = normalAngle(bearing([0, 0], ahead) - 90);
  return { kind: 'rectangle', centre: at, width, length, rotation, cornerCut };
};

/** How much a lane has to be drawn on at its start so that a loop can lie so far before the line, metres. */
export const missingRun = (site: Pick<Site, 'marks'>, lane: Lane, farthest: number): number => {
  const { along } = stopLineOf(site, lane);
  return farthest > along ? farthest - along + RUN_UP : 0;
};

/** Straight on at the start. Traffic keeps its stop lines, which are told by metres from the lane's start. */
function lengthened(site: Site, lane: Lane, by: number): Site {
  const { at, ahead } = placeOnLane(lane, 0);
  const start: Point = add(at, scale(ahead, -by));
  const [, ...rest] = lane.centreline;
  const longer = updateLane(site, lane.id, { centreline: [start, ...rest] });
  if (longer === site || !longer.traffic) return longer;
  const streams = mapped(longer.traffic.streams, (stream) =>
    stream.lane === lane.id && stream.signal
      ? { ...stream, signal: { ...stream.signal, line_m: stream.signal.line_m + by } }
      : stream
  );
  const arrivals = mapped(longer.traffic.arrivals, (arrival) =>
    arrival.lane === lane.id && arrival.stop
      ? { ...arrival, stop: { ...arrival.stop, at_m: arrival.stop.at_m + by } }
      : arrival
  );
  return { ...longer, traffic: withList(withList(longer.traffic, 'streams', streams), 'arrivals', arrivals) };
}

/**
 * One loop with a circuit of its own at each distance (metres from the line to the edge that a vehicle reaches first),
 * where the lane is too short on a lane drawn on at its start. The same site when the lane is not there, nothing is asked
 * for, or one of the loops is refused.
 */
export function addAdvanceLoops(site: Site, id: string, distances: readonly number[]): Site {
  const drawn = site.lanes.find((lane) => lane.id === id);
  if (!drawn || distances.length === 0 || !distances.every((each) => Number.isFinite(each) && each > 0))
    return site;
  const missing = missingRun(site, drawn, Math.max(...distances));
  const roomy = missing > 0 ? lengthened(site, drawn, missing) : site;
  const lane = roomy.lanes.find((each) => each.id === id)!;
  if (missing > 0 && (lane === drawn || !isInBounds(lane.centreline))) return site;
  const { along } = stopLineOf(roomy, lane);
  let next = roomy;
  for (const distance of distances) {
    const added = addWiredLoop(next, newLoop(next, shapeAt(lane, along - distance)));
    if (added.circuits.length === next.circuits.length) return site;
    next = added;
  }
  return next;
}
