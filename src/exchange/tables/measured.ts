/** What meters said: every figure of every reading with what was expected, the verdict and the drift, and how each circuit was accepted. */
import type { CheckedCircuit, CheckedFigure } from '#analysis/fault-finding/checked';
import { driftOf, type Drift } from '#analysis/fault-finding/drift';
import { inRow } from '#i18n/locale';
import { t } from '#i18n/message';
import { acceptanceOf } from '#plan/edits/record';
import type { Circuit, Quantity, Reading, Site } from '#plan/schema';
import { format } from '#units/format';
import { clean } from '../sheet/text/clean';
import {
  acceptanceText,
  limitsText,
  placeText,
  quantityText,
  shown,
  timeText,
  verdictText
} from './field-words';
import { number, quantity, tableOf, text, withoutEmpty } from './fields';
import { measureOf, type MeasureName } from './measures';
import { circuitName, nameOf } from './names';
import type { Table } from './table';

const MEASURE: Readonly<Record<Exclude<Quantity, 'q'>, MeasureName>> = {
  resistanceDc_ohm: 'resistance',
  inductance_H: 'inductance',
  frequency_Hz: 'frequency',
  insulation_ohm: 'insulation',
  insulationBetween_ohm: 'insulation',
  deltaLOverL: 'response'
};

interface Row {
  readonly circuit: string;
  readonly reading: Reading;
  readonly figure: CheckedFigure;
  readonly drift: Drift | null;
}

/** Rows of one table have units of their own: which, stands in a column. */
function valueIn(site: Site, what: Quantity, value: number | null | undefined): number | null {
  if (value === null || value === undefined) return null;
  if (what === 'q') return Number(value.toFixed(1));
  const { of, digits } = measureOf(MEASURE[what], site.displayUnits);
  const found = of(shown(value, what));
  return found === null ? null : Number(found.toFixed(digits));
}

const turned = (value: number | null, what: Quantity): number | null =>
  value === null ? null : shown(value, what);

const unitIn = (site: Site, what: Quantity): string =>
  what === 'q' ? '' : measureOf(MEASURE[what], site.displayUnits).symbol;

const rowsOf = (site: Site, checked: readonly CheckedCircuit[]): readonly Row[] =>
  checked.flatMap(({ circuit, measured }) =>
    measured.map((figure) => ({
      circuit,
      figure,
      reading: site.readings[figure.reading]!,
      drift: driftOf(site, figure.reading, figure.quantity)
    }))
  );

function instrumentsText({ fieldCheck }: Site, { instruments = [] }: Reading): string {
  const named = (id: string) => fieldCheck?.instruments?.find((each) => each.id === id) ?? { id, name: '' };
  return inRow(instruments.map((id) => nameOf(named(id))));
}

export function measuredTable(site: Site, checked: readonly CheckedCircuit[]): Table {
  const rows = rowsOf(site, checked);
  const of = (value: (row: Row) => number | null | undefined) => (row: Row) =>
    valueIn(site, row.figure.quantity, value(row));
  // a drop's range turns round with its sign
  const edge = (which: 'low' | 'high') =>
    of(({ figure: { expected, quantity: what } }) =>
      what === 'deltaLOverL' ? expected?.[which === 'low' ? 'high' : 'low'] : expected?.[which]
    );
  const temperature = ({ reading }: Row): string | null =>
    reading.temperature_C === undefined
      ? null
      : format(reading.temperature_C, 'temperature', site.displayUnits).text;
  const fields = [
    text<Row>(t('tables.circuit'), ({ circuit }) => circuitName(site, circuit)),
    text<Row>(t('record.table.where'), ({ figure }) => placeText(site, figure)),
    text<Row>(t('record.table.at'), ({ reading }) => clean(timeText(reading))),
    text<Row>(t('record.table.commissioning'), ({ reading }) =>
      reading.isCommissioning === true ? t('tables.yes') : t('tables.no')
    ),
    text<Row>(t('record.table.quantity'), ({ figure, reading }) =>
      quantityText(site, figure.quantity, {
        frequency_Hz: figure.expected?.frequency_Hz ?? reading.meterFrequency_Hz ?? null,
        vehicle: reading.vehicle ?? figure.expected?.vehicle ?? null
      })
    ),
    text<Row>(t('record.table.unit'), ({ figure }) => unitIn(site, figure.quantity)),
    {
      column: { head: t('record.table.measured'), kind: 'number' as const },
      cell: of(({ figure }) => figure.value)
    },
    text<Row>(t('record.table.overRange'), ({ figure }) => (figure.value === null ? t('tables.yes') : null)),
    {
      column: { head: t('record.table.expected'), kind: 'number' as const },
      cell: of(({ figure }) => figure.expected?.value)
    },
    {
      column: { head: t('tables.from', { what: t('record.table.expected') }), kind: 'number' as const },
      cell: edge('low')
    },
    {
      column: { head: t('tables.to', { what: t('record.table.expected') }), kind: 'number' as const },
      cell: edge('high')
    },
    text<Row>(t('record.table.limit'), ({ figure: { expected } }) =>
      expected ? limitsText(expected, site.displayUnits) : null
    ),
    number<Row>(t('record.table.deviations'), 1, ({ figure: { deviations, quantity: what } }) =>
      turned(deviations, what)
    ),
    text<Row>(t('record.table.verdict'), ({ figure }) => verdictText(figure.verdict)),
    {
      column: { head: t('record.table.drift'), kind: 'number' as const },
      cell: of(({ drift }) => drift?.change)
    },
    quantity<Row>(t('record.table.driftShare'), 'response', site.displayUnits, ({ drift, figure }) =>
      turned(drift?.share ?? null, figure.quantity)
    ),
    text<Row>(t('record.table.temperature'), temperature),
    text<Row>(t('record.table.weather'), ({ reading: { weather } }) =>
      weather === undefined ? null : t(`field.weather.${weather}`)
    ),
    text<Row>(t('record.table.instruments'), ({ reading }) => instrumentsText(site, reading)),
    text<Row>(t('record.table.by'), ({ reading }) => clean(reading.by ?? '')),
    text<Row>(t('record.table.note'), ({ reading }) => clean(reading.note ?? ''))
  ];
  return tableOf({
    title: t('record.table.measuredTitle'),
    rows,
    fields: withoutEmpty(fields, rows),
    notes: [t('record.table.measuredNote'), t('record.table.driftNote')]
  });
}

/** Of circuits about which something was decided. */
export function acceptanceTable(site: Site): Table {
  const rows = site.circuits.filter(({ id }) => acceptanceOf(site, id) !== undefined);
  const { date, installedBy, testedBy, witnessedBy } = site.fieldCheck?.record ?? {};
  const same = (value: string | undefined) => () => clean(value ?? '');
  const fields = [
    text<Circuit>(t('tables.circuit'), (circuit) => nameOf(circuit)),
    text<Circuit>(t('record.acceptance'), ({ id }) => acceptanceText(acceptanceOf(site, id)!.verdict)),
    text<Circuit>(t('record.remarks'), ({ id }) => clean(acceptanceOf(site, id)?.remarks ?? '')),
    text<Circuit>(t('record.date'), same(date)),
    text<Circuit>(t('record.installedBy'), same(installedBy)),
    text<Circuit>(t('record.testedBy'), same(testedBy)),
    text<Circuit>(t('record.witnessedBy'), same(witnessedBy))
  ];
  return tableOf({ title: t('record.acceptance'), rows, fields: withoutEmpty(fields, rows) });
}

/** A table without rows is left out, the first apart: a file says what it is of. */
export const measuredTables = (site: Site, checked: readonly CheckedCircuit[]): readonly Table[] => [
  measuredTable(site, checked),
  ...[acceptanceTable(site)].filter(({ rows }) => rows.length > 0)
];
