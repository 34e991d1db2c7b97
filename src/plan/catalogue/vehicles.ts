import { extentOf } from '../geometry/polygons';
import type { Point, Site, Vehicle, VehiclePart } from '../schema';
import type { VehicleEntry } from './entries';
import { entriesOf } from './entries-of';
import { withSpokenParts } from './spoken-names';
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

export const builtInVehicles: readonly CatalogueVehicle[] = withSpokenParts(entriesOf<VehicleEntry>(data));

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

/** The vehicle of the catalogue with that id, whether or not a site has one of its own in its place. */
export const listedVehicle = (id: string): CatalogueVehicle | undefined =>
  catalogueVehicles.find((vehicle) => vehicle.id === id);

/** The outline that is stated, or else what the parts need about the vehicle's origin. */
function outlineOf({ body, parts }: Vehicle): { readonly width: number; readonly length: number } {
  if (body) return body;
  const { min, max } = extentOf(parts.flatMap(footprint));
  return {
    width: 2 * Math.max(-min[0], max[0], 0.05),
    length: 2 * Math.max(-min[1], max[1], 0.05)
  };
}

/** A user's own vehicle. One of the catalogue that was only lifted drives where the catalogue says. */
function withBody(vehicle: Vehicle): CatalogueVehicle {
  const { width, length } = outlineOf(vehicle);
  const listed = vehicle.calibration && listedVehicle(vehicle.id);
  const paths = listed?.paths ?? (width < NARROW ? 'anywhere' : 'lane');
  return { ...vehicle, bodyWidth: width, bodyLength: length, paths, usual: true };
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
