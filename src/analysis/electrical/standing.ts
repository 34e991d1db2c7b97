/**
 * How much of a vehicle stands over which piece of steel. What counts is the steel near the loop: against vehicle and mat
 * solved together the plane is within a few percent as soon as a quarter of the vehicle is over it, and from there down to
 * a cover its share goes to nothing.
 */
import type { Placement } from '#physics/field/filaments';
import type { Part } from '#physics/vehicle/parts';
import { contains } from '#plan/geometry/polygons';
import { add, rotate } from '#plan/geometry/points';
import type { Point, Steel } from '#plan/schema';
import { planeUnder } from './steel';

export interface Standing {
  /** Of the plane that the steel looks like, metres below the road. */
  readonly depth: number;
  /** How far the plane counts, 0 to 1. */
  readonly share: number;
}

const ACROSS = [-0.4, 0, 0.4];
const ALONG = [-0.45, -0.225, 0, 0.225, 0.45];
const ENOUGH = 0.25;

/** Points of the vehicle in its own frame, each for the same share of its plates; of rings alone their middles. */
const samples = (parts: readonly Part[]): Point[] => {
  const plates = parts.filter((part) => part.kind === 'plate');
  const largest = plates.reduce((most, plate) => Math.max(most, plate.width * plate.length), 0);
  const main = plates.filter(({ width, length }) => width * length >= largest / 2);
  return main.length === 0
    ? parts.map(({ x, y }): Point => [x, y])
    : main.flatMap(({ x, y, width, length }) =>
        ACROSS.flatMap((u) => ALONG.map((v): Point => [x + u * width, y + v * length]))
      );
};

/** The piece under most of the vehicle; a share of 0 where there is none. */
export const standing = (
  parts: readonly Part[],
  { x, y, heading }: Placement,
  pieces: readonly Steel[],
  frequency: number
): Standing => {
  const points = samples(parts).map((point) => add([x, y], rotate(point, heading - 90)));
  let best: Standing = { depth: 0, share: 0 };
  for (const piece of pieces) {
    const over = points.filter((point) => contains(piece.outline, point)).length / points.length;
    const share = Math.min(1, over / ENOUGH);
    if (share > best.share) best = { depth: planeUnder(piece, frequency), share };
  }
  return best;
};
