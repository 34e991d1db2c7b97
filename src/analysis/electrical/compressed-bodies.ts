/** Compressed vehicles, each made when a pass or a map first asks for it, and kept with the vehicle. */
import type { Body } from '#physics/vehicle/body';
import { compressInSteps, type CompressedBody } from '#physics/vehicle/compressed';
import type { Steps } from '../steps';
import type { VehicleBody } from './bodies';

type Kept = WeakMap<Body, CompressedBody | null>;

function* kept(made: Kept, fine: Body, clearance: number): Steps<CompressedBody | null> {
  const known = made.get(fine);
  if (known !== undefined) return known;
  const compressed = yield* compressInSteps(fine, clearance);
  made.set(fine, compressed);
  return compressed;
}

const everywhere: Kept = new WeakMap();
const away: Kept = new WeakMap();

/** Metres of free road between a vehicle and every loop from which on the form for loops away from it holds. */
export const AWAY = 1.2;

/** Null for a vehicle too large for its height to be compressed: it keeps its mesh. */
export const compressedOf = ({ fine }: VehicleBody): Steps<CompressedBody | null> =>
  kept(everywhere, fine, 0);

/** Over a conducting plane `depth` metres below the road. */
export const compressedOver = (vehicle: VehicleBody, depth: number): Steps<CompressedBody | null> =>
  kept(everywhere, vehicle.over(depth).fine, 0);

/** For loops that lie AWAY or more from the vehicle, several times quicker. */
export const compressedAwayOf = ({ fine }: VehicleBody): Steps<CompressedBody | null> =>
  kept(away, fine, AWAY);
