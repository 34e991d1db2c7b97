/** What a chart of a sweep says to those who hear it, and under a pointer. */
import type { SweepPicture, SweptFigure } from '#analysis/sweep/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { VariableRange } from '#plan/variables/variable';
import { figureName, figureText } from '../words/figure';
import { spokenText, valueText, variableName } from '../words/variable';
import type { doubtsByRow } from './curves';

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
  const place = x.values[at]!;
  const text = spokenText(x.variable, place, textOf(site, x.variable, place, choices));
  return t('sweep.at', { x: text, value: said.join('; ') });
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

/** Whether a row of the table is doubtful: of several curves which of them, of all of them only that it is. */
export function doubtText(
  doubts: ReturnType<typeof doubtsByRow>,
  names: readonly string[],
  at: number
): string {
  const doubted = names.filter((_, row) => doubts.has(row, at));
  if (doubted.length === 0) return '';
  return doubted.length === names.length ? t('sweep.yes') : doubted.join('; ');
}
