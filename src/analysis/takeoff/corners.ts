/**
 * Where a slot needs its full depth right to the end: corners of loops, bends of home runs, where a slot meets another at
 * an angle. The cut runs on there, or a hole is cored.
 *
 * A bend so slight that what runs on stays in the slot that goes on wants nothing: it is nearer to it than half the widths
 * together at its end, and no deeper.
 */
import type { Point } from '#plan/schema';
import { overcutLength } from './overcut';
import type { Piece } from './pieces';

export interface End {
  readonly piece: Piece;
  readonly isTo: boolean;
  readonly at: Point;
}

/** Ends nearer to each other than this, metres, are one corner: half of the narrowest usual slot of 6 mm. Common practice. */
const ONE_CORNER = 0.003;

/** Metres, and more cells than a document's coordinates span, so that a number tells a cell. */
const CELL = 0.05;
const CELLS = 4_000_000;

/** Corners in one place are one: looked for in cells of the plan, since a site may have thousands. */
function cornersOf(ends: readonly End[]): readonly (readonly End[])[] {
  const corners: End[][] = [];
  const cells = new Map<number, End[][]>();
  const keyOf = (x: number, y: number): number => x * CELLS + y;
  for (const end of ends) {
    const [cx, cy] = [Math.floor(end.at[0] / CELL), Math.floor(end.at[1] / CELL)];
    let found: End[] | undefined;
    for (let x = cx - 1; x <= cx + 1 && !found; x++)
      for (let y = cy - 1; y <= cy + 1 && !found; y++)
        found = cells
          .get(keyOf(x, y))
          ?.find(([first]) => Math.hypot(first!.at[0] - end.at[0], first!.at[1] - end.at[1]) <= ONE_CORNER);
    if (found) found.push(end);
    else {
      const corner = [end];
      corners.push(corner);
      const key = keyOf(cx, cy);
      const cell = cells.get(key);
      if (cell) cell.push(corner);
      else cells.set(key, [corner]);
    }
  }
  return corners;
}

/** Unit direction in which the cut leaves the corner. */
const away = ({ piece: { from, to, length }, isTo }: End): Point => {
  const sense = isTo ? -1 / length : 1 / length;
  return [(to[0] - from[0]) * sense, (to[1] - from[1]) * sense];
};

const goesOnIn = (end: End, other: End, run: number): boolean => {
  if (other === end || other.piece.depth < end.piece.depth) return false;
  const [a, b] = [away(end), away(other)];
  const isAhead = a[0] * b[0] + a[1] * b[1] < 0;
  const aside = Math.abs(a[0] * b[1] - a[1] * b[0]) * run;
  return isAhead && aside <= (end.piece.width + other.piece.width) / 2;
};

/** Corners with the ends that would have to run on; those at which every cut goes on are none. */
export function deepCorners(pieces: readonly Piece[], bladeDiameter: number): readonly (readonly End[])[] {
  const ends = pieces.flatMap((piece): End[] => [
    ...(piece.isCornerFrom ? [{ piece, isTo: false, at: piece.from }] : []),
    ...(piece.isCornerTo ? [{ piece, isTo: true, at: piece.to }] : [])
  ]);
  return cornersOf(ends)
    .map((corner) =>
      corner.filter((end) => {
        const run = overcutLength(bladeDiameter, end.piece.depth) ?? bladeDiameter / 2;
        return !corner.some((other) => goesOnIn(end, other, run));
      })
    )
    .filter((corner) => corner.length > 0);
}
