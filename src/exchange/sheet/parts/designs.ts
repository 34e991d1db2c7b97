/** The kept designs side by side, on pages of their own. */
import { comparedName, designsCompared, MOST_ON_PAPER } from '#analysis/designs/compared';
import type { DesignResults, DesignsWish } from '#analysis/designs/results';
import { t } from '#i18n/message';
import { listed } from '#i18n/locale';
import type { Site } from '#plan/schema';
import { designsTables } from '../../tables/designs';
import type { Block } from '../layout/block';
import { tableBlock } from '../layout/table-block';
import { textsBlock } from '../layout/texts-block';
import { clean } from '../text/clean';

/** Null where the sheet does not ask for it, or there is nothing to compare. */
export function designsOnSheet(site: Site): DesignsWish | null {
  if (site.sheet?.comparesDesigns !== true) return null;
  const designs = designsCompared(site, MOST_ON_PAPER);
  return designs.length < 2 ? null : { designs, pass: null };
}

/** Of too many designs those that are not on the page. */
function leftOut(site: Site, results: readonly DesignResults[]): readonly Block[] {
  const shown = new Set(results.map(({ design }) => design));
  const others = designsCompared(site).filter((id) => !shown.has(id));
  if (others.length === 0) return [];
  const names = listed(others.map((id) => clean(comparedName(site, id))));
  return [textsBlock(t('sheet.designs.leftOut'), [names])];
}

/** `results`: those that `designsOnSheet` asks for, by the site's own sheet; null while they are not known. */
export function designBlocks(site: Site, results: readonly DesignResults[] | null): readonly Block[] {
  if (designsOnSheet(site) === null) return [];
  if (results === null) return [textsBlock(t('designs.take'), [t('sheet.designs.later')])];
  return [...designsTables(site, results).map((table) => tableBlock(table)), ...leftOut(site, results)];
}
