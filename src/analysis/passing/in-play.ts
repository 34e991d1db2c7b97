/** The vehicles that a site needs: preparing one costs a moment and following one costs time at every edit. */
import { vehiclesOf, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Circuit, Site } from '#plan/schema';

/** The largest vehicle of a lane where the drawing names none. */
export const USUAL_LARGEST = 'lorry';
/** Tried for double counts on a lane that does not say what is the largest: its middle is high. */
export const LONG_AND_HIGH = 'lorry-articulated';
/** Low and wide: it can reach further sideways than a lorry with a high floor. */
export const LOW_VEHICLE = 'car';

/** Those that a circuit shows: the usual kinds, the site's own, and whatever is asked for on it. */
export const vehiclesOn = (circuit: Circuit, site: Site): readonly CatalogueVehicle[] =>
  vehiclesOf(site).filter(({ id, usual }) => usual || circuit.detect.includes(id));

/** Those that anything on the site needs, a placed one first: it is what the user looks at. */
export const vehiclesInPlay = (site: Site): readonly CatalogueVehicle[] => {
  const placed = site.probes.map(({ vehicle }) => vehicle);
  const named = new Set([
    ...placed,
    ...site.circuits.flatMap(({ detect }) => detect),
    ...site.lanes.map(({ largestVehicle }) => largestVehicle ?? USUAL_LARGEST),
    LOW_VEHICLE
  ]);
  const all = vehiclesOf(site).filter(({ id, usual }) => usual || named.has(id));
  return [...all.filter(({ id }) => placed.includes(id)), ...all.filter(({ id }) => !placed.includes(id))];
};
