/** The cutting plan as paper and tables show it: what it is measured from is called as it is on the screen. */
import { cuttingPlanOf } from '#analysis/takeoff/cutting-plan';
import type { CuttingPlan } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import type { Mark, Site } from '#plan/schema';

const isUnnamed = ({ text }: Mark): boolean => (text ?? '').trim() === '';

/** A mark without a text is called by its kind, and counted where there are more such. */
function baselineName({ marks }: Pick<Site, 'marks'>, name: string): string {
  const mark = marks.find((each) => each.id === name && isUnnamed(each));
  if (!mark) return name;
  const kind = t(`mark.${mark.kind}`);
  const alike = marks.filter((other) => other.kind === mark.kind && isUnnamed(other));
  return alike.length === 1 ? kind : t('sheet.markName', { kind, number: alike.indexOf(mark) + 1 });
}

export function namedCuttingPlan(site: Site): CuttingPlan {
  const plan = cuttingPlanOf(site);
  const { baseline } = plan;
  return baseline ? { ...plan, baseline: { ...baseline, name: baselineName(site, baseline.name) } } : plan;
}
