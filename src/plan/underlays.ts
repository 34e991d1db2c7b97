/** Pictures under the plan: where they lie, and a drawing without them. */
import { add, rotate } from './geometry/points';
import type { Point, Site, Underlay } from './schema';

/** Pixels of a picture that is missing: a place is kept for it. */
const MISSING = { width: 400, height: 300 } as const;

/** From pixels (from the upper left corner, down is positive) to the plan. */
export function pixelOnPlan({ picture, at, metresPerPixel, rotation }: Underlay, [x, y]: Point): Point {
  const { width, height } = picture ?? MISSING;
  const local: Point = [(x - width / 2) * metresPerPixel, (height / 2 - y) * metresPerPixel];
  return add(at, rotate(local, rotation));
}

/** Corners from the lower left, counter-clockwise as the picture stands upright. */
export function underlayOutline(underlay: Underlay): Point[] {
  const { width, height } = underlay.picture ?? MISSING;
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
