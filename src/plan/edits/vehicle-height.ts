/** How high a vehicle's parts lie, found from what it was seen to change on the site. */
import { listedVehicle, vehicleOf } from '../catalogue/vehicles';
import type { HeightCalibration, Site, Vehicle, VehiclePart } from '../schema';
import { COUNTS } from '../bounds';
import { patched, withList } from './list';
import { tidyLength } from './tidy';
import { asOwn, changeVehicle, isSoundVehicle, removeVehicle } from './vehicles';

const liftedPart = (part: VehiclePart, by: number): VehiclePart =>
  part.kind === 'plate'
    ? { ...part, height: tidyLength(part.height + by) }
    : { ...part, centre: [part.centre[0], part.centre[1], tidyLength(part.centre[2] + by)] };

/** Every part higher, metres; lower where negative. */
export const lifted = <V extends Pick<Vehicle, 'parts'>>(vehicle: V, by: number): V => ({
  ...vehicle,
  parts: vehicle.parts.map((part) => liftedPart(part, by))
});

/** The vehicle as it was before its height was calibrated; the same object for one that never was. */
export const uncalibrated = <V extends Pick<Vehicle, 'parts' | 'calibration'>>(vehicle: V): V => {
  if (!vehicle.calibration) return vehicle;
  const { calibration, ...rest } = vehicle;
  return lifted(rest as V, -calibration.raised);
};

/**
 * Lifts an own vehicle, or an own one in the place of the catalogue's, and keeps the record. A calibration that it had is
 * undone first: `raised` counts from the heights before any. The same site when the result would not be sound.
 */
export function calibrateHeight(site: Site, id: string, record: HeightCalibration): Site {
  const lift = (vehicle: Vehicle): Vehicle =>
    patched<Vehicle>(lifted(uncalibrated(vehicle), record.raised), { calibration: record });
  if (site.vehicles.some((vehicle) => vehicle.id === id)) return changeVehicle(site, id, lift);
  const listed = vehicleOf(id, site);
  const own = listed && lift(asOwn(listed));
  if (!own || site.vehicles.length >= COUNTS.vehicles || !isSoundVehicle(own)) return site;
  return withList(site, 'vehicles', [...site.vehicles, own]);
}

const sameParts = (a: Pick<Vehicle, 'parts'>, b: Pick<Vehicle, 'parts'>): boolean =>
  JSON.stringify(a.parts) === JSON.stringify(b.parts);

/** Back to the heights from before; an own vehicle that was nothing but the catalogue's, lifted, goes. */
export function forgetHeight(site: Site, id: string): Site {
  const own = site.vehicles.find((vehicle) => vehicle.id === id);
  if (!own?.calibration) return site;
  const listed = listedVehicle(id);
  const before = uncalibrated(own);
  return listed && listed.name === own.name && sameParts(lifted(listed, 0), before)
    ? removeVehicle(site, id)
    : changeVehicle(site, id, () => before);
}
