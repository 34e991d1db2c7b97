import { t } from '#i18n/message';
import { FOOT } from '#units/constants';
import { BOUNDS, COUNTS } from '../bounds';
import { vehicleOf } from '../catalogue/vehicles';
import { bentBeside, bentLine, fittedRadii, type Bent } from '../geometry/bends';
import { distance } from '../geometry/points';
import { bendsOf, cornersOf } from '../lane-bends';
import { lane as laneSchema, type Bends, type Lane, type Point, type Site } from '../schema';
import { freeId, mapped, patched, withList, type Patch } from './list';
import { clampPoint } from './limits';
import { tidyLength, tidyPoint } from './tidy';

const WIDTH = { metric: 3.5, imperial: 12 * FOOT } as const;
/** As in reading: shorter than this a lane is a point. */
const SHORTEST = 0.01;

function isSound(site: Site, lane: Lane): boolean {
  if (!laneSchema.safeParse(lane).success) return false;
  if (lane.largestVehicle !== undefined && !vehicleOf(lane.largestVehicle, site)) return false;
  const run = lane.centreline
    .slice(1)
    .reduce((sum, to, index) => sum + distance(lane.centreline[index]!, to), 0);
  return run >= SHORTEST;
}

/** Metres: that of the lane drawn last, or the usual one. */
export const usualLaneWidth = (site: Site): number => site.lanes.at(-1)?.width ?? WIDTH[site.displayUnits];

/** A lane of the usual width, or as wide as the last one drawn. */
export function newLane(site: Site, centreline: readonly Point[], width = usualLaneWidth(site)): Lane {
  const id = freeId(site.lanes, 'lane');
  return { id, name: t('lane.numbered', { number: site.lanes.length + 1 }), centreline, width };
}

export function addLane(site: Site, lane: Lane): Site {
  const taken = site.lanes.some((other) => other.id === lane.id);
  if (taken || site.lanes.length >= COUNTS.lanes || !isSound(site, lane)) return site;
  return { ...site, lanes: [...site.lanes, lane] };
}

/** The centreline and what it is bent from; a line without a bend is only a centreline. Radii as far as they fit. */
function drawnFrom({ points, radii }: Bent): {
  readonly centreline: readonly Point[];
  readonly bends: Bends | undefined;
} {
  const corners = points.map(tidyPoint);
  const fitted = fittedRadii({ points: corners, radii }).map(tidyLength);
  if (fitted.every((radius) => radius === 0)) return { centreline: corners, bends: undefined };
  const bends = { points: corners, radii: fitted };
  return { centreline: bentLine(bends).map(tidyPoint), bends };
}

export interface LaneGroup {
  /** Along the middle of all of them. */
  readonly line: Bent;
  readonly count: number;
  /** Metres, of each. */
  readonly width: number;
  /** The left half, seen along the line, runs the other way. */
  readonly oppose: boolean;
}

const reversedLine = ({ points, radii }: Bent): Bent => ({
  points: points.toReversed(),
  radii: radii.toReversed()
});

/** The lanes of a group in the site, from left to right; or what stands against it. */
export function addLanes(
  site: Site,
  { line, count, width, oppose }: LaneGroup
): { readonly site: Site; readonly ids: readonly string[] } | 'bend too tight' | 'no such lane' {
  // What the sides have no room for must not stand in the way of lanes beside it.
  const middle: Bent = { points: line.points, radii: fittedRadii(line) };
  let next = site;
  const ids: string[] = [];
  for (let place = 0; place < count; place++) {
    const beside = bentBeside(middle, ((count - 1) / 2 - place) * width);
    if (!beside) return 'bend too tight';
    const along = oppose && place < Math.floor(count / 2) ? reversedLine(beside) : beside;
    const { centreline, bends } = drawnFrom(along);
    const lane: Lane = { ...newLane(next, centreline, width), ...(bends ? { bends } : {}) };
    const added = addLane(next, lane);
    if (added === next) return 'no such lane';
    next = added;
    ids.push(lane.id);
  }
  return { site: next, ids };
}

/**
 * The same site when the lane is not there, nothing changes, or the result would not be sound. A new centreline without
 * bends of its own, and bends that are not believed, leave the lane without any.
 */
export function updateLane(site: Site, id: string, patch: Patch<Omit<Lane, 'id'>>): Site {
  const lanes = mapped(site.lanes, (lane) => {
    if (lane.id !== id) return lane;
    const changed = patched(lane, patch);
    if (changed === lane) return lane;
    const keeps = 'bends' in patch || (!('centreline' in patch) && bendsOf(lane) !== null);
    const next = keeps || !changed.bends ? changed : patched(changed, { bends: undefined });
    return isSound(site, next) ? next : lane;
  });
  return withList(site, 'lanes', lanes);
}

const laneIn = (site: Site, id: string): Lane | undefined => site.lanes.find((lane) => lane.id === id);

/** Puts one of the points that the lane is drawn by somewhere else and bends it again. */
export function moveLanePoint(site: Site, id: string, index: number, to: Point): Site {
  const lane = laneIn(site, id);
  if (!lane) return site;
  const { points, radii } = cornersOf(lane);
  const moved = points.map((point, at) => (at === index ? clampPoint(to) : point));
  return updateLane(site, id, drawnFrom({ points: moved, radii }));
}

/** Bends one corner with that radius, metres; 0 makes it sharp. As large as its sides allow. */
export function setLaneRadius(site: Site, id: string, index: number, radius: number): Site {
  const lane = laneIn(site, id);
  if (!lane || !(radius >= 0 && radius <= BOUNDS.bendRadius.max)) return site;
  const { points, radii } = cornersOf(lane);
  const next = radii.map((each, at) => (at === index ? radius : each));
  return updateLane(site, id, drawnFrom({ points, radii: next }));
}

/** A corner in the middle of the side that begins at a point, for the lane to be bent there. */
export function addLaneCorner(site: Site, id: string, after: number): Site {
  const lane = laneIn(site, id);
  const { points, radii } = lane ? cornersOf(lane) : { points: [], radii: [] };
  const [from, to] = [points[after], points[after + 1]];
  if (!from || !to) return site;
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return updateLane(
    site,
    id,
    drawnFrom({ points: points.toSpliced(after + 1, 0, middle), radii: radii.toSpliced(after + 1, 0, 0) })
  );
}

/** Takes a corner away; the two ends of a lane stay. */
export function removeLaneCorner(site: Site, id: string, index: number): Site {
  const lane = laneIn(site, id);
  const { points, radii } = lane ? cornersOf(lane) : { points: [], radii: [] };
  if (index <= 0 || index >= points.length - 1) return site;
  return updateLane(
    site,
    id,
    drawnFrom({ points: points.toSpliced(index, 1), radii: radii.toSpliced(index, 1) })
  );
}

/** The same lane in the other direction of travel. */
export function reverseLane(site: Site, id: string): Site {
  const lane = laneIn(site, id);
  if (!lane) return site;
  const bends = bendsOf(lane);
  return updateLane(site, id, {
    centreline: lane.centreline.toReversed(),
    bends: bends ? { ...bends, ...reversedLine(bends) } : undefined
  });
}
