/** Most steel is a rectangle, at whatever angle: its sides can be typed, and it stays one under the hand. */
import { add, distance, rotate, scale } from '../geometry/points';
import type { Point } from '../schema';
import { clampPoint } from './limits';
import { tidyAngle, tidyLength, tidyPoint } from './tidy';

/** Two sides may be out of square by this part of their length. */
const SQUARENESS = 1e-5;

/** A rectangle by its middle, its sides and the direction of its width; metres and degrees. */
export interface SteelBox {
  readonly centre: Point;
  readonly width: number;
  readonly length: number;
  readonly rotation: number;
}

/** Null for an outline that is no rectangle. The width runs along the first side. */
export function steelBox(outline: readonly Point[]): SteelBox | null {
  const [a, b, c, d] = outline;
  if (!a || !b || !c || !d || outline.length !== 4) return null;
  const width = distance(a, b);
  const length = distance(b, c);
  const slack = SQUARENESS * Math.max(width, length);
  const isParallelogram = Math.hypot(a[0] + c[0] - b[0] - d[0], a[1] + c[1] - b[1] - d[1]) <= 2 * slack;
  const hasEqualDiagonals = Math.abs(distance(a, c) - distance(b, d)) <= 2 * slack;
  if (!isParallelogram || !hasEqualDiagonals || width === 0 || length === 0) return null;
  const centre: Point = [(a[0] + c[0]) / 2, (a[1] + c[1]) / 2];
  const rotation = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  return {
    centre: tidyPoint(centre),
    width: tidyLength(width),
    length: tidyLength(length),
    rotation: tidyAngle(rotation)
  };
}

/** Corners in the order that `steelBox` reads. */
export function outlineOfBox({ centre, width, length, rotation }: SteelBox): Point[] {
  const x = width / 2;
  const y = length / 2;
  const corners: Point[] = [[-x, -y], [x, -y], [x, y], [-x, y]]; // prettier-ignore
  return corners.map((corner) => tidyPoint(add(centre, rotate(corner, rotation))));
}

/** A rectangle stays one: the opposite corner stands still, the sides keep their directions. */
export function draggedCorner(outline: readonly Point[], index: number, to: Point): readonly Point[] {
  const fixed = outline[(index + 2) % 4]!;
  const before = outline[(index + 3) % 4]!;
  const after = outline[(index + 1) % 4]!;
  const reach: Point = [clampPoint(to)[0] - fixed[0], clampPoint(to)[1] - fixed[1]];
  const along = (corner: Point): Point => {
    const side: Point = [corner[0] - fixed[0], corner[1] - fixed[1]];
    const size = side[0] ** 2 + side[1] ** 2;
    return scale(side, (side[0] * reach[0] + side[1] * reach[1]) / size);
  };
  const toBefore = along(before);
  const toAfter = along(after);
  const moved = new Map<number, Point>([
    [(index + 3) % 4, add(fixed, toBefore)],
    [(index + 1) % 4, add(fixed, toAfter)],
    [index, add(fixed, add(toBefore, toAfter))]
  ]);
  return outline.map((point, at) => {
    const next = moved.get(at);
    return next ? tidyPoint(clampPoint(next)) : point;
  });
}
