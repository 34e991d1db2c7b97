/** Over what length ways lie side by side. */
import type { Point } from '../schema';
import { cross, distance, dot, scale, subtract } from './points';
import type { Segment } from './segments';

type Interval = readonly [from: number, to: number];

/** Ways at a wider angle than this, degrees, cross rather than keep each other company. */
const WIDEST = 15;

const legsOf = (way: readonly Point[]): readonly Segment[] =>
  way.slice(1).map((to, at) => ({ from: way[at]!, to }));

/** Where `low <= from + rise·x <= high`, within the interval; null where nowhere. */
function whereBetween(
  [start, end]: Interval,
  from: number,
  rise: number,
  low: number,
  high: number
): Interval | null {
  if (rise === 0) return from >= low && from <= high ? [start, end] : null;
  const [a, b] = [(low - from) / rise, (high - from) / rise];
  const [first, last] = [Math.max(start, Math.min(a, b)), Math.min(end, Math.max(a, b))];
  return first < last ? [first, last] : null;
}

/** The part of a leg, in shares of it, that lies square to some point of another leg and near to it. */
function besideLeg(leg: Segment, other: Segment, apart: number): Interval | null {
  const length = distance(leg.from, leg.to);
  const otherLength = distance(other.from, other.to);
  if (length === 0 || otherLength === 0) return null;
  const along = scale(subtract(other.to, other.from), 1 / otherLength);
  const run = subtract(leg.to, leg.from);
  if (Math.abs(cross(along, run)) > length * Math.sin((WIDEST * Math.PI) / 180)) return null;
  const start = subtract(leg.from, other.from);
  const square = whereBetween([0, 1], dot(along, start), dot(along, run), 0, otherLength);
  return square && whereBetween(square, cross(along, start), cross(along, run), -apart, apart);
}

/** Sorted, and those that touch made one. */
function united(intervals: readonly Interval[]): readonly Interval[] {
  const result: Interval[] = [];
  for (const [from, to] of intervals.toSorted(([a], [b]) => a - b)) {
    const last = result.at(-1);
    if (last && from <= last[1]) result[result.length - 1] = [last[0], Math.max(last[1], to)];
    else result.push([from, to]);
  }
  return result;
}

const inBoth = (some: readonly Interval[], others: readonly Interval[]): readonly Interval[] =>
  some.flatMap(([a, b]) =>
    others.flatMap(([c, d]): readonly Interval[] => {
      const [from, to] = [Math.max(a, c), Math.min(b, d)];
      return from < to ? [[from, to]] : [];
    })
  );

/** Of one way, the length over which every other keeps beside it. */
function lengthBeside(way: readonly Point[], others: readonly (readonly Point[])[], apart: number): number {
  return legsOf(way).reduce((sum, leg) => {
    const shares = others
      .map((other) =>
        united(
          legsOf(other)
            .map((each) => besideLeg(leg, each, apart))
            .filter((each) => each !== null)
        )
      )
      .reduce<readonly Interval[]>(inBoth, [[0, 1]]);
    return sum + distance(leg.from, leg.to) * shares.reduce((share, [from, to]) => share + to - from, 0);
  }, 0);
}

/**
 * Metres over which all the ways lie side by side: no further than `apart` metres from one another and in about the same
 * direction, whichever way they are drawn. The mean of what each of them has beside the others, which is the same for
 * ways that run parallel. 0 for fewer than two.
 */
export function lengthSideBySide(ways: readonly (readonly Point[])[], apart: number): number {
  if (ways.length < 2) return 0;
  const lengths = ways.map((way, at) =>
    lengthBeside(
      way,
      ways.filter((_, other) => other !== at),
      apart
    )
  );
  return lengths.reduce((sum, length) => sum + length, 0) / ways.length;
}
