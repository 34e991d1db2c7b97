/** Lays blocks into columns, one after the other; what does not fit goes on in the next column. */
import type { Drawing } from '#scenes/drawing';
import { BETWEEN, type Block, type Column, type Laid, type Piece } from './block';

export interface Placed {
  readonly page: number;
  readonly drawings: readonly Drawing[];
  /** Of a heading. */
  readonly title?: string;
}

/** Where the pen stands. */
interface Pen {
  column: Column;
  y: number;
}

const heightOf = (pieces: readonly Piece[]): number => pieces.reduce((sum, { height }) => sum + height, 0);

/** A piece with those after it that it must not be parted from. */
function groupAt(pieces: readonly Piece[], first: number): readonly Piece[] {
  let end = first;
  while (end < pieces.length - 1 && pieces[end]!.staysWithNext) end++;
  return pieces.slice(first, end + 1);
}

const fits = (pen: Pen, pieces: readonly Piece[]): boolean =>
  pen.y + heightOf(pieces) <= pen.column.top + pen.column.height + 1e-9;

/**
 * `columnAt`: the columns in the order in which they are filled, as many as it takes, all of one width. Pieces are at most as
 * high as `height`.
 */
export function flow(
  blocks: readonly Block[],
  columnAt: (index: number) => Column,
  height: number
): readonly Placed[] {
  const placed: Placed[] = [];
  let index = 0;
  const first = columnAt(0);
  const pen: Pen = { column: first, y: first.top };

  const nextColumn = () => {
    pen.column = columnAt(++index);
    pen.y = pen.column.top;
  };
  const put = (piece: Piece) => {
    const drawings = piece.draw(pen.column.left, pen.y);
    placed.push({
      page: pen.column.page,
      drawings,
      ...(piece.title === undefined ? {} : { title: piece.title })
    });
    pen.y += piece.height;
  };
  /** A column that is shorter than the group is passed over. */
  const makeRoom = (group: readonly Piece[], again: readonly Piece[]) => {
    while (!fits(pen, group)) {
      const wasFresh = pen.y === pen.column.top && pen.column.height >= height;
      if (wasFresh) return;
      nextColumn();
      if (fits(pen, [...again, ...group])) again.forEach(put);
    }
  };
  const lay = ({ pieces, again }: Laid) => {
    for (let at = 0; at < pieces.length;) {
      const whole = groupAt(pieces, at);
      // what no column can hold together is parted after all
      const group = heightOf([...again, ...whole]) <= height ? whole : [pieces[at]!];
      makeRoom(group, at === 0 ? [] : again);
      group.forEach(put);
      at += group.length;
    }
  };

  for (const block of blocks) {
    const laid = block(pen.column.width, height);
    if (laid.pieces.length === 0) continue;
    if (pen.y > pen.column.top) pen.y += BETWEEN;
    lay(laid);
  }
  return placed;
}
