/** From a sweep to what a chart draws: ranges, lines with gaps, and what stands under a place. Pure. */
import type { FigureLimit, SweepPicture, SweepPoint, SweptFigure } from '#analysis/sweep/results';
import type { ScaleKind } from './axis';
import type { Spot } from './limit-names';

/** Room above and below what is drawn, as a share of it. */
const ROOM = 0.08;
/** A limit further away than the curves are high, times this, would press them flat: it is told in words. */
const REACH = 1.5;
/** Curves that come as near to nought as this share of their height begin there. */
const NEAR_NOUGHT = 0.35;
/** A result that changes by a smaller share of itself is drawn flat: its figures, to four digits, do not change. */
const FLAT = 2e-3;
/** Decades that a logarithmic axis shows at most. */
const DECADES = 5;

const numbersOf = ({ values, present }: SweptFigure): readonly number[] =>
  [...values.flat(), present].filter((value): value is number => value !== null && Number.isFinite(value));

/** Those that are drawn in, and those that lie too far away. */
export function limitsOf(swept: SweptFigure): {
  readonly near: readonly FigureLimit[];
  readonly far: readonly FigureLimit[];
} {
  const numbers = numbersOf(swept);
  const [low, high] = [Math.min(...numbers), Math.max(...numbers)];
  const span = Math.max(high - low, 0.1 * Math.abs(high));
  const isNear = ({ value }: FigureLimit) => value >= low - REACH * span && value <= high + REACH * span;
  return { near: swept.limits.filter(isNear), far: swept.limits.filter((limit) => !isNear(limit)) };
}

/** Whether a logarithmic scale can show it. */
export const isAllPositive = (swept: SweptFigure): boolean => {
  const numbers = numbersOf(swept);
  return numbers.length > 0 && numbers.every((value) => value > 0);
};

/** What the vertical axis covers; null where there is nothing to draw. */
export function rangeOf(swept: SweptFigure, scale: ScaleKind): readonly [number, number] | null {
  const numbers = numbersOf(swept);
  if (numbers.length === 0) return null;
  const all = [...numbers, ...limitsOf(swept).near.map(({ value }) => value)];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  if (scale === 'logarithmic' && low > 0) {
    const least = Math.max(low, high / 10 ** DECADES);
    const room = Math.max((high / least) ** ROOM, 1.02);
    return [least / room, high * room];
  }
  const least = FLAT * Math.max(Math.abs(low), Math.abs(high));
  if (high - low < least) {
    const middle = (low + high) / 2;
    return [middle - least, middle + least];
  }
  const span = high - low || 1;
  const isFromNought = low >= 0 && low < NEAR_NOUGHT * high;
  const bottom = isFromNought ? 0 : low - ROOM * span;
  return [bottom, high + ROOM * span];
}

/** Where x runs: a little beyond whole numbers, so that their dots do not stand on the axis. */
export function extentOf({ x }: SweepPicture, isWhole: boolean): readonly [number, number] {
  const [low, high] = [Math.min(...x.values), Math.max(...x.values)];
  const beyond = isWhole ? 0.4 : 0;
  return low < high || isWhole ? [low - beyond, high + beyond] : [low - 0.5, high + 0.5];
}

/** The points of a line, piece by piece: where there is no value it is broken. */
export function linePieces(
  xs: readonly number[],
  row: readonly (number | null)[],
  x: (value: number) => number,
  y: (value: number) => number
): readonly (readonly Spot[])[] {
  const pieces: Spot[][] = [];
  let isDown = false;
  row.forEach((value, k) => {
    if (value !== null) {
      if (!isDown) pieces.push([]);
      pieces.at(-1)!.push({ x: x(xs[k]!), y: y(value) });
    }
    isDown = value !== null;
  });
  return pieces;
}

/** Tenths of a pixel. */
export const linePath = (...line: Parameters<typeof linePieces>): string =>
  linePieces(...line)
    .flatMap((piece) =>
      piece.map((spot, k) => `${k === 0 ? 'M' : 'L'}${spot.x.toFixed(1)} ${spot.y.toFixed(1)}`)
    )
    .join('');

/** Which points are doubtful: by row and place. */
export function doubtsByRow(points: readonly SweepPoint[]) {
  const known = new Set(points.map(({ row, at }) => `${row} ${at}`));
  return { has: (row: number, at: number): boolean => known.has(`${row} ${at}`) };
}

/** Index of the value nearest to a place. */
export function nearestIndex(xs: readonly number[], place: number): number {
  let best = 0;
  xs.forEach((value, k) => {
    if (Math.abs(value - place) < Math.abs(xs[best]! - place)) best = k;
  });
  return best;
}

/** Straight between two values; null beside the range and in a gap. Values of x rise. */
export function valueAt(
  xs: readonly number[],
  row: readonly (number | null)[],
  place: number
): number | null {
  const after = xs.findIndex((value) => value >= place);
  if (after < 0 || place < xs[0]!) return null;
  const next = row[after] ?? null;
  if (xs[after] === place || after === 0) return next;
  const before = row[after - 1] ?? null;
  if (before === null || next === null) return null;
  return before + ((next - before) * (place - xs[after - 1]!)) / (xs[after]! - xs[after - 1]!);
}

/** Which curve is the present design's: the family's value nearest to it, or the design that is open. */
export function presentRow({ family, designs, present }: SweepPicture): number {
  if (designs) return Math.max(0, designs.indexOf(null));
  if (!family || present.family === null) return 0;
  return nearestIndex(family.values, present.family);
}

/** A text in lines of so many characters at most, broken between words. */
export function wrapped(text: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
