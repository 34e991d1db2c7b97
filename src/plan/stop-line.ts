/** Where a lane's traffic stops: at the last stop line that is drawn across it, or at the lane's end. */
import { add, distance, dot, scale, subtract } from './geometry/points';
import { segmentIntersection } from './geometry/segments';
import type { Lane, Point, Site } from './schema';

export interface StopLine {
  /** Metres along the lane's centreline from its start. */
  readonly along: number;
  /** The mark; null where the lane's end stands for it. */
  readonly mark: string | null;
}

interface Piece {
  readonly from: Point;
  readonly to: Point;
  /** Station of its start. */
  readonly begin: number;
  readonly length: number;
}

const piecesOf = ({ centreline }: Lane): readonly Piece[] => {
  const pieces: Piece[] = [];
  let begin = 0;
  for (let k = 0; k + 1 < centreline.length; k++) {
    const [from, to] = [centreline[k]!, centreline[k + 1]!];
    const length = distance(from, to);
    if (length > 0) pieces.push({ from, to, begin, length });
    begin += length;
  }
  return pieces;
};

export const laneLength = (lane: Lane): number => piecesOf(lane).reduce((sum, { length }) => sum + length, 0);

export const stopLineOf = ({ marks }: Pick<Site, 'marks'>, lane: Lane): StopLine => {
  const pieces = piecesOf(lane);
  let last: StopLine | null = null;
  for (const { id, kind, points } of marks) {
    if (kind !== 'stop-line') continue;
    for (let k = 0; k + 1 < points.length; k++)
      for (const piece of pieces) {
        const at = segmentIntersection(piece, { from: points[k]!, to: points[k + 1]! });
        if (!at) continue;
        const along = piece.begin + distance(piece.from, at);
        if (!last || along > last.along) last = { along, mark: id };
      }
  }
  return last ?? { along: laneLength(lane), mark: null };
};

/** A place on the centreline and the unit direction of travel there; before the start and beyond the end it goes on straight. */
export const placeOnLane = (lane: Lane, along: number): { readonly at: Point; readonly ahead: Point } => {
  const pieces = piecesOf(lane);
  const piece = pieces.findLast(({ begin }) => begin <= along) ?? pieces[0];
  if (!piece) return { at: lane.centreline[0]!, ahead: [0, 1] };
  const ahead = scale(subtract(piece.to, piece.from), 1 / piece.length);
  return { at: add(piece.from, scale(ahead, along - piece.begin)), ahead };
};

/** Where a point lies along the lane, on the piece nearest to it, and how far from the centreline. */
export const stationOnLane = (
  lane: Lane,
  point: Point
): { readonly along: number; readonly apart: number } => {
  let best = { along: 0, apart: Infinity };
  for (const { from, to, begin, length } of piecesOf(lane)) {
    const ahead = scale(subtract(to, from), 1 / length);
    const along = Math.min(length, Math.max(0, dot(subtract(point, from), ahead)));
    const apart = distance(point, add(from, scale(ahead, along)));
    if (apart < best.apart) best = { along: begin + along, apart };
  }
  return best;
};
