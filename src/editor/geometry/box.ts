import type { Point } from '#plan/schema';

/** An upright box in plan coordinates, metres. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** The smallest box round the points, or null without any. */
export function boxAround(points: Iterable<Point>): Box | null {
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (const [x, y] of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return left <= right ? { left, bottom, right, top } : null;
}

export const pointBox = ([x, y]: Point): Box => ({ left: x, right: x, bottom: y, top: y });

export const boxCorners = (box: Box): Point[] => [
  [box.left, box.bottom],
  [box.right, box.bottom],
  [box.right, box.top],
  [box.left, box.top]
];

export const boxCentre = (box: Box): Point => [(box.left + box.right) / 2, (box.bottom + box.top) / 2];

export const movedBox = (box: Box, [x, y]: Point): Box => ({
  left: box.left + x,
  right: box.right + x,
  bottom: box.bottom + y,
  top: box.top + y
});

export const boxesTouch = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.bottom <= b.top && b.bottom <= a.top;

export const boxHolds = (outer: Box, [x, y]: Point): boolean =>
  x >= outer.left && x <= outer.right && y >= outer.bottom && y <= outer.top;
