import { FOOT } from '#units/constants';
import { COUNTS } from '../bounds';
import { vehicleOf } from '../catalogue/vehicles';
import { distance } from '../geometry/points';
import { lane as laneSchema, type Lane, type Point, type Site } from '../schema';
import { freeId, mapped, patched, withList, type Patch } from './list';

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

/** A lane of the usual width, or as wide as the last one drawn. */
export function newLane(site: Site, centreline: readonly Point[]): Lane {
  const id = freeId(site.lanes, 'lane');
  const width = site.lanes.at(-1)?.width ?? WIDTH[site.displayUnits];
  return { id, name: `Lane ${site.lanes.length + 1}`, centreline, width };
}

export function addLane(site: Site, lane: Lane): Site {
  const taken = site.lanes.some((other) => other.id === lane.id);
  if (taken || site.lanes.length >= COUNTS.lanes || !isSound(site, lane)) return site;
  return { ...site, lanes: [...site.lanes, lane] };
}

/** The same site when the lane is not there, nothing changes, or the result would not be sound. */
export function updateLane(site: Site, id: string, patch: Patch<Omit<Lane, 'id'>>): Site {
  const lanes = mapped(site.lanes, (lane) => {
    if (lane.id !== id) return lane;
    const next = patched(lane, patch);
    return next === lane || isSound(site, next) ? next : lane;
  });
  return withList(site, 'lanes', lanes);
}
