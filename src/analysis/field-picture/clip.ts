/** The pieces of a line that lie in a box. */
import type { Point } from '#plan/schema';
import type { Box } from './trace';

/** The shares of a step at which it enters and leaves the box; null where it stays out (Liang and Barsky 1984). */
const within = ([u, v]: Point, [du, dv]: Point, box: Box): readonly [number, number] | null => {
  let [first, last] = [0, 1];
  const sides = [
    [-du, u - box.left],
    [du, box.right - u],
    [-dv, v - box.low],
    [dv, box.high - v]
  ] as const;
  for (const [outwards, room] of sides) {
    if (outwards === 0) {
      if (room < 0) return null;
      continue;
    }
    const share = room / outwards;
    if (outwards < 0) first = Math.max(first, share);
    else last = Math.min(last, share);
  }
  return first < last ? [first, last] : null;
};

export const clipLine = (line: readonly Point[], box: Box): Point[][] => {
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  const end = (): void => {
    if (piece.length > 1) pieces.push(piece);
    piece = [];
  };
  for (let k = 1; k < line.length; k++) {
    const from = line[k - 1]!;
    const to = line[k]!;
    const step: Point = [to[0] - from[0], to[1] - from[1]];
    const inside = within(from, step, box);
    if (!inside) {
      end();
      continue;
    }
    const [first, last] = inside;
    const at = (share: number): Point => [from[0] + share * step[0], from[1] + share * step[1]];
    if (first > 0 || piece.length === 0) {
      end();
      piece = [first > 0 ? at(first) : from];
    }
    piece.push(last < 1 ? at(last) : to);
    if (last < 1) end();
  }
  end();
  return pieces;
};
