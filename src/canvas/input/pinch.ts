/** Two fingers: the plan point under each of them stays under it. */
import type { Point } from '#plan/schema';

export interface Pinch {
  /** Pixels to move the view by. */
  readonly by: Point;
  readonly factor: number;
  /** Screen point to zoom about, after the movement. */
  readonly about: Point;
}

const SMALLEST_SPREAD = 10;

const middle = ([a, b]: readonly [Point, Point]): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
const spread = ([a, b]: readonly [Point, Point]): number =>
  Math.max(SMALLEST_SPREAD, Math.hypot(a[0] - b[0], a[1] - b[1]));

export function pinchBetween(before: readonly [Point, Point], now: readonly [Point, Point]): Pinch {
  const [from, to] = [middle(before), middle(now)];
  return { by: [to[0] - from[0], to[1] - from[1]], factor: spread(now) / spread(before), about: to };
}
