/**
 * Making what is drawn on a piece of ground larger or smaller in every design at once. The ground with its picture belongs to
 * the site: a design that is kept was traced on it like the present one, and would lie beside it if it stayed as it was.
 */
import type { Point, Site, Variant } from '../schema';
import { designOf, variantsOf, withDesign } from '../variants';
import { mapped, withList } from './list';
import { scaleThings, thingsOn } from './scale';

/** The present design only; the same site where nothing lies on the area, null where a document may not hold the result. */
function scaledOn(site: Site, area: readonly Point[], factor: number, pivot: Point): Site | null {
  const things = thingsOn(site, area);
  if (things.length === 0) return site;
  const next = scaleThings(site, things, factor, pivot);
  return next === site ? null : next;
}

/** How many of the kept designs have something on the area. */
export const designsOn = (site: Site, area: readonly Point[]): number =>
  variantsOf(site).filter(({ design }) => thingsOn(withDesign(site, design), area).length > 0).length;

/**
 * Everything on the area `factor` times as large about the pivot, in the present design and in each kept one, which stays
 * kept when it was. `factor`: over 0, finite and not 1. Null where a document may not hold one of them at that size: all or
 * nothing.
 */
export function scaleDesigns(site: Site, area: readonly Point[], factor: number, pivot: Point): Site | null {
  const present = scaledOn(site, area, factor, pivot);
  if (!present) return null;
  let isHeld = true;
  const variants = mapped(variantsOf(site), (variant): Variant => {
    const own = withDesign(site, variant.design);
    const next = scaledOn(own, area, factor, pivot);
    isHeld &&= next !== null;
    return next === null || next === own
      ? variant
      : { ...variant, design: { ...variant.design, ...designOf(next) } };
  });
  if (!isHeld) return null;
  return site.variants ? withList(present, 'variants', variants) : present;
}
