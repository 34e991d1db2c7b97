/**
 * What runs on past the ends of cuts and reaches into a slot of another loop: there the blade meets wires that lie already, or
 * takes the floor from under those that are still to come.
 */
import { segmentDistance, type Segment } from '#plan/geometry/segments';
import type { Point } from '#plan/schema';
import type { SawnPiece } from './cuts';
import type { Wound } from './strokes';

interface Reach extends Segment {
  readonly piece: SawnPiece;
}

/** Beyond the end of the cut, up to where the blade leaves the road. */
function reachesOf(piece: SawnPiece): readonly Reach[] {
  const { from, to, length, overcut } = piece;
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const along = ([x, y]: Point, by: number): Point => [x + by * ux, y + by * uy];
  return [
    ...(overcut.from > 0 ? [{ piece, from, to: along(from, -overcut.from) }] : []),
    ...(overcut.to > 0 ? [{ piece, from: to, to: along(to, overcut.to) }] : [])
  ];
}

/** The part of it that lies further from the end than the other slot is wide: what only ends there cuts into nothing. */
function beyondSlot({ from, to }: Segment, apart: number): Segment | null {
  const run = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (run <= 2 * apart) return null;
  const share = (2 * apart) / run;
  return { from: [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])], to };
}

function meets(reach: Reach, other: SawnPiece): boolean {
  const apart = (reach.piece.width + other.width) / 2;
  const beyond = beyondSlot(reach, apart);
  if (!beyond) return false;
  if (!other.circle) return segmentDistance(beyond, other) < apart;
  const { centre, radius } = other.circle;
  const away = ([x, y]: Point): number => Math.hypot(x - centre[0], y - centre[1]);
  const nearest = segmentDistance(beyond, { from: centre, to: centre });
  return nearest < radius + apart && Math.max(away(beyond.from), away(beyond.to)) > radius - apart;
}

interface Box {
  readonly low: Point;
  readonly high: Point;
}

const boxOf = ({ circle, from, to }: Pick<SawnPiece, 'circle' | 'from' | 'to'>): Box => {
  if (!circle)
    return {
      low: [Math.min(from[0], to[0]), Math.min(from[1], to[1])],
      high: [Math.max(from[0], to[0]), Math.max(from[1], to[1])]
    };
  const { centre, radius } = circle;
  return { low: [centre[0] - radius, centre[1] - radius], high: [centre[0] + radius, centre[1] + radius] };
};

interface Placed extends Box {
  readonly piece: SawnPiece;
}

/** Along which axis the site is longer. */
function longerAxis(placed: readonly Placed[]): 0 | 1 {
  const size = (axis: 0 | 1): number =>
    placed.reduce((most, { high }) => Math.max(most, high[axis]), -Infinity) -
    placed.reduce((least, { low }) => Math.min(least, low[axis]), Infinity);
  return size(0) >= size(1) ? 0 : 1;
}

/** The first of what is sorted that begins at the place or beyond. */
function firstFrom(sorted: readonly Placed[], axis: 0 | 1, place: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]!.low[axis] < place) low = middle + 1;
    else high = middle;
  }
  return low;
}

const haveWireInCommon = (one: SawnPiece, other: SawnPiece): boolean =>
  one.owner === other.owner ||
  one.others.includes(other.owner) ||
  other.others.includes(one.owner) ||
  one.others.some((each) => other.others.includes(each));

export interface Overreach {
  readonly ends: number;
  /** Into whose slots, in the order of the drawing. */
  readonly into: readonly Wound[];
}

/** Looked for along the site's longer side, since a site may have thousands of cuts. */
export function overreachOf(pieces: readonly SawnPiece[]): Overreach {
  const reaches = pieces.flatMap(reachesOf);
  if (reaches.length === 0) return { ends: 0, into: [] };
  const placed = pieces.map((piece): Placed => ({ piece, ...boxOf(piece) }));
  const axis = longerAxis(placed);
  const across = axis === 0 ? 1 : 0;
  const sorted = placed.sort((a, b) => a.low[axis] - b.low[axis]);
  const longest = sorted.reduce((most, { low, high }) => Math.max(most, high[axis] - low[axis]), 0);
  const widest = pieces.reduce((most, { width }) => Math.max(most, width), 0);
  const into = new Set<Wound>();
  let ends = 0;
  for (const reach of reaches) {
    const { low, high } = boxOf({ from: reach.from, to: reach.to, circle: null });
    let isOver = false;
    for (let k = firstFrom(sorted, axis, low[axis] - widest - longest); k < sorted.length; k++) {
      const other = sorted[k]!;
      if (other.low[axis] > high[axis] + widest) break;
      if (other.high[axis] < low[axis] - widest) continue;
      if (other.high[across] < low[across] - widest || other.low[across] > high[across] + widest) continue;
      if (haveWireInCommon(reach.piece, other.piece) || !meets(reach, other.piece)) continue;
      isOver = true;
      into.add(other.piece.owner);
      for (const each of other.piece.others) into.add(each);
    }
    if (isOver) ends++;
  }
  return { ends, into: [...into].sort((a, b) => a.index - b.index) };
}
