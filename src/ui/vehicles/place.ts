/** Where a vehicle is put that somebody wants to see on the plan. */
import type { Assessment } from '#analysis/results';
import { addProbe } from '#plan/edits/index';
import { tidyPoint } from '#plan/edits/tidy';
import type { Point, Site } from '#plan/schema';

export interface Placed {
  /** The same site where there is no room for another. */
  readonly site: Site;
  /** The circuit that answers most to it there; null in the middle of the view. */
  readonly circuit: string | null;
}

/** Where the circuit that answers most to it does so, else in the middle of the view, heading up the plan. */
export function placeVehicle(
  site: Site,
  vehicle: string,
  assessment: Assessment | null,
  middle: Point
): Placed {
  const responses = (assessment?.circuits ?? [])
    .filter(({ id }) => site.circuits.some((circuit) => circuit.id === id))
    .flatMap(({ id, responses: all }) =>
      all.filter((response) => response.vehicle === vehicle).map((response) => ({ id, ...response }))
    )
    .sort((a, b) => a.best - b.best);
  const [most] = responses;
  const at = tidyPoint(most?.at ?? middle);
  return {
    site: addProbe(site, { vehicle, at, heading: most?.heading ?? 90 }),
    circuit: most?.id ?? null
  };
}
