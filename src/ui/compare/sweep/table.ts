/** A sweep as a table: exact numbers in SI, one row a value, one column a result and curve. */
import type { SweepPicture } from '#analysis/sweep/results';
import type { Column, Table } from '#exchange/tables/table';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { experimentOn, rangeOf } from '#plan/variables/index';
import { quantityOf } from '#plan/variables/quantity';
import type { QuantityKind } from '#units/kind';
import { figureName, quantityOfFigure } from '../words/figure';
import { choiceName, variableName } from '../words/variable';
import { doubtText } from './chart-words';
import { curveNames } from './curve-names';
import { doubtsByRow } from './curves';

/** Units in which values are kept, whatever is shown. */
const SI: Readonly<Partial<Record<QuantityKind, string>>> = {
  length: 'm',
  smallLength: 'm',
  angle: '°',
  frequency: 'Hz',
  inductance: 'H',
  resistance: 'Ω',
  time: 's',
  temperature: '°C'
};

function headed(name: string, kind: QuantityKind, curve: string): Column {
  const unit = SI[kind];
  const named = unit === undefined ? name : t('sweep.head', { name, unit });
  return { head: curve === '' ? named : t('sweep.headOf', { head: named, curve }), kind: 'number' };
}

/** `title`: what the table is called; `curves`: what the curves are, where the site does not say it. */
export function sweepTable(
  site: Site,
  picture: SweepPicture,
  title: string,
  curves: readonly string[] = curveNames(site, picture)
): Table {
  const { x, figures, doubtful } = picture;
  const { variable } = x;
  const choices = rangeOf(experimentOn(site), variable)?.choices ?? null;
  // a file has plain spaces
  const names = curves.map((name) => name.replaceAll('\u00a0', ' '));
  const first: Column = choices
    ? { head: variableName(site, variable), kind: 'text' }
    : headed(variableName(site, variable), quantityOf(variable), '');
  const columns = figures.flatMap(({ figure, values }) =>
    values.map((_, n) => headed(figureName(site, figure), quantityOfFigure(figure), names[n] ?? ''))
  );
  const doubts = doubtsByRow(doubtful);
  const doubt: readonly Column[] =
    doubtful.length > 0 ? [{ head: t('sweep.doubtColumn'), kind: 'text' as const }] : [];
  return {
    title,
    columns: [first, ...columns, ...doubt],
    rows: x.values.map((value, k) => [
      choices ? choiceName(site, variable, choices[Math.round(value)] ?? '') : value,
      ...figures.flatMap(({ values }) => values.map((row) => row[k] ?? null)),
      ...(doubt.length > 0 ? [doubtText(doubts, names, k) || null] : [])
    ])
  };
}
