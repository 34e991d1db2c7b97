/** What a chart of a sweep says to those who hear it, and under a pointer. */
import type { SweepPicture, SweptFigure } from '#analysis/sweep/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { VariableRange } from '#plan/variables/variable';
import { figureName, figureText } from '../words/figure';
import { valueText, variableName } from '../words/variable';

type Choices = VariableRange['choices'];

/** The values of all curves at one place. */
export function readingText(
  site: Site,
  { x }: SweepPicture,
  { figure, values }: SweptFigure,
  at: number,
  names: readonly string[],
  choices: Choices,
  textOf: typeof valueText = valueText
): string {
  const said = values.map((row, n) => {
    const value = figureText(site, figure, row[at] ?? null);
    return names.length > 1 ? t('sweep.curveAt', { curve: names[n] ?? '', value }) : value;
  });
  return t('sweep.at', { x: textOf(site, x.variable, x.values[at]!, choices), value: said.join('; ') });
}

/** The whole chart in one sentence, by the curve of the design. */
export function summaryText(
  site: Site,
  { x }: SweepPicture,
  { figure, values }: SweptFigure,
  lead: number,
  choices: Choices
): string {
  const row = values[lead] ?? [];
  return t('sweep.chartLabel', {
    figure: figureName(site, figure),
    variable: variableName(site, x.variable),
    from: valueText(site, x.variable, x.values[0] ?? 0, choices),
    to: valueText(site, x.variable, x.values.at(-1) ?? 0, choices),
    first: figureText(site, figure, row[0] ?? null),
    last: figureText(site, figure, row.at(-1) ?? null)
  });
}
