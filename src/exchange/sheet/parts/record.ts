/** Where the technician writes down what was read at the cabinet: a line a circuit. */
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { measureOf, type MeasureName } from '../../tables/measures';
import { nameOf } from '../../tables/names';
import type { Column, Table } from '../../tables/table';

const text = (head: string): Column => ({ head, kind: 'text' });

export function recordTable({ circuits, displayUnits }: Site): Table {
  const measured = (what: string, measure: MeasureName): Column =>
    text(`${what} (${measureOf(measure, displayUnits).symbol})`);
  const columns = [
    text(t('tables.circuit')),
    measured(t('tables.resistanceDc'), 'resistance'),
    measured(t('tables.inductance'), 'inductance'),
    text(t('tables.q')),
    measured(t('tables.frequency'), 'frequency'),
    text(t('sheet.record.insulation')),
    text(t('sheet.record.temperature')),
    text(t('sheet.record.by'))
  ];
  return {
    title: t('sheet.record'),
    columns,
    rows: circuits.map((circuit) => columns.map((_, at) => (at === 0 ? nameOf(circuit) : '')))
  };
}
