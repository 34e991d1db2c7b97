import { COUNTS } from '../bounds';
import { mark as markSchema, type Mark, type MarkKind, type Point, type Site } from '../schema';
import { freeId, mapped, patched, withList, type Patch } from './list';

const isSound = (mark: Mark): boolean => markSchema.safeParse(mark).success;

export const newMark = (site: Site, kind: MarkKind, points: readonly Point[]): Mark => ({
  id: freeId(site.marks, 'm'),
  kind,
  points
});

export function addMark(site: Site, mark: Mark): Site {
  const taken = site.marks.some((other) => other.id === mark.id);
  if (taken || site.marks.length >= COUNTS.marks || !isSound(mark)) return site;
  return { ...site, marks: [...site.marks, mark] };
}

/** The same site when the mark is not there, nothing changes, or the result would not be sound. */
export function updateMark(site: Site, id: string, patch: Patch<Omit<Mark, 'id'>>): Site {
  const marks = mapped(site.marks, (mark) => {
    if (mark.id !== id) return mark;
    const next = patched(mark, patch);
    return next === mark || isSound(next) ? next : mark;
  });
  return withList(site, 'marks', marks);
}
