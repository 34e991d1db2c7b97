/** Pictures and lines under the plan: where they lie, how they were scaled, and a drawing without them. */
import { add, rotate, subtract } from './geometry/points';
import type { Point, Site, Underlay } from './schema';

/** Pixels of a picture that is missing: a place is kept for it. */
const MISSING = { width: 400, height: 300 } as const;

/** The sides in a picture's own pixels, or in the unit of the drawing that lines come from: the same role. */
export const pixelsOf = ({
  picture,
  lines
}: Pick<Underlay, 'picture' | 'lines'>): { readonly width: number; readonly height: number } =>
  lines ?? picture ?? MISSING;

/** Bytes that should be there and are not. */
export const isMissing = ({ picture, lines }: Pick<Underlay, 'picture' | 'lines'>): boolean =>
  picture === null && lines === undefined;

/** Pictures among what lies under the plan: on paper and in drawings for others there are none, only lines. */
export const picturesUnder = ({ underlays }: Pick<Site, 'underlays'>): number =>
  underlays.filter(({ lines }) => lines === undefined).length;

/** Pixels of a picture that two points must lie apart to mean anything; a share of a drawing, whose unit may be a metre. */
export const leastSpan = ({ lines }: Pick<Underlay, 'lines'>): number =>
  lines ? Math.max(lines.width, lines.height) / 2_000 : 3;

/** From pixels (from the upper left corner, down is positive) to the plan. */
export function pixelOnPlan(underlay: Underlay, [x, y]: Point): Point {
  const { at, metresPerPixel, rotation } = underlay;
  const { width, height } = pixelsOf(underlay);
  const local: Point = [(x - width / 2) * metresPerPixel, (height / 2 - y) * metresPerPixel];
  return add(at, rotate(local, rotation));
}

/** The other way round: the pixel that lies under a point of the plan, inside the picture or not. */
export function pixelUnder(underlay: Underlay, point: Point): Point {
  const { at, metresPerPixel, rotation } = underlay;
  const { width, height } = pixelsOf(underlay);
  const [x, y] = rotate(subtract(point, at), -rotation);
  return [width / 2 + x / metresPerPixel, height / 2 - y / metresPerPixel];
}

export function isOnPicture(underlay: Underlay, [x, y]: Point): boolean {
  const { width, height } = pixelsOf(underlay);
  return x >= 0 && y >= 0 && x <= width && y <= height;
}

/** Until two points and the distance between them were given, a picture's size is a guess; lines have their own scale. */
export const isToScale = ({ scaledBy, lines }: Pick<Underlay, 'scaledBy' | 'lines'>): boolean =>
  scaledBy !== undefined || lines !== undefined;

/** The two points that it was scaled by, on the plan as it lies now; null for one that is not to scale. */
export function spanOnPlan(underlay: Underlay): readonly [Point, Point] | null {
  const { scaledBy } = underlay;
  return scaledBy ? [pixelOnPlan(underlay, scaledBy.from), pixelOnPlan(underlay, scaledBy.to)] : null;
}

/** Corners from the lower left, counter-clockwise as the picture stands upright. */
export function underlayOutline(underlay: Underlay): Point[] {
  const { width, height } = pixelsOf(underlay);
  const corners: Point[] = [[0, height], [width, height], [width, 0], [0, 0]]; // prettier-ignore
  return corners.map((corner) => pixelOnPlan(underlay, corner));
}

const WITHOUT = new WeakMap<Site, Site>();

/** For the calculation, which is sent a copy of the drawing at every step: no figure depends on a picture. */
export function withoutPictures(site: Site): Site {
  if (site.underlays.length === 0) return site;
  const known = WITHOUT.get(site) ?? { ...site, underlays: [] };
  WITHOUT.set(site, known);
  return known;
}

export const missingPictures = (site: Site): readonly Underlay[] => site.underlays.filter(isMissing);

/**
 * Pictures that are missing here and there in another state of the same document, taken over from it: what a file
 * holds is never lost by saving over it. The same site if there is none.
 */
export function withPicturesOf(site: Site, other: Site): Site {
  let isNew = false;
  const underlays = site.underlays.map((underlay) => {
    const kept = !isMissing(underlay) ? null : other.underlays.find(({ id }) => id === underlay.id)?.picture;
    if (!kept) return underlay;
    isNew = true;
    return { ...underlay, picture: kept };
  });
  return isNew ? { ...site, underlays } : site;
}

/** Without the pictures that another state of the same document misses: what `withPicturesOf` gave it, taken off again. */
export function missingLike(site: Site, other: Site): Site {
  const missing = new Set(missingPictures(other).map(({ id }) => id));
  if (missing.size === 0) return site;
  const underlays = site.underlays.map((each) => (missing.has(each.id) ? { ...each, picture: null } : each));
  return { ...site, underlays };
}
