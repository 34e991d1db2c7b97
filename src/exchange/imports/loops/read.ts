/** Loops from a table: every row for itself, so that sound ones can come in while the others are listed. */
import { COUNTS } from '#plan/bounds';
import { addLoop } from '#plan/edits/index';
import type { Loop, Site } from '#plan/schema';
import { t } from '#i18n/message';
import type { ColumnName } from './columns';
import { loopFrom, type CellError, type Cells, type RowReading } from './row';
import { tableFrom, type RawTable, type Row } from './table';

/** Bytes; five hundred loops are a hundredth of it. */
export const MOST_BYTES = 5_000_000;
/** Rows that are looked at; a site holds fewer loops. */
const MOST_ROWS = 5_000;

export interface ReadRow {
  /** Of the file, counted from 1. */
  readonly line: number;
  /** Null for a row that cannot come in. */
  readonly loop: Loop | null;
  readonly errors: readonly CellError[];
  /** The id that the file has, where the loop had to get another. */
  readonly takenId: string | null;
}

export interface ReadLoops {
  readonly rows: readonly ReadRow[];
  /** Heads of columns that mean nothing here. */
  readonly unknown: readonly string[];
  /** Rows beyond those that are looked at. */
  readonly beyond: number;
}

type LoopsRefusal = 'noHeads' | 'noRows' | 'twice' | 'tooLarge';
export type LoopsReading =
  | { readonly ok: true; readonly read: ReadLoops }
  | { readonly ok: false; readonly why: LoopsRefusal; readonly detail: string };

function cellsOf({ heads, sign }: RawTable, { line, cells }: Row): Cells {
  const columns = heads.flatMap((column, index) =>
    column.name === null ? [] : [[column.name, { column, text: cells[index] ?? '' }] as const]
  );
  return { line, sign, columns: new Map(columns) };
}

/**
 * What keeps a row from being told apart into cells, if anything does: a quotation mark that runs on into the rows beneath,
 * or more cells than there are heads, as where decimal commas stand between commas. Its numbers would be somebody else's.
 */
function broken({ heads }: RawTable, { line, cells, isQuoteOpen }: Row): CellError | null {
  const filled = cells.findLastIndex((cell) => cell.trim() !== '') + 1;
  if (isQuoteOpen) {
    const at = cells.findIndex((cell) => /[\r\n]/.test(cell));
    const column = (heads[at] ?? heads[0]!).head;
    return { line, column, found: '"', expected: t('imports.closedQuote') };
  }
  if (filled <= heads.length) return null;
  const last = heads.at(-1)!.head;
  return { line, column: last, found: cells.slice(heads.length - 1, filled).join(' '), expected: t('imports.lastCell', { count: heads.length }) }; // prettier-ignore
}

/** The first of `base`, `base-2`, `base-3` … that nobody has. */
function freeName(taken: ReadonlySet<string>, base: string): string {
  for (let number = 2; ; number++) {
    const name = `${base.slice(0, 72)}-${number}`;
    if (!taken.has(name)) return name;
  }
}

/** The first of L6, L7, L8 … that is free, from the given one on. */
function nextId(first: string, isFree: (id: string) => boolean): string {
  const [, letters = first, digits = '1'] = /^(.*?)(\d+)$/.exec(first) ?? [];
  for (let number = Number(digits); ; number++) {
    const id = `${letters}${number}`;
    if (isFree(id)) return id;
  }
}

type Named = Pick<ReadRow, 'takenId'> & { readonly loop: Loop };

/** `given`: ids that the file has in any of its rows. */
function freed(
  { loop, isUnnumbered }: { readonly loop: Loop; readonly isUnnumbered: boolean },
  taken: ReadonlySet<string>,
  given: ReadonlySet<string>
): Named {
  if (isUnnumbered) {
    const id = nextId(loop.id, (each) => !taken.has(each) && !given.has(each));
    return { loop: { ...loop, id }, takenId: null };
  }
  if (!taken.has(loop.id)) return { loop, takenId: null };
  return { loop: { ...loop, id: freeName(taken, loop.id) }, takenId: loop.id };
}

const doubled = ({ heads }: RawTable): string | null => {
  const names = heads.flatMap(({ name }): ColumnName[] => (name === null ? [] : [name]));
  const at = heads.findIndex(({ name }) => name !== null && names.indexOf(name) !== names.lastIndexOf(name));
  return at < 0 ? null : heads[at]!.head;
};

/** What the rows of a text would be in this site, numbers without a unit in those that the site shows. */
export function readLoops(text: string, site: Site): LoopsReading {
  if (text.length > MOST_BYTES) return { ok: false, why: 'tooLarge', detail: '' };
  const table = tableFrom(text);
  if (!table) return { ok: false, why: 'noHeads', detail: '' };
  const twice = doubled(table);
  if (twice !== null) return { ok: false, why: 'twice', detail: twice };
  if (table.rows.length === 0) return { ok: false, why: 'noRows', detail: '' };
  const readings = table.rows.slice(0, MOST_ROWS).map((row): RowReading => {
    const fault = broken(table, row);
    return fault ? { loop: null, isUnnumbered: false, errors: [fault] } : loopFrom(cellsOf(table, row), site);
  });
  const taken = new Set(site.loops.map(({ id }) => id));
  const given = new Set(readings.flatMap(({ loop, isUnnumbered }) => (loop && !isUnnumbered ? loop.id : [])));
  let room = COUNTS.loops - site.loops.length;
  const rows = readings.map(({ loop, isUnnumbered, errors }, at): ReadRow => {
    const { line } = table.rows[at]!;
    if (!loop) return { line, loop, errors, takenId: null };
    if (room <= 0) {
      const column = table.heads[0]!.head;
      const full = { line, column, found: loop.id, expected: t('imports.full', { most: COUNTS.loops }) };
      return { line, loop: null, errors: [full], takenId: null };
    }
    const named = freed({ loop, isUnnumbered }, taken, given);
    taken.add(named.loop.id);
    room--;
    return { line, errors: [], ...named };
  });
  const unknown = table.heads.flatMap(({ name, head }) => (name === null && head !== '' ? [head] : []));
  return { ok: true, read: { rows, unknown, beyond: Math.max(0, table.rows.length - MOST_ROWS) } };
}

export const loopsOf = ({ rows }: ReadLoops): readonly Loop[] => rows.flatMap(({ loop }) => loop ?? []);

/** The site with all of them. */
export const withLoops = (site: Site, loops: readonly Loop[]): Site => loops.reduce(addLoop, site);
