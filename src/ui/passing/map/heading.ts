import { placeOn, stationOf, wayOf } from '#analysis/passing/way';
import type { Ref } from '#editor/types';
import type { Site } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { wayShown } from '../ways';

/** Degrees, 90 = along +y, also where there is no lane. */
const AHEAD = 90;

/** The direction of travel of the nearest lane or path where it passes the first loop that is looked at. */
export function usualHeading(site: Site, selection: readonly Ref[]): number {
  const way = wayShown(site, { chosen: null, selection });
  const line = way && wayOf(site, way.ref);
  const chosen = selection.find(({ kind }) => kind === 'loop')?.id;
  const loop = site.loops.find(({ id }) => id === chosen) ?? site.loops[0];
  if (!line || !loop) return AHEAD;
  return placeOn(line, stationOf(line, centreOf(loop.shape)).along, 0, 0).heading;
}
