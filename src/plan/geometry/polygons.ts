/** Closed polygons given by their corners, the last one joined to the first. */
import type { Point } from '../schema';
import { add, cross, distance, scale, subtract } from './points';
import { type Segment, distanceToSegment, segmentDistance } from './segments';

export const sidesOf = (corners: readonly Point[]): Segment[] =>
  corners.map((from, index) => ({ from, to: corners[(index + 1) % corners.length]! }));

/** Square metres; positive when the corners run counter-clockwise. */
export function signedArea(corners: readonly Point[]): number {
  const origin = corners[0];
  if (!origin) return 0;
  // Relative to the first corner: a loop far from the plan's origin must not lose digits.
  return (
    sidesOf(corners).reduce(
      (sum, { from, to }) => sum + cross(subtract(from, origin), subtract(to, origin)),
      0
    ) / 2
  );
}

export const perimeter = (corners: readonly Point[]): number =>
  sidesOf(corners).reduce((sum, { from, to }) => sum + distance(from, to), 0);

export function extentOf(points: readonly Point[]): { readonly min: Point; readonly max: Point } {
  const xs = points.map((point) => point[0]);
  const ys = points.map((point) => point[1]);
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}

/** Centre of the area; the mean of the corners when there is no area. */
export function centroid(corners: readonly Point[]): Point {
  const origin = corners[0] ?? ([0, 0] as const);
  const area = signedArea(corners);
  const mean = scale(corners.reduce<Point>(add, [0, 0]), 1 / Math.max(1, corners.length));
  if (Math.abs(area) < 1e-9) return mean;
  const moment = sidesOf(corners).reduce<Point>(
    (sum, side) => {
      const a = subtract(side.from, origin);
      const b = subtract(side.to, origin);
      return add(sum, scale(add(a, b), cross(a, b)));
    },
    [0, 0]
  );
  return add(origin, scale(moment, 1 / (6 * area)));
}

/** True inside and on the rim to within rounding of the crossing count. */
export function contains(corners: readonly Point[], point: Point): boolean {
  let inside = false;
  for (const { from, to } of sidesOf(corners)) {
    if (from[1] > point[1] === to[1] > point[1]) continue;
    const x = from[0] + ((point[1] - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
    if (point[0] < x) inside = !inside;
  }
  return inside;
}

/**
 * The first two sides, by index, that cross, touch or run back over each other closer than `apart` metres; null for a
 * simple polygon. Neighbouring sides may of course meet at their common corner.
 */
export function crossingSides(corners: readonly Point[], apart = 1e-6): readonly [number, number] | null {
  const sides = sidesOf(corners);
  const count = sides.length;
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const a = sides[i]!;
      const b = sides[j]!;
      if (j === i + 1 || (i === 0 && j === count - 1)) {
        const [first, second] = j === i + 1 ? [a, b] : [b, a];
        const foldsBack =
          distanceToSegment(second.to, first) < apart || distanceToSegment(first.from, second) < apart;
        if (foldsBack) return [i, j];
      } else if (segmentDistance(a, b) < apart) {
        return [i, j];
      }
    }
  }
  return null;
}
