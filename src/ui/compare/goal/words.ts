/** What a search found, in words. */
import type { Goal } from '#analysis/goal/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { experimentOn, rangeOf } from '#plan/variables/index';
import { quantityOf } from '#plan/variables/quantity';
import type { Variable } from '#plan/variables/variable';
import { displayedUnit } from '#units/displayed-unit';
import { format } from '#units/format';
import { tight } from '../../passing/speed/words';
import { unbroken } from '../words/unbroken';
import { exactText, isWhole, valueText, variableName } from '../words/variable';

type Found = Extract<Goal, { kind: 'found' }>;
type None = Extract<Goal, { kind: 'none' }>;

export const valueIn = (site: Site, variable: Variable, value: number): string =>
  valueText(site, variable, value, rangeOf(experimentOn(site), variable)?.choices ?? null);

/** Of a value that is applied: all of it. */
export const appliedText = (site: Site, variable: Variable, value: number): string =>
  exactText(site, variable, value, rangeOf(experimentOn(site), variable)?.choices ?? null);

export const foundText = (site: Site, variable: Variable, { from, to }: Found): string =>
  t('goal.found', {
    variable: variableName(site, variable),
    to: appliedText(site, variable, to),
    from: valueIn(site, variable, from)
  });

/** A difference of two values: a unit that begins elsewhere than the stored one begins at nought for it. */
function differenceText(site: Site, variable: Variable, difference: number): string {
  const kind = quantityOf(variable);
  const beginning = displayedUnit(kind, site.displayUnits)?.offset ?? 0;
  return tight(format(difference + beginning, kind, site.displayUnits).text);
}

/** How exact it is; empty for whole numbers. */
export const withinText = (site: Site, variable: Variable, { within }: Found): string =>
  isWhole(variable) ? '' : t('goal.within', { step: differenceText(site, variable, within) });

export function reasonText(site: Site, variable: Variable, { reason, least, most }: None): string {
  const name = variableName(site, variable);
  if (reason === 'no effect') return t('goal.noEffect', { variable: name });
  if (reason === 'not possible' || !Number.isFinite(least)) return t('goal.notPossible', { variable: name });
  return t('goal.notEnough', {
    variable: name,
    least: valueIn(site, variable, least),
    most: valueIn(site, variable, most)
  });
}

export function bestText(site: Site, variable: Variable, { at, told }: NonNullable<None['best']>): string {
  const place = valueIn(site, variable, at);
  return told === '' ? t('goal.bestAt', { at: place }) : t('goal.best', { at: place, told: unbroken(told) });
}
