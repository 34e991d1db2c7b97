import { BOUNDS, COUNTS } from '../bounds';
import { add, bearing, distance, rotate, scale, subtract } from '../geometry/points';
import { mark as markSchema, type Mark, type MarkKind, type Opening, type Point, type Site } from '../schema';
import { clampPoint } from './limits';
import { freeId, mapped, patched, withList, type Patch } from './list';
import { tidyPoint } from './tidy';

/** Nearer than this, metres, two ends of a line are one point. */
const SHORTEST = 0.01;
/** Degrees that a leaf swings unless it is told otherwise. */
const USUAL_SWING = 90;

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

/** As leaves usually open: a quarter turn, or back along itself by its own length. */
export function usualOpening(kind: Opening['kind'], [hinge, tip]: readonly Point[]): Opening {
  if (kind === 'swing') return { kind, angle: USUAL_SWING };
  const length = hinge && tip ? distance(hinge, tip) : 0;
  return { kind, travel: Math.max(BOUNDS.leafTravel.min, -length) };
}

/** The far end of a mark of two points, so that it gets that length (m) or direction (°); its first point stays. */
export function stretchMark(
  site: Site,
  id: string,
  { length, angle }: { readonly length?: number; readonly angle?: number }
): Site {
  const mark = site.marks.find((each) => each.id === id);
  const [from, to] = mark?.points ?? [];
  if (!mark || !from || !to || mark.points.length !== 2) return site;
  const now = distance(from, to);
  const along: Point = now > 0 ? scale(subtract(to, from), 1 / now) : [1, 0];
  const long = length ?? now;
  if (!(long >= SHORTEST) || (angle !== undefined && !Number.isFinite(angle))) return site;
  const turned = angle === undefined ? along : rotate([1, 0], angle);
  const next = tidyPoint(clampPoint(add(from, scale(turned, long))));
  return next[0] === to[0] && next[1] === to[1] ? site : updateMark(site, id, { points: [from, next] });
}

/** Degrees, 0 = along +x. */
export const directionOf = ({ points: [from, to] }: Mark): number => (from && to ? bearing(from, to) : 0);

/** Whether the last point is joined to the first one. */
export const enclosesArea = (kind: MarkKind): boolean => kind === 'island' || kind === 'cover';

/** A point in the middle of the side that begins at another one; the last side of an area leads back to its first. */
export function addMarkPoint(site: Site, id: string, after: number): Site {
  const mark = site.marks.find((each) => each.id === id);
  const next = mark && enclosesArea(mark.kind) && after === mark.points.length - 1 ? 0 : after + 1;
  const [from, to] = [mark?.points[after], mark?.points[next]];
  if (!mark || !from || !to) return site;
  const middle = tidyPoint([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]);
  return updateMark(site, id, { points: mark.points.toSpliced(after + 1, 0, middle) });
}

const SEGMENTS: readonly MarkKind[] = ['stop-line', 'gate', 'arrow', 'dimension'];

/** Whether a mark runs from one point to another, without corners between. */
export const isSegment = (kind: MarkKind): boolean => SEGMENTS.includes(kind);

/** A line keeps two points, an area three. */
export const fewestPoints = ({ kind }: Mark): number => (enclosesArea(kind) ? 3 : 2);

export function removeMarkPoint(site: Site, id: string, index: number): Site {
  const mark = site.marks.find((each) => each.id === id);
  if (!mark?.points[index] || mark.points.length <= fewestPoints(mark)) return site;
  return updateMark(site, id, { points: mark.points.toSpliced(index, 1) });
}
