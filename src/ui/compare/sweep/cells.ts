/** A sweep over two numbers as cells about its values, with the line where a limit is crossed. Pure. */
import { scaleLinear } from 'd3-scale';
import type { FigureLimit, SweepPoint } from '#analysis/sweep/results';

type Grid = readonly (readonly (number | null)[])[];
type Place = (value: number) => number;

/** Halfway between values that rise, and as far beyond the first and the last. */
export function cellEdges(values: readonly number[]): readonly number[] {
  const [first, last] = [values[0]!, values.at(-1)!];
  if (values.length < 2) return [first - 0.5, first + 0.5];
  const between = values.slice(1).map((value, k) => (value + values[k]!) / 2);
  return [2 * first - between[0]!, ...between, 2 * last - between.at(-1)!];
}

/** More than this nobody tells apart. */
const MOST = 8;

/** Round values at which a level begins, rising; the first holds everything below the second. */
export function levelsOf(grid: Grid): readonly number[] {
  const numbers = grid.flat().filter((value): value is number => value !== null && Number.isFinite(value));
  const [low, high] = [Math.min(...numbers), Math.max(...numbers)];
  if (numbers.length === 0) return [];
  if (low === high) return [low];
  for (let wanted = MOST; wanted > 1; wanted--) {
    const ticks = scaleLinear([low, high], [0, 1]).ticks(wanted);
    const inner = ticks.filter((tick) => tick > low && tick < high);
    if (inner.length > 0 && inner.length < MOST) return [low, ...inner];
  }
  return [low];
}

/** Index of the level that a value is in. */
export const levelOf = (value: number, levels: readonly number[]): number =>
  Math.max(
    0,
    levels.findLastIndex((from) => value >= from)
  );

/** Edges between cells that keep to a limit and cells that do not, as a path; empty where there are none. */
export function limitEdges(
  grid: Grid,
  xEdges: readonly number[],
  yEdges: readonly number[],
  { value: limit, wants }: FigureLimit,
  x: Place,
  y: Place
): string {
  const keeps = (j: number, i: number): boolean | null => {
    const value = grid[j]?.[i] ?? null;
    return value === null ? null : wants === 'above' ? value >= limit : value <= limit;
  };
  const differ = (a: boolean | null, b: boolean | null) => a !== null && b !== null && a !== b;
  let path = '';
  grid.forEach((row, j) => {
    row.forEach((_, i) => {
      const here = keeps(j, i);
      if (differ(here, keeps(j, i + 1)))
        path += `M${x(xEdges[i + 1]!)} ${y(yEdges[j]!)}V${y(yEdges[j + 1]!)}`;
      if (differ(here, keeps(j + 1, i)))
        path += `M${x(xEdges[i]!)} ${y(yEdges[j + 1]!)}H${x(xEdges[i + 1]!)}`;
    });
  });
  return path;
}

/** Of the ring in a doubtful cell, pixels; in a small cell a quarter of it. */
const RING = 3;

/** Hollow points in the middles of cells, as a chart has them on its curves; none where nothing could be computed. */
export function doubtRings(
  grid: Grid,
  points: readonly SweepPoint[],
  xEdges: readonly number[],
  yEdges: readonly number[],
  x: Place,
  y: Place
): readonly { readonly x: number; readonly y: number; readonly radius: number }[] {
  return points.flatMap(({ row, at }) => {
    if ((grid[row]?.[at] ?? null) === null) return [];
    const [left, right] = [x(xEdges[at]!), x(xEdges[at + 1]!)];
    const [bottom, top] = [y(yEdges[row]!), y(yEdges[row + 1]!)];
    const radius = Math.min(RING, Math.abs(right - left) / 4, Math.abs(top - bottom) / 4);
    return [{ x: (left + right) / 2, y: (bottom + top) / 2, radius }];
  });
}
