/** Where a lane's traffic stops: at the last stop line that is drawn across it, or at the lane's end. */
import { distance } from './geometry/points';
import { segmentIntersection } from './geometry/segments';
import { directionAt, nearestOn, pointAt, stationed } from './geometry/stations';
import type { Lane, Point, Site } from './schema';

export interface StopLine {
  /** Metres along the lane's centreline from its start. */
  readonly along: number;
  /** The mark; null where the lane's end stands for it. */
  readonly mark: string | null;
}

/** Metres. */
export const laneLength = ({ centreline }: Lane): number => stationed(centreline)?.length ?? 0;

export const stopLineOf = ({ marks }: Pick<Site, 'marks'>, lane: Lane): StopLine => {
  const line = stationed(lane.centreline);
  if (!line) return { along: 0, mark: null };
  let last: StopLine | null = null;
  for (const { id, kind, points } of marks) {
    if (kind !== 'stop-line') continue;
    for (let k = 0; k + 1 < points.length; k++)
      for (let n = 0; n + 1 < line.points.length; n++) {
        const piece = { from: line.points[n]!, to: line.points[n + 1]! };
        const at = segmentIntersection(piece, { from: points[k]!, to: points[k + 1]! });
        if (!at) continue;
        const along = line.stations[n]! + distance(piece.from, at);
        if (!last || along > last.along) last = { along, mark: id };
      }
  }
  return last ?? { along: line.length, mark: null };
};

/** A place on the centreline and the unit direction of travel there; before the start and beyond the end it goes on straight. */
export const placeOnLane = (lane: Lane, along: number): { readonly at: Point; readonly ahead: Point } => {
  const line = stationed(lane.centreline);
  return line
    ? { at: pointAt(line, along), ahead: directionAt(line, along) }
    : { at: lane.centreline[0]!, ahead: [0, 1] };
};

/** Where a point lies along the lane, on the piece nearest to it, and how far from the centreline. */
export const stationOnLane = (
  lane: Lane,
  point: Point
): { readonly along: number; readonly apart: number } => {
  const line = stationed(lane.centreline);
  if (!line) return { along: 0, apart: distance(point, lane.centreline[0]!) };
  const { along, apart } = nearestOn(line, point, false);
  return { along, apart };
};
