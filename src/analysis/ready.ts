/** The vehicles of a site that are ready to be driven. */
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import type { BodyStore, VehicleBody } from './electrical/bodies';
import { vehiclesInPlay } from './passing/in-play';

export interface Ready {
  /** Null for a vehicle that is still being prepared. */
  readonly bodyOf: (vehicle: Pick<CatalogueVehicle, 'id'>) => VehicleBody | null;
  readonly isComplete: boolean;
  /** Equal for equal sets of ready vehicles: results are kept under it. */
  readonly text: string;
}

export const readyVehicles = (site: Site, bodies: BodyStore): Ready => {
  const vehicles = vehiclesInPlay(site);
  const ready = new Map(
    vehicles.flatMap((vehicle) => (bodies.has(vehicle) ? [[vehicle.id, bodies.get(vehicle)] as const] : []))
  );
  return {
    bodyOf: ({ id }) => ready.get(id) ?? null,
    isComplete: ready.size === vehicles.length,
    text: [...ready.keys()].join()
  };
};
