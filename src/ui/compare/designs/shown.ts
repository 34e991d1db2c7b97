/** Which designs of a site are compared, and what they are called. Pure. */
import { comparedName, designsCompared, MOST_ON_PAPER as MOST } from '#analysis/designs/compared';
import type { DesignId } from '#analysis/designs/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { variantsOf } from '#plan/variants';

export const LEAST = 2;

/** The present design last, so that it is measured against one that was kept. */
const inOrder = (site: Site, ids: readonly DesignId[]): readonly DesignId[] => [
  ...variantsOf(site).flatMap(({ id }) => (ids.includes(id) ? [id] : [])),
  ...(ids.includes(null) ? [null] : [])
];

/** Those chosen that are still there; where nothing is chosen the usual ones. */
export const designsShown = (site: Site, chosen: readonly DesignId[] | null): readonly DesignId[] =>
  (chosen === null ? designsCompared(site, MOST) : inOrder(site, chosen)).slice(0, MOST);

/** The one that the others are measured against goes first. */
export const measuredAgainst = (
  designs: readonly DesignId[],
  against: DesignId | undefined
): readonly DesignId[] =>
  against !== undefined && designs.includes(against)
    ? [against, ...designs.filter((id) => id !== against)]
    : designs;

/** With one more, or without it; of too many the first gives way. */
export function toggled(designs: readonly DesignId[], id: DesignId): readonly DesignId[] {
  if (designs.includes(id)) return designs.filter((each) => each !== id);
  return [...designs.slice(designs.length >= MOST ? 1 : 0), id];
}

/** As on paper; of the present design it is also told what it is a working state of, if it has been changed since. */
export const designName = comparedName;

/** "Variant 3", with the first number that no variant has. */
export function suggestedName(site: Site): string {
  const taken = new Set(variantsOf(site).map(({ name }) => name));
  for (let number = taken.size + 1; ; number++) {
    const name = t('designs.suggested', { number });
    if (!taken.has(name)) return name;
  }
}
