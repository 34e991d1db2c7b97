/** The user's own vehicles, beside those of the catalogue; one with the id of a catalogue vehicle stands in its place. */
import { COUNTS } from '../bounds';
import { vehicleOf, type CatalogueVehicle } from '../catalogue/vehicles';
import { vehicle as vehicleSchema, type Site, type Traffic, type Vehicle, type VehiclePart } from '../schema';
import { freeId, kept, mapped, patched, withList, type Patch } from './list';

/** As in reading: a ring is thinner than it is wide, and its axis has a direction. */
const isSoundPart = (part: VehiclePart): boolean =>
  part.kind === 'plate' || (part.conductorRadius < part.radius && Math.hypot(...part.axis) >= 1e-9);

/** Whether a document may hold this vehicle. */
export const isSoundVehicle = (vehicle: Vehicle): boolean =>
  vehicleSchema.safeParse(vehicle).success && vehicle.parts.every(isSoundPart);

/** Where somebody begins from nothing: a sheet as wide, long and high as the floor of an ordinary car, an assumption. */
const FIRST_PLATE: VehiclePart = {
  kind: 'plate',
  name: 'Plate',
  centre: [0, 0],
  width: 1.6,
  length: 4.2,
  height: 0.45
};

export const newVehicle = (site: Site, name: string): Vehicle => ({
  id: freeId(site.vehicles, 'v'),
  name,
  parts: [FIRST_PLATE]
});

/** The fields of a document's own vehicle out of whatever stands in the catalogue. */
export const asOwn = ({ id, name, parts, bodyWidth, bodyLength }: CatalogueVehicle): Vehicle => ({
  id,
  name,
  parts,
  body: { width: bodyWidth, length: bodyLength }
});

/** An own vehicle with the parts and the outline of another; how that one was calibrated stays with it. */
export const copyOfVehicle = (site: Site, from: CatalogueVehicle, name: string): Vehicle => ({
  ...asOwn(from),
  id: freeId(site.vehicles, 'v'),
  name
});

export function addVehicle(site: Site, vehicle: Vehicle): Site {
  const taken = site.vehicles.some(({ id }) => id === vehicle.id);
  if (taken || site.vehicles.length >= COUNTS.vehicles || !isSoundVehicle(vehicle)) return site;
  return { ...site, vehicles: [...site.vehicles, vehicle] };
}

/** The same site when the vehicle is not the site's own, nothing changes, or the result would not be sound. */
export function changeVehicle(site: Site, id: string, change: (vehicle: Vehicle) => Vehicle): Site {
  const vehicles = mapped(site.vehicles, (vehicle) => {
    const next = vehicle.id === id ? change(vehicle) : vehicle;
    return next === vehicle || isSoundVehicle(next) ? next : vehicle;
  });
  return withList(site, 'vehicles', vehicles);
}

/** As `changeVehicle`; undefined takes the outline away: then the parts decide. */
export const updateVehicle = (site: Site, id: string, patch: Patch<Pick<Vehicle, 'name' | 'body'>>): Site =>
  changeVehicle(site, id, (vehicle) => patched<Vehicle>(vehicle, patch));

/** What names a vehicle: each number counts the places where it does. */
export interface VehicleUses {
  readonly placed: number;
  readonly askedFor: number;
  readonly lanes: number;
  readonly traffic: number;
}

export function usesOfVehicle(site: Site, id: string): VehicleUses {
  const { streams = [], arrivals = [] } = site.traffic ?? {};
  return {
    placed: site.probes.filter(({ vehicle }) => vehicle === id).length,
    askedFor: site.circuits.filter(({ detect }) => detect.includes(id)).length,
    lanes: site.lanes.filter(({ largestVehicle }) => largestVehicle === id).length,
    traffic:
      arrivals.filter(({ vehicle }) => vehicle === id).length +
      streams.filter(({ mix }) => mix.some(({ vehicle }) => vehicle === id)).length
  };
}

/** A stream that had nothing else in its mix goes with it. */
function trafficWithout(traffic: Traffic, id: string): Traffic {
  const mixed = mapped(traffic.streams, (stream) =>
    withList(
      stream,
      'mix',
      kept(stream.mix, ({ vehicle }) => vehicle !== id)
    )
  );
  const streams = kept(mixed, ({ mix }) => mix.length > 0);
  const arrivals = kept(traffic.arrivals, ({ vehicle }) => vehicle !== id);
  return withList(withList(traffic, 'streams', streams), 'arrivals', arrivals);
}

/** With everything that would name nothing afterwards; a vehicle of the catalogue comes back into its place. */
export function removeVehicle(site: Site, id: string): Site {
  const vehicles = kept(site.vehicles, (vehicle) => vehicle.id !== id);
  if (vehicles === site.vehicles) return site;
  const rest = { ...site, vehicles };
  if (vehicleOf(id, rest)) return rest;
  const lanes = mapped(rest.lanes, (lane) =>
    lane.largestVehicle === id ? patched(lane, { largestVehicle: undefined }) : lane
  );
  const circuits = mapped(rest.circuits, (circuit) =>
    withList(
      circuit,
      'detect',
      kept(circuit.detect, (vehicle) => vehicle !== id)
    )
  );
  const probes = kept(rest.probes, ({ vehicle }) => vehicle !== id);
  const traffic = rest.traffic && trafficWithout(rest.traffic, id);
  return { ...rest, lanes, circuits, probes, ...(traffic ? { traffic } : {}) };
}
