/** A line through points, its places told by metres from its start. */
import type { Point } from '../schema';
import { distance, scale, subtract } from './points';

export interface Stationed {
  /** No two of them in one place. */
  readonly points: readonly Point[];
  /** Of each point, metres from the start. */
  readonly stations: readonly number[];
  readonly length: number;
}

/** Null for a line without length. */
export const stationed = (drawn: readonly Point[]): Stationed | null => {
  const points = drawn.filter((point, k) => k === 0 || distance(point, drawn[k - 1]!) > 1e-9);
  const stations = [0];
  for (let k = 1; k < points.length; k++)
    stations.push(stations[k - 1]! + distance(points[k - 1]!, points[k]!));
  const length = stations[stations.length - 1]!;
  return length > 0 ? { points, stations, length } : null;
};

/** Segment in which a place lies; before the start and beyond the end the outer segments go on. */
const segmentAt = ({ stations }: Stationed, along: number): number => {
  let low = 0;
  let high = stations.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (stations[middle]! <= along) low = middle;
    else high = middle - 1;
  }
  return low;
};

export const pointAt = (line: Stationed, along: number): Point => {
  const k = segmentAt(line, along);
  const [from, to] = [line.points[k]!, line.points[k + 1]!];
  const share = (along - line.stations[k]!) / (line.stations[k + 1]! - line.stations[k]!);
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
};

/** Unit vector ahead. */
export const directionAt = (line: Stationed, along: number): Point => {
  const k = segmentAt(line, along);
  return scale(
    subtract(line.points[k + 1]!, line.points[k]!),
    1 / (line.stations[k + 1]! - line.stations[k]!)
  );
};

/**
 * The place of the line nearest to a point; how far to the right of the line's direction there the point lies, and how far
 * from the place. `isEndless`: the outer segments go on.
 */
export const nearestOn = (
  line: Stationed,
  point: Point,
  isEndless: boolean
): { readonly along: number; readonly offset: number; readonly apart: number } => {
  let best = { along: 0, offset: 0, apart: Infinity };
  const last = line.points.length - 2;
  for (let k = 0; k <= last; k++) {
    const [from, to] = [line.points[k]!, line.points[k + 1]!];
    const length = line.stations[k + 1]! - line.stations[k]!;
    const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const [px, py] = [point[0] - from[0], point[1] - from[1]];
    const least = isEndless && k === 0 ? -Infinity : 0;
    const most = isEndless && k === last ? Infinity : length;
    const along = Math.min(most, Math.max(least, px * ux + py * uy));
    const apart = Math.hypot(px - along * ux, py - along * uy);
    if (apart < best.apart) best = { along: line.stations[k]! + along, offset: px * uy - py * ux, apart };
  }
  return best;
};
