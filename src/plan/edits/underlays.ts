/** Pictures and lines under the plan. */
import { BOUNDS, COUNTS } from '../bounds';
import { add, bearing, distance, normalAngle, rotate, subtract } from '../geometry/points';
import type { Lines, Picture, Point, Site, Underlay } from '../schema';
import { underlay as underlaySchema } from '../schema/drawing';
import { pixelOnPlan, underlayOutline } from '../underlays';
import { freeId, mapped, patched, withList, type Patch } from './list';
import { scaleDesigns } from './scale-designs';
import { tidyAngle, tidyPoint } from './tidy';

/** Bytes and lines were looked at when they came in; every step of a slider must not read megabytes again. */
function isSound(underlay: Underlay): boolean {
  const { picture, lines } = underlay;
  return underlaySchema.safeParse({
    ...underlay,
    picture: picture && { ...picture, data: '' },
    ...(lines ? { lines: { ...lines, paths: [] } } : {})
  }).success;
}

export const newUnderlay = (
  site: Site,
  { name, picture, at, metresPerPixel }: Pick<Underlay, 'name' | 'picture' | 'at' | 'metresPerPixel'>
): Underlay => ({
  id: freeId(site.underlays, 'picture'),
  name: name.slice(0, COUNTS.nameLength),
  picture,
  at: tidyPoint(at),
  metresPerPixel: Math.min(BOUNDS.metresPerPixel.max, Math.max(BOUNDS.metresPerPixel.min, metresPerPixel)),
  rotation: 0,
  opacity: 0.6,
  locked: true
});

/** Lines of another drawing, whose unit is so many metres; `at` is their middle. */
export const newLines = (
  site: Site,
  {
    name,
    lines,
    at,
    metresPerUnit
  }: {
    readonly name: string;
    readonly lines: Lines;
    readonly at: Point;
    readonly metresPerUnit: number;
  }
): Underlay => ({
  ...newUnderlay(site, { name, picture: null, at, metresPerPixel: metresPerUnit }),
  id: freeId(site.underlays, 'lines'),
  lines,
  opacity: 0.8
});

/** Refused, with the same site returned, when there are as many already as a document may hold. */
export function addUnderlay(site: Site, underlay: Underlay): Site {
  const taken = site.underlays.some(({ id }) => id === underlay.id);
  if (taken || site.underlays.length >= COUNTS.underlays || !isSound(underlay)) return site;
  return { ...site, underlays: [...site.underlays, underlay] };
}

export function updateUnderlay(site: Site, id: string, patch: Patch<Omit<Underlay, 'id'>>): Site {
  const underlays = mapped(site.underlays, (underlay) => {
    if (underlay.id !== id) return underlay;
    const next = patched(underlay, patch);
    return next === underlay || isSound(next) ? next : underlay;
  });
  return withList(site, 'underlays', underlays);
}

const underlayOf = (site: Site, id: string) => site.underlays.find((underlay) => underlay.id === id);

/** Another picture in the same place. One of the same proportions keeps its scale, at whatever resolution it comes. */
export function replacePicture(site: Site, id: string, picture: Picture): Site {
  const underlay = underlayOf(site, id);
  if (!underlay) return site;
  const { picture: old, scaledBy, metresPerPixel } = underlay;
  if (!old) return updateUnderlay(site, id, { picture, lines: undefined });
  const finer = picture.width / old.width;
  const isAlike = Math.abs(picture.height / old.height / finer - 1) < 0.005;
  const moved = ([x, y]: Point): [number, number] => [
    Math.min(picture.width, x * finer),
    Math.min(picture.height, y * finer)
  ];
  return updateUnderlay(site, id, {
    picture,
    metresPerPixel: metresPerPixel / finer,
    scaledBy:
      isAlike && scaledBy ? { ...scaledBy, from: moved(scaledBy.from), to: moved(scaledBy.to) } : undefined
  });
}

export interface Span {
  /** Pixels from the picture's upper left corner. */
  readonly from: Point;
  readonly to: Point;
  /** What lies between them on the road, metres. */
  readonly distance_m: number;
}

/**
 * Scales a picture so that the span has its length. The first point stays where it is on the plan; nothing that is drawn
 * moves, unless `carries`: then everything on the picture is scaled about the same point with it, in the kept designs too. The
 * same site when the two points are one, or a size would leave its bounds.
 */
export function scaleUnderlay(site: Site, id: string, { from, to, distance_m }: Span, carries = false): Site {
  const underlay = underlayOf(site, id);
  const pixels = distance(from, to);
  if (!underlay || !(pixels > 0)) return site;
  const pivot = pixelOnPlan(underlay, from);
  const metresPerPixel = distance_m / pixels;
  const unmoved: Underlay = {
    ...underlay,
    metresPerPixel,
    scaledBy: { from: [from[0], from[1]], to: [to[0], to[1]], distance_m }
  };
  const { at } = underlay;
  const next = { ...unmoved, at: tidyPoint(add(at, subtract(pivot, pixelOnPlan(unmoved, from)))) };
  if (!isSound(next)) return site;
  const scaled = withList(
    site,
    'underlays',
    mapped(site.underlays, (each) => (each.id === id ? next : each))
  );
  const factor = metresPerPixel / underlay.metresPerPixel;
  if (!carries || Math.abs(factor - 1) < 1e-12) return scaled;
  return scaleDesigns(scaled, underlayOutline(underlay), factor, pivot) ?? site;
}

/** Turns a picture about the first of two points of the plan until the way to the second runs in that direction. */
export function turnUnderlay(site: Site, id: string, from: Point, to: Point, degrees: number): Site {
  const underlay = underlayOf(site, id);
  if (!underlay || distance(from, to) === 0) return site;
  const by = normalAngle(degrees - bearing(from, to));
  return updateUnderlay(site, id, {
    rotation: tidyAngle(normalAngle(underlay.rotation + by)),
    at: tidyPoint(rotate(underlay.at, by, from))
  });
}
