/** What writing on the plan keeps clear of, in pixels of the screen: boxes that something else takes, and lines. */
import type { Box } from '#editor/geometry/box';
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { textWidth, type TextDrawing } from './drawing';

/** A straight line with the air that it needs on both sides. */
export interface Streak {
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
}

export type Obstacle = Box | Streak;

/** Round the text of a plate, as it is painted. */
const PLATE = { padding: 4, height: 1.44 } as const;
/** How much wider a bold text is. */
export const BOLD = 1.1;

const isStreak = (obstacle: Obstacle): obstacle is Streak => 'from' in obstacle;

export const areaOf = (box: Box): number =>
  Math.max(0, box.right - box.left) * Math.max(0, box.top - box.bottom);

/** Square pixels. */
export const common = (a: Box, b: Box): number =>
  areaOf({
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
    top: Math.min(a.top, b.top)
  });

/** How much of a straight line lies in the box, pixels: what the four edges leave of it. */
export function lengthInside(from: Point, to: Point, box: Box): number {
  let [first, last] = [0, 1];
  const sides = [
    { start: from[0], by: to[0] - from[0], low: box.left, high: box.right },
    { start: from[1], by: to[1] - from[1], low: box.bottom, high: box.top }
  ];
  for (const { start, by, low, high } of sides) {
    if (by === 0) {
      if (start < low || start > high) return 0;
      continue;
    }
    const [a, b] = [(low - start) / by, (high - start) / by];
    first = Math.max(first, Math.min(a, b));
    last = Math.min(last, Math.max(a, b));
  }
  return Math.max(0, last - first) * distance(from, to);
}

/** How much of the box an obstacle takes, square pixels. */
export const takenOf = (box: Box, obstacle: Obstacle): number =>
  isStreak(obstacle) ? lengthInside(obstacle.from, obstacle.to, box) * obstacle.width : common(box, obstacle);

/** About what a text covers with its plate; `scale`: of all texts on the drawing. */
export function boxOfWriting({ at: [x, y], text, size, bold, align }: TextDrawing, scale: number): Box {
  const width = textWidth(text, size) * (bold ? BOLD : 1) * scale;
  const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2;
  const half = (size * scale * PLATE.height) / 2;
  return { left: left - PLATE.padding, right: left + width + PLATE.padding, bottom: y - half, top: y + half };
}
