/** A text of rows and columns, with the line of the file that each row stands on. */
import Papa from 'papaparse';
import { columnOf, KIND_OF, type Column, type Head } from './columns';
import { signOf } from './texts';
import type { DecimalSign } from '#i18n/locale';

export interface Row {
  /** Counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  /** A quotation mark in it is never closed, or closed in the middle of a cell: where its cells end is not known. */
  readonly isQuoteOpen: boolean;
}

export interface RawTable {
  readonly heads: readonly Head[];
  readonly rows: readonly Row[];
  readonly sign: DecimalSign | null;
}

const BYTE_ORDER_MARK = /^\uFEFF/;
const DELIMITERS = [';', '\t', ',', '|'];

const lineEnds = (text: string): number => text.match(/\r\n|\r|\n/g)?.length ?? 0;
const isBlank = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');

/** A first line by which spreadsheets tell each other the sign between cells. */
const SAID_SIGN = /^sep=(.)[^\S\r\n]*(\r\n|\r|\n)/i;

/** The sign by which the first line falls into most known columns. */
function delimiterOf(text: string): string {
  const [first = ''] = text.split(/\r\n|\r|\n/, 1);
  const known = (delimiter: string): number =>
    first.split(delimiter).filter((head) => columnOf(head.replaceAll('"', '')).name !== null).length;
  return DELIMITERS.reduce((best, next) => (known(next) > known(best) ? next : best));
}

/** Null for a text in whose first line no column has a name that is known. */
export function tableFrom(text: string): RawTable | null {
  const clean = text
    .replace(BYTE_ORDER_MARK, '')
    .replace(SAID_SIGN, '$2')
    .replace(/^(\s*(\r\n|\r|\n))+/, '');
  const skipped = lineEnds(text.slice(0, text.length - clean.length));
  const delimiter = delimiterOf(clean);
  const { data, errors } = Papa.parse<string[]>(clean, { delimiter, skipEmptyLines: false });
  const [first, ...rest] = data;
  const heads = (first ?? []).map(columnOf);
  if (!heads.some(({ name }) => name !== null)) return null;
  let line = skipped + 1 + 1 + (first ?? []).reduce((sum, cell) => sum + lineEnds(cell), 0);
  const open = new Set(errors.flatMap(({ type, row }) => (type === 'Quotes' ? (row ?? []) : [])));
  const rows = rest.map((cells, at): Row => {
    const row = { line, cells, isQuoteOpen: open.has(at + 1) };
    line += 1 + cells.reduce((sum, cell) => sum + lineEnds(cell), 0);
    return row;
  });
  const filled = rows.filter(({ cells }) => !isBlank(cells));
  const isNumber = (head: Head | undefined): head is Column =>
    !!head?.name && KIND_OF[head.name] !== undefined;
  const numbers = filled.flatMap(({ cells }) => cells.filter((_, index) => isNumber(heads[index])));
  return { heads, rows: filled, sign: signOf(delimiter, numbers) };
}
