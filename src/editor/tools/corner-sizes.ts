/** Sizes of what is drawn from corner to corner: width, length and, for shapes that can lie askew, the angle. */
import { BOUNDS } from '#plan/bounds';
import { add, rotate, subtract } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import type { TypedSizes } from '../dimension-entry';
import { angleSize, signed, sizeOffer } from '../entry/placing';
import type { Sizing, Stretch } from './two-points';

/** From corner to corner in the frame that lies at the typed angle. */
export function acrossCorners({ from, to, input }: Stretch): Point {
  return rotate(subtract(to, from), -(input.typed.angle ?? 0));
}

function opposite(
  from: Point,
  pointer: Point,
  { width, length, angle = 0, offset }: TypedSizes,
  share: number
): Point {
  if (offset) return add(from, offset);
  const [x, y] = rotate(subtract(pointer, from), -angle);
  const reach: Point = [
    width === undefined ? x : signed(x, width * share),
    length === undefined ? y : signed(y, length * share)
  ];
  return add(from, rotate(reach, angle));
}

/** With control the drawing starts from the centre: half of a size lies on each side. */
export const cornerSizing = (canTurn: boolean): Sizing => ({
  to: (from, pointer, typed, { control }) => opposite(from, pointer, typed, control ? 0.5 : 1),
  sizes(stretch) {
    const [x, y] = acrossCorners(stretch);
    const times = stretch.input.control ? 2 : 1;
    const sizes = [
      sizeOffer('width', Math.abs(x) * times, BOUNDS.side),
      sizeOffer('length', Math.abs(y) * times, BOUNDS.side)
    ];
    return canTurn ? [...sizes, angleSize(stretch.input.typed.angle ?? 0)] : sizes;
  }
});
