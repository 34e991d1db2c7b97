/** Notes on paper step aside from loops: nobody can move the view, and both have to be read. Pixels, as on a screen. */
import type { Box } from '#editor/geometry/box';
import type { Point } from '#plan/schema';
import { line, type Drawing, type TextDrawing } from './drawing';
import type { Theme } from './theme';

/** Between a note and a loop. */
const GAP = 8;

/** A note's lines, and what they cover. */
export interface Note {
  readonly lines: readonly TextDrawing[];
  readonly box: Box;
}

const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
const holds = (outer: Box, inner: Box): boolean =>
  outer.left <= inner.left &&
  outer.right >= inner.right &&
  outer.bottom <= inner.bottom &&
  outer.top >= inner.top;
/** Within a large loop a note is read as well as beside it. */
const covers = (note: Box, loop: Box): boolean => meets(note, loop) && !holds(loop, note);
const moved = ({ left, right, bottom, top }: Box, [x, y]: Point): Box => ({
  left: left + x,
  right: right + x,
  bottom: bottom + y,
  top: top + y
});

/** Ways to either side of every loop, the shortest first. */
const waysOut = (box: Box, loops: readonly Box[]): readonly Point[] =>
  loops
    .flatMap((loop): Point[] => [
      [loop.right + GAP - box.left, 0],
      [loop.left - GAP - box.right, 0],
      [0, loop.top + GAP - box.bottom],
      [0, loop.bottom - GAP - box.top]
    ])
    .sort((a, b) => Math.hypot(...a) - Math.hypot(...b));

/** Where the line from the place of the note ends. */
const nearest = ({ left, right, bottom, top }: Box, [x, y]: Point): Point => [
  Math.min(right, Math.max(left, x)),
  Math.min(top, Math.max(bottom, y))
];

/** Each with a line to its place where it had to leave it; one that finds no room on the sheet stays. */
export function notesAside(
  notes: readonly Note[],
  loops: readonly Box[],
  sheet: Box,
  theme: Theme
): readonly Drawing[] {
  const placed: Box[] = [];
  return notes.flatMap(({ lines, box }): readonly Drawing[] => {
    const isFree = (at: Box): boolean =>
      holds(sheet, at) &&
      ![...loops.filter((loop) => covers(at, loop)), ...placed].some((it) => meets(at, it));
    const isInWay = loops.some((loop) => covers(box, loop));
    const way = isInWay ? waysOut(box, loops).find((each) => isFree(moved(box, each))) : undefined;
    if (!way) {
      placed.push(box);
      return lines;
    }
    const there = moved(box, way);
    placed.push(there);
    const from = lines[0]!.at;
    return [
      line([from, nearest(there, from)], { colour: theme.inkSoft, width: 0.6 }),
      ...lines.map((each) => ({ ...each, at: [each.at[0] + way[0], each.at[1] + way[1]] as const }))
    ];
  });
}
