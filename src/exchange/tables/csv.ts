/**
 * Tables as CSV, RFC 4180: one head, every record with as many fields, CR LF, UTF-8. English is written with commas and a
 * decimal point, a language with a decimal comma with semicolons, as spreadsheets of that language read it. A text that a
 * spreadsheet would run as a formula is defused by an apostrophe; numbers stay numbers, negative ones too.
 */
import Papa from 'papaparse';
import { decimalSign, type DecimalSign } from '#i18n/locale';
import { t } from '#i18n/message';
import { rounded } from '#units/digits';
import { breathe, type Job } from '../job';
import { columnAt, type Cell, type Column, type Table } from './table';

/** Tells a spreadsheet that what follows is UTF-8; other readers may take it for a part of the first head. */
const BYTE_ORDER_MARK = '\uFEFF';
const AT_ONCE = 2_000;

/**
 * What a spreadsheet takes for a formula: signs at the beginning, also full-width ones and behind white space, which some
 * drop, and characters that nobody sees.
 */
const FORMULA = /^[\s\p{Cc}\p{Cf}]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/u;

export const defused = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);

function cellText(cell: Cell | undefined, { digits }: Pick<Column, 'digits'>, sign: DecimalSign): string {
  if (cell === null || cell === undefined) return '';
  if (typeof cell === 'string') return defused(cell);
  if (!Number.isFinite(cell)) return '';
  const written = digits === undefined ? String(cell) : rounded(cell, digits);
  // what is rounded away has no sign
  return (Number(written) === 0 ? written.replace('-', '') : written).replace('.', sign);
}

/** Columns of all tables, those with the same head as one. */
function mergedColumns(tables: readonly Table[]): readonly Column[] {
  const byHead = new Map<string, Column>();
  for (const column of tables.flatMap(({ columns }) => columns))
    if (!byHead.has(column.head)) byHead.set(column.head, column);
  return [...byHead.values()];
}

function recordsOf(table: Table, all: readonly Column[], sign: DecimalSign) {
  const { title, columns, rows, totals } = table;
  const places = all.map(({ head }) => columns.findIndex((column) => column.head === head));
  return (totals ? [...rows, totals] : rows).map((row, index) => [
    defused(title),
    ...places.map((at) => (at < 0 ? '' : cellText(row[at], columnAt(table, index, at), sign)))
  ]);
}

export interface CsvWish {
  /** With a byte order mark. */
  readonly forSpreadsheet?: boolean;
}

/**
 * Several tables are one: the first field says which one a record belongs to, and a column that a table does not have stays
 * empty there. Notes are left out. Rejects with the signal's reason for a job that was ended.
 */
export async function csvOf(
  tables: readonly Table[],
  { forSpreadsheet = false }: CsvWish,
  job: Job
): Promise<string> {
  const sign = decimalSign();
  const options = { delimiter: sign === ',' ? ';' : ',', newline: '\r\n' } as const;
  const columns = mergedColumns(tables);
  const records = [
    [t('tables.table'), ...columns.map(({ head }) => defused(head))],
    ...tables.flatMap((table) => recordsOf(table, columns, sign))
  ];
  const parts: string[] = [forSpreadsheet ? BYTE_ORDER_MARK : ''];
  for (let from = 0; from < records.length; from += AT_ONCE) {
    await breathe(job, from / records.length);
    parts.push(Papa.unparse(records.slice(from, from + AT_ONCE), options), '\r\n');
  }
  job.onShare(1);
  return parts.join('');
}
