/** Chosen layers of a drawing as what a site holds: from the upper left corner, y downwards, in steps that nobody sees. */
import { BOUNDS, COUNTS } from '#plan/bounds';
import type { Lines, Point } from '#plan/schema';
import type { Drawing, DrawnPath } from './drawing';

/** Points of all paths together: four such drawings still are a file that is read again. */
export const MOST_POINTS = 200_000;

/** Metres to which places are rounded. */
const FINENESS = 1e-5;

export interface Extent {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** Null for no path at all. */
export function extentOf(paths: readonly DrawnPath[]): Extent | null {
  const extent = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };
  for (const { points } of paths)
    for (const [x, y] of points) {
      if (x < extent.left) extent.left = x;
      if (x > extent.right) extent.right = x;
      if (y < extent.bottom) extent.bottom = y;
      if (y > extent.top) extent.top = y;
    }
  return extent.left <= extent.right ? extent : null;
}

export function onLayers({ paths }: Drawing, layers: readonly number[]): readonly DrawnPath[] {
  const chosen = new Set(layers);
  return paths.filter(({ layer }) => chosen.has(layer));
}

export type Fitting =
  | {
      readonly kind: 'fits';
      readonly lines: Lines;
      readonly metresPerUnit: number;
      /** Where the middle lies by the drawing's own coordinates, metres. */
      readonly middle: Point;
    }
  | { readonly kind: 'empty' }
  | { readonly kind: 'tooMany'; readonly paths: number; readonly points: number }
  /** Metres along the longer side. */
  | { readonly kind: 'tooLarge' | 'tooSmall'; readonly size: number };

/** Pieces of a path of which each is as long as a path may be, the last point of one the first of the next. */
function pieces<P>(points: readonly P[]): P[][] {
  const most = COUNTS.linePoints;
  const parts: P[][] = [];
  for (let from = 0; from < points.length - 1; from += most - 1) parts.push(points.slice(from, from + most));
  return parts;
}

/** Metres; a drawing larger than this has another unit than it says. */
const LARGEST = BOUNDS.coordinate.max - BOUNDS.coordinate.min;

export function linesOf(paths: readonly DrawnPath[], unit: number): Fitting {
  const extent = extentOf(paths);
  if (!extent) return { kind: 'empty' };
  // units of which a plan holds no scale become metres
  const isUsual = unit >= 1e-4 && unit <= 10;
  const factor = isUsual ? 1 : unit;
  const metresPerUnit = isUsual ? unit : 1;
  const size = Math.max(extent.right - extent.left, extent.top - extent.bottom) * unit;
  if (size > LARGEST) return { kind: 'tooLarge', size };
  if (size < BOUNDS.side.min) return { kind: 'tooSmall', size };
  const steps = 10 ** Math.ceil(Math.log10(metresPerUnit / FINENESS));
  const rounded = (value: number): number => Math.round(value * steps) / steps + 0;
  // a drawing that is one straight line has a height too, so that it can be taken hold of and scaled
  const least = size / unit / 1_000;
  const [widen, heighten] = [extent.right - extent.left, extent.top - extent.bottom].map((side) =>
    Math.max(0, least - side)
  ) as [number, number];
  const left = extent.left - widen / 2;
  const top = extent.top + heighten / 2;
  const place = ([x, y]: Point): [number, number] => [
    rounded((x - left) * factor),
    rounded((top - y) * factor)
  ];
  const made = paths.flatMap(({ points }) => {
    const placed = points
      .map(place)
      .filter(([x, y], index, all) => index === 0 || x !== all[index - 1]![0] || y !== all[index - 1]![1]);
    return placed.length < 2 ? [] : pieces(placed);
  });
  const points = made.reduce((sum, path) => sum + path.length, 0);
  if (made.length > COUNTS.linePaths || points > MOST_POINTS)
    return { kind: 'tooMany', paths: made.length, points };
  if (made.length === 0) return { kind: 'tooSmall', size };
  const width = (extent.right - extent.left + widen) * factor;
  const height = (extent.top - extent.bottom + heighten) * factor;
  return {
    kind: 'fits',
    lines: { width, height, paths: made },
    metresPerUnit,
    middle: [((extent.left + extent.right) / 2) * unit, ((extent.bottom + extent.top) / 2) * unit]
  };
}
