/** What a plane that keeps the field out takes from a vehicle's change: the loop has its image in it, and so has the vehicle. */
import { STRIDE, type Filaments } from '#physics/field/filaments';
import { dot } from '#physics/numeric/cholesky';
import { fluxThrough, reducedFlux } from '#physics/vehicle/flux';
import { reduceBlocks } from '#physics/vehicle/symmetry';
import type { Design } from './design';
import type { StandingVehicle } from './places';

/** The loop's image: as deep below the plane as the loop lies above, and reversed. */
const imageOf = (filaments: Filaments, depth: number): Filaments => {
  const image = filaments.slice();
  for (let at = 0; at < image.length; at += STRIDE) {
    image[at + 5] = -2 * depth - image[at + 5]!;
    image[at + 6] = -image[at + 6]!;
  }
  return image;
};

/** Of the loops' own changes together, by the quick mesh. `depth` in metres below the road. */
export const shareOverPlane = (
  { loops }: Design,
  { body, placements: [placement] }: StandingVehicle,
  depth: number
): number => {
  if (!placement) return 1;
  const over = body.over(depth).coarse;
  let [above, without] = [0, 0];
  for (const { model } of loops) {
    const plain = reducedFlux(body.coarse, model.roughFilaments, placement);
    const flux = fluxThrough(over, model.roughFilaments, placement);
    const reflected = fluxThrough(over, imageOf(model.roughFilaments, depth), placement);
    for (let k = 0; k < flux.length; k++) flux[k]! += reflected[k]!;
    const reduced = reduceBlocks(over.blocks, flux);
    above += dot(reduced, reduced);
    without += dot(plain, plain);
  }
  return without === 0 ? 1 : above / without;
};
