/**
 * A figure and the two ends of its range, three columns of a table, as one: "98.2 (95.1–101.0)". A sheet has less room than
 * a workbook, and nobody sorts it.
 */
import { t } from '#i18n/message';
import type { Cell, Column, Table } from '../../tables/table';
import { cellText } from '../layout/table-columns';

/** A head without its unit, and the unit with its brackets. */
function parted(head: string): { readonly what: string; readonly unit: string } {
  const [, what = head, unit = ''] = /^(.*?)( \([^()]*\))?$/.exec(head) ?? [];
  return { what, unit };
}

function beginsRange(columns: readonly Column[], at: number): boolean {
  const { what, unit } = parted(columns[at]!.head);
  return (
    columns[at + 1]?.head === t('tables.from', { what }) + unit &&
    columns[at + 2]?.head === t('tables.to', { what }) + unit
  );
}

type Reading = (row: readonly Cell[]) => Cell;

function merged(columns: readonly Column[], at: number): Reading {
  const [value, from, to] = [columns[at]!, columns[at + 1]!, columns[at + 2]!];
  return (row) => {
    const [low, high] = [row[at + 1], row[at + 2]];
    const text = cellText(row[at], value);
    if (typeof low !== 'number' || typeof high !== 'number') return text;
    return t('sheet.range', { value: text, from: cellText(low, from), to: cellText(high, to) });
  };
}

export function withRangesMerged(table: Table): Table {
  const columns: Column[] = [];
  const readings: Reading[] = [];
  for (let at = 0; at < table.columns.length; at++) {
    const start = at;
    columns.push(table.columns[start]!);
    if (beginsRange(table.columns, start)) {
      readings.push(merged(table.columns, start));
      at += 2;
    } else readings.push((row) => row[start] ?? null);
  }
  const readRow = (row: readonly Cell[]): Cell[] => readings.map((read) => read(row));
  if (columns.length === table.columns.length) return table;
  const said = table.notes?.map((note) => (note === t('tables.rangeNote') ? t('sheet.rangeNote') : note));
  return {
    ...table,
    columns,
    rows: table.rows.map(readRow),
    ...(said ? { notes: said } : {}),
    ...(table.totals ? { totals: readRow(table.totals) } : {})
  };
}
