/** Columns that know where their cells come from. */
import { tidy } from '#units/convert';
import type { UnitSystem } from '#units/kind';
import { measureOf, type MeasureName } from './measures';
import type { Cell, Column, Table } from './table';

export interface Field<Row> {
  readonly column: Column;
  readonly cell: (row: Row) => Cell;
  /** Of a cell that wants other places than its column; null for one that does not. */
  readonly places?: (row: Row) => number | null;
  /** What stands beneath the column. */
  readonly total?: Cell;
}

/** Infinities and NaN are no numbers for anybody who reads the table. */
const finite = (value: number | null | undefined): number | null =>
  typeof value === 'number' && Number.isFinite(value) ? value : null;

export const text = <Row>(head: string, cell: (row: Row) => string | null, total?: string): Field<Row> => ({
  column: { head, kind: 'text' },
  cell,
  ...(total === undefined ? {} : { total })
});

/** A number that has no unit, or whose unit the head names already. */
export const number = <Row>(
  head: string,
  digits: number,
  cell: (row: Row) => number | null | undefined,
  total?: number
): Field<Row> => ({
  column: { head, kind: 'number', digits },
  cell: (row) => finite(cell(row)),
  ...(total === undefined ? {} : { total: finite(total) })
});

/** Of an amount: what is less than a millionth is none. */
const MOST_PLACES = 6;

/** Amounts of different units in one column: a row of pieces has whole ones, and nothing is rounded away to naught. */
export const mixed = <Row>(
  head: string,
  digits: number,
  cell: (row: Row) => number | null | undefined,
  isPieces: (row: Row) => boolean
): Field<Row> => ({
  ...number(head, digits, cell),
  places: (row) => {
    const value = Math.abs(finite(cell(row)) ?? 0);
    if (isPieces(row) && Number.isInteger(tidy(value))) return 0;
    const isLost = value > 0 && value < 0.5 * 10 ** -digits;
    return isLost ? Math.min(MOST_PLACES, 1 - Math.floor(Math.log10(value))) : null;
  }
});

/** Of its value: what is stated is read as it was stated, and what is multiplied by it comes to what stands beside it. */
const EXACT = 2e-5;

const misses = (value: number, places: number): boolean =>
  Math.abs(Number(value.toFixed(places)) - value) > EXACT * value;

/** The same with as many places as each of its numbers takes, at least those of its column. */
export const exact = <Row>(field: Field<Row>): Field<Row> => ({
  ...field,
  places: (row) => {
    const cell = field.cell(row);
    const digits = field.column.digits ?? MOST_PLACES;
    const value = typeof cell === 'number' ? Math.abs(cell) : 0;
    let places = digits;
    while (places < MOST_PLACES && misses(value, places)) places++;
    return places > digits ? places : (field.places?.(row) ?? null);
  }
});

/** A quantity in SI; its head gets the unit in which it is shown. */
export function quantity<Row>(
  head: string,
  measure: MeasureName,
  system: UnitSystem,
  cell: (row: Row) => number | null | undefined,
  total?: number
): Field<Row> {
  const { symbol, digits, of } = measureOf(measure, system);
  return {
    column: { head: `${head} (${symbol})`, kind: 'number', digits },
    cell: (row) => of(cell(row)),
    ...(total === undefined ? {} : { total: of(total) })
  };
}

export interface TableParts<Row> {
  readonly title: string;
  readonly fields: readonly Field<Row>[];
  readonly rows: readonly Row[];
  readonly notes?: readonly string[];
}

/** A row of sums is there where a field has one. */
export function tableOf<Row>({ title, fields, rows, notes = [] }: TableParts<Row>): Table {
  const hasTotals = rows.length > 0 && fields.some(({ total }) => total !== undefined);
  return {
    title,
    columns: fields.map(({ column }) => column),
    rows: rows.map((row) => fields.map(({ cell }) => cell(row))),
    ...(fields.some(({ places }) => places !== undefined)
      ? { places: rows.map((row) => fields.map(({ places }) => places?.(row) ?? null)) }
      : {}),
    ...(hasTotals ? { totals: fields.map(({ total }) => total ?? null) } : {}),
    ...(notes.length > 0 ? { notes } : {})
  };
}

/** The same without columns in which no row has anything. */
export function withoutEmpty<Row>(
  fields: readonly Field<Row>[],
  rows: readonly Row[]
): readonly Field<Row>[] {
  return fields.filter(({ cell }) =>
    rows.some((row) => {
      const value = cell(row);
      return value !== null && value !== '';
    })
  );
}
