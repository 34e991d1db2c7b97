/** The one passing whose curves are laid over each other: way, vehicle and place beside the middle. Pure. */
import type { DesignResults } from '#analysis/designs/results';
import type { PassCurve, PassPicture, PassWish, WayRef } from '#analysis/passing/results';
import type { Ref } from '#editor/types';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import { askedFor } from '../../passing/along/vehicles';
import { offsetLimit, wayShown, type OfferedWay } from '../../passing/ways';

export interface ShownPass {
  readonly way: OfferedWay;
  readonly vehicle: string;
  /** Metres to the right, as far as it is worth looking. */
  readonly limit: number;
  readonly wish: PassWish;
}

interface Chosen {
  readonly way: WayRef | null;
  readonly vehicle: string | null;
  readonly offset: number;
}

/** Null where nothing is drawn to drive along. */
export function passShown(
  site: Site,
  { way: chosen, vehicle: wanted, offset }: Chosen,
  selection: readonly Ref[]
): ShownPass | null {
  const way = wayShown(site, { chosen, selection });
  const vehicle = wanted !== null && vehicleOf(wanted, site) ? wanted : askedFor(site)[0];
  if (!way || vehicle === undefined) return null;
  const limit = offsetLimit(site, way.ref);
  const offset_m = Math.min(limit, Math.max(-limit, offset));
  return { way, vehicle, limit, wish: { way: way.ref, vehicles: [vehicle], offset_m } };
}

/** A curve a design; null where the design's circuit does not see the vehicle on the way. */
export interface CircuitPass {
  readonly circuit: string;
  readonly curves: readonly (PassCurve | null)[];
  /** Where loops lie along the way, by design. */
  readonly loops: readonly PassPicture['loops'][];
}

/** Circuits that are the same by their ids, in the order in which they come up. */
export function byCircuit(results: readonly DesignResults[]): readonly CircuitPass[] {
  const pictures = results.map(({ pass }) => pass);
  const circuits = new Set(
    pictures.flatMap((picture) => picture?.curves.map(({ profile }) => profile.circuit) ?? [])
  );
  return [...circuits].map((circuit) => ({
    circuit,
    curves: pictures.map(
      (picture) => picture?.curves.find(({ profile }) => profile.circuit === circuit) ?? null
    ),
    loops: pictures.map((picture) => picture?.loops.filter((loop) => loop.circuit === circuit) ?? [])
  }));
}

export const thereOf = (curves: readonly (PassCurve | null)[]): readonly PassCurve[] =>
  curves.filter((curve) => curve !== null);
