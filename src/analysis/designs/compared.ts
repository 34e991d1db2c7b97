/** Which designs of a site are laid side by side where nobody has chosen, and what they are called there. */
import { t } from '#i18n/message';
import { nameOf } from '#plan/differences/names';
import type { Site } from '#plan/schema';
import { isKept, variantOf, variantsOf } from '#plan/variants';
import type { DesignId } from './results';

/** As many as stand side by side on a page. */
export const MOST_ON_PAPER = 3;

/**
 * The variants in their order and the present design last, so that it is held against one that was kept; without the variant
 * that the present design still is. Of too many the last ones are left out, that of which the present design is a changed
 * state first. Fewer than two: there is nothing to compare.
 */
export function designsCompared(site: Site, most = Infinity): readonly DesignId[] {
  const others = variantsOf(site).filter(({ id }) => id !== site.variant);
  const own = isKept(site) ? null : variantOf(site, site.variant);
  const chosen = new Set([...others, ...(own ? [own] : [])].slice(0, most - 1));
  return [...variantsOf(site).flatMap((each) => (chosen.has(each) ? [each.id] : [])), null];
}

/** The present design has the name of the variant that it still is. */
export function comparedName(site: Site, id: DesignId): string {
  if (id !== null) {
    const variant = variantOf(site, id);
    return variant ? nameOf(variant) : id;
  }
  const own = variantOf(site, site.variant);
  if (!own) return t('designs.present');
  return isKept(site) ? nameOf(own) : t('designs.presentOf', { name: nameOf(own) });
}
