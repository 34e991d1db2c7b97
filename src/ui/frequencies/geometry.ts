/** Where the chart's marks lie, pixels from the plot's upper left corner. */
import type { Beat, Sweep } from '#analysis/results';
import type { ChannelRow } from './rows';

/** Hz to pixels. */
export type Scale = (frequency: number) => number;

export const ROW_HEIGHT = 28;
/** What is thinner could not be seen. */
const LEAST = 3;

export const middleOfRow = (at: number): number => (at + 0.5) * ROW_HEIGHT;

export interface Band {
  readonly rest: number;
  /** Swept by temperature: from `left` to `warm`; by the vehicle on top of that: from `warm` to `right`. */
  readonly left: number;
  readonly warm: number;
  readonly right: number;
}

/** Both parts can always be seen; where they are too narrow to scale, they are wider. */
export function bandOf({ rest_Hz, cold_Hz, hot_Hz, low_Hz, high_Hz, deepest }: Sweep, x: Scale): Band {
  const rest = x(rest_Hz);
  const left = Math.min(x(low_Hz), rest - LEAST / 2);
  const warm = Math.max(x(Math.max(rest_Hz, cold_Hz, hot_Hz)), rest + LEAST / 2);
  const right = deepest < 0 ? Math.max(x(high_Hz), warm + LEAST) : warm;
  return { rest, left, warm, right };
}

export interface Join {
  readonly beat: Beat;
  /** Ends of the line on the two rows, the upper row first. */
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  /** Rows that it runs from and to. */
  readonly rows: readonly [upper: number, lower: number];
}

/** Where two intervals come nearest; half way into what they share. */
function nearestEnds(a: Sweep, b: Sweep): readonly [number, number] {
  if (a.high_Hz < b.low_Hz) return [a.high_Hz, b.low_Hz];
  if (b.high_Hz < a.low_Hz) return [a.low_Hz, b.high_Hz];
  const middle = (Math.max(a.low_Hz, b.low_Hz) + Math.min(a.high_Hz, b.high_Hz)) / 2;
  return [middle, middle];
}

/** A line for every pair between rows that are there, the worst first. */
export function joinsOf(rows: readonly ChannelRow[], beats: readonly Beat[], x: Scale): readonly Join[] {
  const places = new Map(rows.map(({ circuit }, at) => [circuit.id, at]));
  return [...beats]
    .sort((a, b) => b.ratio - a.ratio)
    .flatMap((beat): Join[] => {
      const [first, second] = [places.get(beat.a), places.get(beat.b)];
      if (first === undefined || second === undefined) return [];
      const [upper, lower] = first < second ? [first, second] : [second, first];
      const ends = nearestEnds(rows[upper]!.readout.sweep, rows[lower]!.readout.sweep);
      return [
        {
          beat,
          from: [x(ends[0]), middleOfRow(upper)],
          to: [x(ends[1]), middleOfRow(lower)],
          rows: [upper, lower]
        }
      ];
    });
}

export interface RatingPlace {
  readonly x: number;
  readonly y: number;
}

export const RATING_HEIGHT = 15;
/** Pixels between two ratings beside one another. */
const GAP = 4;

/**
 * Where the middle of each line's rating is written, `widths[i]` pixels wide: on the line, between two rows, so that it
 * hides no band, and clear of the ratings before it. Null where there is no such place; the earlier ones have the choice.
 */
export function placeRatings(
  joins: readonly Join[],
  widths: readonly number[],
  plotWidth: number
): readonly (RatingPlace | null)[] {
  const taken: { readonly left: number; readonly right: number; readonly y: number }[] = [];
  return joins.map(({ from, to, rows: [upper, lower] }, index) => {
    const half = widths[index]! / 2;
    for (const border of bordersFromMiddle(upper, lower)) {
      const y = border * ROW_HEIGHT;
      const share = (y - from[1]) / (to[1] - from[1]);
      const x = Math.min(plotWidth - half, Math.max(half, from[0] + share * (to[0] - from[0])));
      const isFree = taken.every(
        (other) => other.y !== y || x + half + GAP < other.left || x - half - GAP > other.right
      );
      if (!isFree) continue;
      taken.push({ left: x - half, right: x + half, y });
      return { x, y };
    }
    return null;
  });
}

/** The borders between the rows that a line crosses, those nearest to its middle first. */
function bordersFromMiddle(upper: number, lower: number): readonly number[] {
  const middle = (upper + lower + 1) / 2;
  return Array.from({ length: lower - upper }, (_, index) => upper + 1 + index).sort(
    (a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b
  );
}
