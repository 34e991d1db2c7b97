/** The cutting plan as paper and tables show it: what it is measured from is called as it is on the screen. */
import { cuttingPlanOf } from '#analysis/takeoff/cutting-plan';
import type { CuttingPlan } from '#analysis/takeoff/results';
import type { Site } from '#plan/schema';
import { isUnnamed, markName } from '../../tables/names';

function baselineName(site: Pick<Site, 'marks'>, name: string): string {
  const mark = site.marks.find(({ id, text }) => id === name || text === name);
  return mark && isUnnamed(mark) ? markName(site, mark) : name;
}

export function namedCuttingPlan(site: Site): CuttingPlan {
  const plan = cuttingPlanOf(site);
  const { baseline } = plan;
  return baseline ? { ...plan, baseline: { ...baseline, name: baselineName(site, baseline.name) } } : plan;
}
