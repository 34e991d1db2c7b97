import { COUNTS } from '../bounds';
import { wireOf } from '../catalogue/wires';
import { loop as loopSchema, type Loop, type Shape, type Site } from '../schema';
import { problemOf } from '../shapes/index';
import { mapped, patched, withList, type Patch } from './list';

/** Whether a document may hold this loop. */
export const isSoundLoop = (site: Site, loop: Loop): boolean =>
  loopSchema.safeParse(loop).success &&
  problemOf(loop.shape) === null &&
  wireOf(loop.wire, site) !== undefined;

/** Refused, with the same site returned, when the loop is not sound, its id is taken or the site is full. */
export function addLoop(site: Site, loop: Loop): Site {
  const taken = site.loops.some((other) => other.id === loop.id);
  if (taken || site.loops.length >= COUNTS.loops || !isSoundLoop(site, loop)) return site;
  return { ...site, loops: [...site.loops, loop] };
}

/** The same site when the loop is not there, nothing changes, or the result would not be sound. */
export function updateLoop(site: Site, id: string, patch: Patch<Omit<Loop, 'id'>>): Site {
  const loops = mapped(site.loops, (loop) => {
    if (loop.id !== id) return loop;
    const next = patched(loop, patch);
    return next === loop || isSoundLoop(site, next) ? next : loop;
  });
  return withList(site, 'loops', loops);
}

export const setShape = (site: Site, id: string, shape: Shape): Site => updateLoop(site, id, { shape });
