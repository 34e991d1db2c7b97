/** What the curves of a sweep are called. */
import type { SweepPicture } from '#analysis/sweep/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { rangeOf } from '#plan/variables/index';
import { valueText } from '../words/variable';

/** One a curve; one curve has none. */
export function curveNames(site: Site, { family, designs }: SweepPicture): readonly string[] {
  if (designs)
    return designs.map((id) =>
      id === null ? t('sweep.thisDrawing') : (site.variants?.find((each) => each.id === id)?.name ?? id)
    );
  if (!family) return [''];
  const experiment = { site, offset_m: 0, along_m: 0, shorted: null };
  const choices = rangeOf(experiment, family.variable)?.choices ?? null;
  return family.values.map((value) => valueText(site, family.variable, value, choices));
}
