/** A table as pieces: title, head, a piece a row, sums, notes. */
import type { Point } from '#plan/schema';
import { line, type Drawing } from '#scenes/drawing';
import type { Column, Table } from '../../tables/table';
import { clean } from '../text/clean';
import { space, type Block, type Piece } from './block';
import { heading, headingAgain } from './heading';
import { HAIR, INK, LINE, SOFT, TYPE } from './look';
import { columnWidths, PADDING, writtenTable, type WrittenTable } from './table-columns';
import { paragraph, type Hand } from './writing';

/** Lines of a cell: what is longer is cut off with an ellipsis. */
const MOST_LINES = 8;
const ABOVE = 0.7;
const THIN = { colour: HAIR, width: LINE.hair };

interface Row {
  readonly texts: readonly string[];
  readonly hand: Hand;
  readonly bottom?: { readonly colour: string; readonly width: number };
  readonly staysWithNext?: boolean;
  /** At least so high. */
  readonly least?: number;
  /** Lines between the cells as well. */
  readonly isBoxed?: boolean;
}

function rowPiece(
  { texts, hand, bottom, staysWithNext, least = 0, isBoxed = false }: Row,
  columns: readonly Column[],
  widths: readonly number[]
): Piece {
  const cells = texts.map((text, at) => {
    const isNumber = columns[at]?.kind === 'number';
    const align = isNumber ? 'right' : 'left';
    return { isNumber, lines: paragraph(text, widths[at]! - 2 * PADDING, { ...hand, align }, MOST_LINES) };
  });
  const height = Math.max(least, Math.max(...cells.map(({ lines }) => lines.height)) + 2 * ABOVE);
  const width = widths.reduce((sum, each) => sum + each, 0);
  const ends = widths.map((_, at) => widths.slice(0, at + 1).reduce((sum, each) => sum + each, 0));
  return {
    height,
    ...(staysWithNext ? { staysWithNext } : {}),
    draw: (left, top) => {
      let x = left;
      const drawings: Drawing[] = cells.flatMap(({ isNumber, lines }, at) => {
        const start: Point = [isNumber ? x + widths[at]! - PADDING : x + PADDING, top + ABOVE];
        x += widths[at]!;
        return lines.draw(start);
      });
      const end = top + height;
      const edges = isBoxed ? ends.map((at) => line([[left + at, top], [left + at, end]], THIN)) : []; // prettier-ignore
      return [
        ...drawings,
        ...edges,
        ...(bottom ? [line([[left, end], [left + width, end]], bottom)] : []) // prettier-ignore
      ];
    }
  };
}

/** Short tables are not broken at all. */
const isShort = ({ rows }: WrittenTable): boolean => rows.length <= 6;

function notePieces(notes: readonly string[], width: number): Piece[] {
  const pieces = notes.map((note, at): Piece => {
    const lines = paragraph(clean(note), width, { size: TYPE.small, colour: SOFT });
    return {
      height: lines.height + 0.6,
      staysWithNext: at < notes.length - 1,
      draw: (left, top) => lines.draw([left, top + 0.6])
    };
  });
  return pieces.length === 0 ? [] : [{ ...space(0.8), staysWithNext: true }, ...pieces];
}

/** The first column as it needs, the others share the rest. */
function formWidths(table: WrittenTable, width: number): readonly number[] {
  const [first = 0] = columnWidths(
    {
      columns: table.columns.slice(0, 1),
      heads: table.heads.slice(0, 1),
      rows: table.rows.map((row) => row.slice(0, 1)),
      totals: null
    },
    width / 4
  );
  const others = table.columns.length - 1;
  return table.columns.map((_, at) => (at === 0 ? first : (width - first) / others));
}

/** To be filled in by hand. */
const FORM = { least: 8, isBoxed: true } as const;

/** `isForm`: its cells are boxes to write in, over the whole width. */
export const tableBlock =
  (table: Table, isForm = false): Block =>
  (width) => {
    const written = writtenTable(table);
    const { columns, heads, totals } = written;
    const widths = isForm ? formWidths(written, width) : columnWidths(written, width);
    const piece = (row: Row): Piece => rowPiece(row, columns, widths);
    const strong = { colour: INK, width: LINE.normal };
    const head = piece({
      texts: heads,
      hand: { size: TYPE.small, bold: true },
      bottom: strong,
      staysWithNext: true
    });
    const notes = notePieces(table.notes ?? [], width);
    const isFollowed = totals !== null || notes.length > 0;
    const last = written.rows.length - 1;
    const rows = written.rows.map((texts, at) => {
      const isBeforeTotals = totals !== null && at === last;
      return piece({
        texts,
        hand: { size: TYPE.text },
        ...(isForm ? FORM : {}),
        bottom: isBeforeTotals ? strong : { colour: HAIR, width: LINE.hair },
        // sums and notes never stand alone, and a row neither at the foot of a column nor at the head of the next
        staysWithNext: at === last ? isFollowed : isShort(written) || at === 0 || at === last - 1
      });
    });
    return {
      pieces: [
        heading(table.title, width),
        head,
        ...rows,
        ...(totals
          ? [
              piece({
                texts: totals,
                hand: { size: TYPE.text, bold: true },
                staysWithNext: notes.length > 0
              })
            ]
          : []),
        ...notes
      ],
      again: [headingAgain(table.title, width), head]
    };
  };
