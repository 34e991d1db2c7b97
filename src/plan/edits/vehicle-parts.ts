/**
 * The parts of an own vehicle. What changes their size or place ends a calibration of the height: its record would speak
 * of another vehicle.
 */
import type { Site, Vehicle, VehiclePart } from '../schema';
import { patched } from './list';
import { changeVehicle } from './vehicles';

const withParts = (vehicle: Vehicle, parts: readonly VehiclePart[]): Vehicle =>
  patched<Vehicle>(vehicle, { parts, calibration: undefined });

/** Equal but for what it is called. */
const sameButName = (a: VehiclePart, b: VehiclePart): boolean =>
  JSON.stringify({ ...a, name: '' }) === JSON.stringify({ ...b, name: '' });

/** The same site when there is no such part, nothing changes, or the result would not be sound. */
export const changePart = (
  site: Site,
  id: string,
  index: number,
  change: (part: VehiclePart) => VehiclePart
): Site =>
  changeVehicle(site, id, (vehicle) => {
    const part = vehicle.parts[index];
    const next = part && change(part);
    if (!next || next === part) return vehicle;
    const parts = vehicle.parts.map((each, at) => (at === index ? next : each));
    return sameButName(part, next) ? { ...vehicle, parts } : withParts(vehicle, parts);
  });

/** What a new part is like: a plate the size of an axle, an upright ring the size of a bicycle's rim. Assumptions. */
export const NEW_PARTS: Readonly<Record<VehiclePart['kind'], VehiclePart>> = {
  plate: { kind: 'plate', centre: [0, 0], width: 1.6, length: 0.3, height: 0.4 },
  ring: { kind: 'ring', centre: [0, 0, 0.34], radius: 0.31, conductorRadius: 0.008, axis: [1, 0, 0] }
};

/** At the end of the list. */
export const addPart = (site: Site, id: string, part: VehiclePart): Site =>
  changeVehicle(site, id, (vehicle) => withParts(vehicle, [...vehicle.parts, part]));

/** Right behind the one that it copies in the list, and that much further back. */
const STEP_BACK = 0.5;

export const duplicatePart = (site: Site, id: string, index: number): Site =>
  changeVehicle(site, id, (vehicle) => {
    const part = vehicle.parts[index];
    if (!part) return vehicle;
    const copy = movedPart(part, -STEP_BACK);
    return withParts(vehicle, vehicle.parts.toSpliced(index + 1, 0, copy));
  });

/** The last part stays: a vehicle has one. */
export const removePart = (site: Site, id: string, index: number): Site =>
  changeVehicle(site, id, (vehicle) =>
    vehicle.parts[index] && vehicle.parts.length > 1
      ? withParts(vehicle, vehicle.parts.toSpliced(index, 1))
      : vehicle
  );

const FINENESS = 1e7;

/** Further ahead in the vehicle's own frame, metres; a tenth of a micrometre is as fine as a place gets. */
export const movedPart = (part: VehiclePart, ahead: number): VehiclePart => {
  const along = Math.round((part.centre[1] + ahead) * FINENESS) / FINENESS + 0;
  return part.kind === 'plate'
    ? { ...part, centre: [part.centre[0], along] }
    : { ...part, centre: [part.centre[0], along, part.centre[2]] };
};
