/** Ways across the plan that are no lanes: what a vehicle takes when it turns or cuts a corner. */
import { t } from '#i18n/message';
import { COUNTS } from '../bounds';
import { distance } from '../geometry/points';
import { path as pathSchema, type Path, type Point, type Site } from '../schema';
import { clampPoint } from './limits';
import { freeId, mapped, patched, withList, type Patch } from './list';
import { tidyPoint } from './tidy';

/** Metres: shorter than this a path is a point. */
const SHORTEST = 0.01;

const isSound = (path: Path): boolean =>
  pathSchema.safeParse(path).success &&
  path.points.slice(1).reduce((sum, to, index) => sum + distance(path.points[index]!, to), 0) >= SHORTEST;

export const newPath = (site: Site, points: readonly Point[]): Path => ({
  id: freeId(site.paths, 'p'),
  name: t('path.numbered', { number: site.paths.length + 1 }),
  points
});

export function addPath(site: Site, path: Path): Site {
  const taken = site.paths.some((other) => other.id === path.id);
  if (taken || site.paths.length >= COUNTS.paths || !isSound(path)) return site;
  return { ...site, paths: [...site.paths, path] };
}

/** The same site when the path is not there, nothing changes, or the result would not be sound. */
export function updatePath(site: Site, id: string, patch: Patch<Omit<Path, 'id'>>): Site {
  const paths = mapped(site.paths, (path) => {
    if (path.id !== id) return path;
    const next = patched(path, patch);
    return next === path || isSound(next) ? next : path;
  });
  return withList(site, 'paths', paths);
}

export function movePathPoint(site: Site, id: string, index: number, to: Point): Site {
  const path = site.paths.find((each) => each.id === id);
  if (!path) return site;
  const points = path.points.map((point, at) => (at === index ? tidyPoint(clampPoint(to)) : point));
  return updatePath(site, id, { points });
}
