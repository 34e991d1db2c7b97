import { extentOf } from '../geometry/polygons';
import type { Point, Site, Vehicle, VehiclePart } from '../schema';
import { vehicleEntries } from './entries';
import { testPlates } from './test-plates';
import data from './vehicles.json';

export interface CatalogueVehicle extends Vehicle {
  /** Outline for drawing, metres, centred on the vehicle's own origin. */
  readonly bodyWidth: number;
  readonly bodyLength: number;
  /** 'lane': drives in the lane's middle; 'anywhere': a two-wheeler, on any path across the lane. */
  readonly paths: 'lane' | 'anywhere';
  /** Shown on every circuit, asked for or not. A user's own vehicle always is. */
  readonly usual: boolean;
  readonly source?: string;
}

export const builtInVehicles: readonly CatalogueVehicle[] = vehicleEntries.parse(data);

/** Whatever may stand on a plan without being of the site's own. */
export const catalogueVehicles: readonly CatalogueVehicle[] = [...builtInVehicles, ...testPlates];

/** Narrower than any car: such a vehicle chooses its own path across the lane. */
const NARROW = 1.2;

/** Corners of what the part covers seen from above, its axis ignored: a ring counts as wide as it is thick. */
function footprint(part: VehiclePart): readonly Point[] {
  const [x, y] = part.centre;
  const dx = part.kind === 'plate' ? part.width / 2 : part.conductorRadius;
  const dy = part.kind === 'plate' ? part.length / 2 : part.radius;
  return [
    [x - dx, y - dy],
    [x + dx, y + dy]
  ];
}

/** A user's own vehicle, with the outline that its parts need about the vehicle's origin. */
function withBody(vehicle: Vehicle): CatalogueVehicle {
  const { min, max } = extentOf(vehicle.parts.flatMap(footprint));
  const bodyWidth = 2 * Math.max(-min[0], max[0], 0.05);
  const bodyLength = 2 * Math.max(-min[1], max[1], 0.05);
  return { ...vehicle, bodyWidth, bodyLength, paths: bodyWidth < NARROW ? 'anywhere' : 'lane', usual: true };
}

/** The site's own vehicles first, then those of the catalogue; undefined for an unknown id. */
export function vehicleOf(id: string, site: Pick<Site, 'vehicles'>): CatalogueVehicle | undefined {
  const own = site.vehicles.find((vehicle) => vehicle.id === id);
  return own ? withBody(own) : catalogueVehicles.find((vehicle) => vehicle.id === id);
}

export function vehiclesOf(site: Pick<Site, 'vehicles'>): readonly CatalogueVehicle[] {
  const own = new Set(site.vehicles.map((vehicle) => vehicle.id));
  return [...site.vehicles.map(withBody), ...catalogueVehicles.filter((vehicle) => !own.has(vehicle.id))];
}
