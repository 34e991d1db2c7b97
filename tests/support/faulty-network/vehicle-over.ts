/**
 * ΔL/L of a vehicle of plates where it answers most along the lane. What the plates do to the loops is the product's own vehicle,
 * taken as given; what becomes of it at the terminals is the net's business.
 */
import { createBodyStore } from '#analysis/electrical/bodies';
import { filamentsOf } from '#physics/field/filaments';
import { dot } from '#physics/numeric/cholesky';
import { reducedFlux } from '#physics/vehicle/flux';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import type { Road } from './network';
import { turnOf } from './turns';

const bodies = createBodyStore();

/** Metres of the search along the lane: coarsely from end to end, then about the best. */
const STRIDES = [0.6, 0.2, 0.07];

/** In a lane along y at `x`; at a frequency in hertz. `lift`: metres by which it stands higher than it should. */
export const bestResponse = (
  site: Site,
  road: Road,
  vehicle: string,
  x: number,
  frequency: number,
  lift: number
): number => {
  const drawn = vehicleOf(vehicle, site)!;
  const body = bodies.get(drawn).fine;
  const { loops } = road.circuit;
  // a vehicle that stands higher is a road that lies lower
  const lowered = loops.map((loop) =>
    filamentsOf(turnOf({ ...loop, depth: loop.depth + lift }, loop.turns >> 1))
  );
  const still = road.impedance({ at: 'cabinet' }, frequency).im;
  const at = (y: number): number => {
    const fluxes = lowered.map((filaments) => reducedFlux(body, filaments, { x, y, heading: 90 }));
    const change = (i: number, j: number): number =>
      -dot(fluxes[i]!, fluxes[j]!) * loops[i]!.turns * loops[j]!.turns;
    return road.impedance({ at: 'cabinet' }, frequency, change).im / still - 1;
  };
  const ys = loops.flatMap(({ cells }) => cells.flatMap(({ corners }) => corners.map(([, y]) => y)));
  let from = Math.min(...ys) - 1;
  let to = Math.max(...ys) + 1;
  let best = { y: from, value: 0 };
  for (const stride of STRIDES) {
    for (let y = from; y <= to; y += stride) {
      const value = at(y);
      if (value < best.value) best = { y, value };
    }
    [from, to] = [best.y - stride, best.y + stride];
  }
  return best.value;
};
