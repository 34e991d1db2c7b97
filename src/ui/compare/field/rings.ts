/** Closed outlines of where the numbers of a net exceed a level. */
import { contours } from 'd3-contour';
import type { Point } from '#plan/schema';

interface Net {
  readonly columns: number;
  readonly rows: number;
}

/** Decades below a level at which nothing is told from next to nothing. */
const FLOOR = 3;

type Place = (column: number, row: number) => Point;

/**
 * Each area as its outline and the holes in it. `place`: of a node, between nodes too. d3 counts in cells with the node in
 * the middle, and closes half a cell outside.
 */
export function areasOver(
  { columns, rows }: Net,
  values: readonly number[],
  level: number,
  place: Place
): readonly (readonly (readonly Point[])[])[] {
  const within = (at: number, count: number): number => Math.min(count - 1, Math.max(0, at - 0.5));
  return contours()
    .size([columns, rows])
    .contour([...values], level)
    .coordinates.map((area) =>
      area.map((ring) => ring.map(([x, y]) => place(within(x!, columns), within(y!, rows))))
    );
}

/** What falls off by powers: between two nodes a straight line through their logarithms is nearer the truth. */
export function logRingsOver(
  net: Net,
  values: Float64Array,
  level: number,
  place: Place
): readonly (readonly Point[])[] {
  const floor = Math.log10(level) - FLOOR;
  const logs = Array.from(values, (value) => (value > 0 ? Math.max(floor, Math.log10(value)) : floor));
  return areasOver(net, logs, Math.log10(level), place).flat();
}
