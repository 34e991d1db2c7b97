/** A figure and where it plausibly lies, as three columns. */
import type { PlausibleRange } from '#analysis/results';
import { t } from '#i18n/message';
import type { UnitSystem } from '#units/kind';
import { number, quantity, type Field } from './fields';
import type { MeasureName } from './measures';

interface Ranged {
  readonly value: number | null | undefined;
  readonly range: Pick<PlausibleRange, 'low' | 'high'> | null | undefined;
}

function three<Row>(
  what: string,
  of: (row: Row) => Ranged,
  column: (head: string, cell: (row: Row) => number | null | undefined) => Field<Row>
): readonly Field<Row>[] {
  return [
    column(what, (row) => of(row).value),
    column(t('tables.from', { what }), (row) => of(row).range?.low),
    column(t('tables.to', { what }), (row) => of(row).range?.high)
  ];
}

export const rangedQuantity = <Row>(
  what: string,
  measure: MeasureName,
  system: UnitSystem,
  of: (row: Row) => Ranged
): readonly Field<Row>[] => three(what, of, (head, cell) => quantity(head, measure, system, cell));

export const rangedNumber = <Row>(
  what: string,
  digits: number,
  of: (row: Row) => Ranged
): readonly Field<Row>[] => three(what, of, (head, cell) => number(head, digits, cell));
