/**
 * How much the images of a vehicle in the steel below it count. Against vehicle and mat solved together: fully where a
 * quarter of the vehicle and the whole loop are over the steel; with less of the loop over it by the square of that share,
 * since the images matter only where the loop is screened too. Down to a cover or a mat beside the loop they go to nothing.
 */
import type { Placement } from '#physics/field/filaments';
import type { Part } from '#physics/vehicle/parts';
import { contains } from '#plan/geometry/polygons';
import { add, rotate } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import type { SteelPiece } from './circuit-model';
import { planeUnder } from './steel';

export interface Standing {
  /** Of the plane that the steel looks like, metres below the road. */
  readonly depth: number;
  /** How far the images count for each loop, 0 to 1; for two loops the product. */
  readonly shares: readonly number[];
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

/** By the piece under most of the vehicle; null where none is. */
export const standing = (
  parts: readonly Part[],
  { x, y, heading }: Placement,
  pieces: readonly SteelPiece[],
  frequency: number
): Standing | null => {
  const points = samples(parts).map((point) => add([x, y], rotate(point, heading - 90)));
  let most = 0;
  let best: Standing | null = null;
  for (const { steel, covers } of pieces) {
    const over = points.filter((point) => contains(steel.outline, point)).length / points.length;
    if (over <= most || covers.every((cover) => cover === 0)) continue;
    most = over;
    const share = Math.sqrt(Math.min(1, over / ENOUGH));
    best = { depth: planeUnder(steel, frequency), shares: covers.map((cover) => share * cover) };
  }
  return best;
};
