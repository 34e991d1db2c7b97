/** From the numbers of a response map to outlines on the plan. */
import { contours } from 'd3-contour';
import type { ResponseMap } from '#analysis/map/results';
import type { Contour, MapPicture } from '#scenes/frame';
import type { Point } from '#plan/schema';

export interface MapWords {
  /** A level as it is read. */
  readonly level: (response: number) => string;
  readonly threshold: string;
}

/** Decades below a level at which nothing is told from next to nothing. */
const FLOOR = 3;

type Grid = Pick<ResponseMap, 'box' | 'columns' | 'rows'>;

/** d3 counts in cells with the node in the middle of each, and closes outlines half a cell outside. */
function onPlan({ box, columns, rows }: Grid, [x, y]: readonly number[]): Point {
  const place = (at: number, count: number): number =>
    Math.min(count - 1, Math.max(0, at - 0.5)) / (count - 1);
  return [
    box.left + place(x!, columns) * (box.right - box.left),
    box.bottom + place(y!, rows) * (box.top - box.bottom)
  ];
}

/** Responses fall off by powers: between two nodes a straight line through their logarithms is nearer the truth. */
function ringsAt(grid: Grid, values: Float64Array, level: number): readonly (readonly Point[])[] {
  const floor = Math.log10(level) - FLOOR;
  const logs = Array.from(values, (value) => (value > 0 ? Math.max(floor, Math.log10(value)) : floor));
  return contours()
    .size([grid.columns, grid.rows])
    .contour(logs, Math.log10(level))
    .coordinates.flat()
    .map((ring) => ring.map((point) => onPlan(grid, point)));
}

/** Levels ascending; the trip threshold, where it is reached, comes last and lies on top. */
export function pictureOf(
  map: ResponseMap,
  levels: readonly number[],
  words: MapWords,
  isPreliminary: boolean
): MapPicture {
  const lines = levels.map((level): Contour => ({
    level,
    rings: ringsAt(map, map.response, level),
    isThreshold: false,
    label: words.level(level)
  }));
  const threshold: Contour = {
    level: 1,
    rings: ringsAt(map, map.ratio, 1),
    isThreshold: true,
    label: words.threshold
  };
  return { contours: [...lines, threshold].filter(({ rings }) => rings.length > 0), isPreliminary };
}
