/** How wide the columns of a table are. Millimetres. */
import { columnAt, type Cell, type Column, type Table } from '../../tables/table';
import { fixed, plain } from '#units/digits';
import { clean } from '../text/clean';
import { widthOf } from '#scenes/paper-type';
import { widestWord } from '../text/wrap';
import { TYPE } from './look';

/** Free at each side of a cell. */
export const PADDING = 0.9;
/** A text is wrapped rather than making its column wider than this. */
const WIDEST = 60;
/** Nothing is squeezed narrower than this, padding included. */
const LEAST = 6;
/** How much wider than it needs a table may be drawn to fill its column. */
const STRETCH = 1.5;

/** Characters: a longer text is wider than any column. */
const MEASURED = 200;

const NONE = '–';
const HEAD = { size: TYPE.small, bold: true } as const;
const BODY = { size: TYPE.text, bold: true } as const;

export function cellText(cell: Cell | undefined, { digits }: Column): string {
  if (cell === null || cell === undefined) return NONE;
  if (typeof cell === 'string') return clean(cell);
  if (!Number.isFinite(cell)) return NONE;
  return digits === undefined ? plain(cell) : fixed(cell, digits);
}

/** A table as it is written: every cell a text. */
export interface WrittenTable {
  readonly columns: readonly Column[];
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Empty where a column has no sum; null for a table without sums. */
  readonly totals: readonly string[] | null;
}

export function writtenTable(table: Table): WrittenTable {
  const { columns, rows, totals } = table;
  return {
    columns,
    heads: columns.map(({ head }) => clean(head)),
    rows: rows.map((row, index) => columns.map((_, at) => cellText(row[at], columnAt(table, index, at)))),
    totals: totals
      ? columns.map((column, at) => (totals[at] === null ? '' : cellText(totals[at], column)))
      : null
  };
}

interface Need {
  /** With every cell on one line. */
  readonly natural: number;
  /** With every text broken between words. */
  readonly least: number;
}

function needOf({ columns, heads, rows, totals }: WrittenTable, at: number): Need {
  const isNumber = columns[at]!.kind === 'number';
  let whole = 0;
  let word = widestWord(heads[at]!, HEAD);
  for (const row of totals ? [...rows, totals] : rows) {
    const text = row[at]!;
    const width = widthOf(text.slice(0, MEASURED), BODY);
    whole = Math.max(whole, width);
    word = Math.max(word, isNumber || !text.includes(' ') ? width : widestWord(text, BODY));
  }
  const least = Math.min(WIDEST, Math.max(LEAST, word + 2 * PADDING));
  return { natural: Math.max(least, Math.min(WIDEST, whole + 2 * PADDING)), least };
}

/** As many as the table has columns; together at most `width`. */
export function columnWidths(table: WrittenTable, width: number): readonly number[] {
  const needs = table.columns.map((_, at) => needOf(table, at));
  const sum = (of: (need: Need) => number) => needs.reduce((total, need) => total + of(need), 0);
  const natural = sum((need) => need.natural);
  const least = sum((need) => need.least);
  if (natural <= width) {
    const factor = Math.min(STRETCH, width / natural);
    return needs.map((need) => need.natural * factor);
  }
  if (least <= width) {
    // what is left over goes to those that would like more, in proportion
    const share = (width - least) / (natural - least);
    return needs.map((need) => need.least + share * (need.natural - need.least));
  }
  return squeezed(table, needs, width);
}

/** Words that are too long are parted, numbers never: half of one is another one. */
function squeezed({ columns }: WrittenTable, needs: readonly Need[], width: number): readonly number[] {
  const isText = (at: number): boolean => columns[at]!.kind === 'text';
  const texts = needs.filter((_, at) => isText(at)).map(({ least }) => least);
  const numbers = needs.reduce((sum, { least }, at) => (isText(at) ? sum : sum + least), 0);
  const room = width - numbers;
  if (room < texts.length * LEAST) {
    const all = needs.reduce((sum, { least }) => sum + least, 0);
    return needs.map((need) => (need.least * width) / all);
  }
  // the widest give way first, down to a width that they have in common
  const sorted = texts.toSorted((a, b) => a - b);
  let left = room;
  const most = sorted.reduce((cap, least, at) => {
    const share = left / (sorted.length - at);
    left -= Math.min(least, share);
    return least <= share ? Infinity : Math.min(cap, share);
  }, Infinity);
  return needs.map(({ least }, at) => (isText(at) ? Math.min(least, most) : least));
}
