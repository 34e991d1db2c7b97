/** Which part of the plan a response map covers, and how fine its net is. */
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Point } from '#plan/schema';
import { boxAround, type Box } from '#editor/geometry/box';

/** Metres beyond where the vehicle's body ends: there is nothing left to be seen. */
const BEYOND = 2;
/** Up to this size an area is mapped whole, metres; a larger one only where it is in sight. */
const WHOLE = 45;
/** The view's part moves in such steps, metres, so that a little panning asks for nothing. */
const STEP = 5;

/** Half the sides of the upright box round a vehicle that looks in the direction of `heading`. */
function halfSides({ bodyLength, bodyWidth }: CatalogueVehicle, heading: number): readonly [number, number] {
  const radians = (heading * Math.PI) / 180;
  const [c, s] = [Math.abs(Math.cos(radians)), Math.abs(Math.sin(radians))];
  return [(c * bodyLength + s * bodyWidth) / 2, (s * bodyLength + c * bodyWidth) / 2];
}

/** Null where there is nothing to map in sight. `points`: corners of the loops. */
export function mapArea(
  points: Iterable<Point>,
  vehicle: CatalogueVehicle,
  heading: number,
  sight: Box
): Box | null {
  const loops = boxAround(points);
  if (!loops) return null;
  const [x, y] = halfSides(vehicle, heading);
  const all: Box = {
    left: loops.left - x - BEYOND,
    right: loops.right + x + BEYOND,
    bottom: loops.bottom - y - BEYOND,
    top: loops.top + y + BEYOND
  };
  if (Math.max(all.right - all.left, all.top - all.bottom) <= WHOLE) return all;
  const part: Box = {
    left: Math.max(all.left, Math.floor(sight.left / STEP - 1) * STEP),
    right: Math.min(all.right, Math.ceil(sight.right / STEP + 1) * STEP),
    bottom: Math.max(all.bottom, Math.floor(sight.bottom / STEP - 1) * STEP),
    top: Math.min(all.top, Math.ceil(sight.top / STEP + 1) * STEP)
  };
  return part.left < part.right && part.bottom < part.top ? part : null;
}

/** About side² nodes, as far apart across as along. */
export function net(
  { left, right, bottom, top }: Box,
  side: number
): { readonly columns: number; readonly rows: number } {
  const stretch = Math.sqrt((right - left) / (top - bottom));
  const count = (factor: number): number => Math.max(4, Math.floor(side * factor));
  return { columns: count(stretch), rows: count(1 / stretch) };
}
