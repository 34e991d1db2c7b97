/** How high a vehicle is and where it drives or stands, and a fault: turns of a loop shorted among themselves. */
import { BOUNDS, COUNTS } from '../bounds';
import { vehicleOf, vehiclesOf } from '../catalogue/vehicles';
import { patched, withList } from '../edits/list';
import { tidyLength } from '../edits/tidy';
import { lifted } from '../edits/vehicle-height';
import { asOwn, changeVehicle, isSoundVehicle } from '../edits/vehicles';
import type { Site, Vehicle } from '../schema';
import {
  all,
  around,
  byId,
  continuous,
  counted,
  onSite,
  stepsOf,
  WHOLE,
  type VariableDefinition
} from './definition';

/** Of its largest plate, the floor or the frame; of one without plates the middle of its first ring. Metres. */
const heightOf = ({ parts }: Pick<Vehicle, 'parts'>): number => {
  const plates = parts.flatMap((part) => (part.kind === 'plate' ? [part] : []));
  const [ring] = parts.flatMap((part) => (part.kind === 'ring' ? [part] : []));
  const largest = plates.reduce<(typeof plates)[number] | undefined>(
    (most, each) => (most && most.width * most.length >= each.width * each.length ? most : each),
    undefined
  );
  return largest?.height ?? ring!.centre[2];
};

const lowestOf = ({ parts }: Pick<Vehicle, 'parts'>): number =>
  Math.min(
    ...parts.map((part) => {
      if (part.kind === 'plate') return part.height;
      const [x, y, z] = part.axis;
      return part.centre[2] - (part.radius * Math.hypot(x, y)) / Math.hypot(x, y, z);
    })
  );

/**
 * All parts by the same difference, so that they keep their places among one another. One of the catalogue gets an own one
 * in its place. A height that was calibrated on the site no longer is.
 */
const withHeight = (site: Site, id: string, height: number): Site => {
  const vehicle = vehicleOf(id, site)!;
  const by = height - heightOf(vehicle);
  const lift = (each: Vehicle): Vehicle => patched<Vehicle>(lifted(each, by), { calibration: undefined });
  if (byId(site.vehicles, id)) return changeVehicle(site, id, lift);
  const own = lift(asOwn(vehicle));
  if (site.vehicles.length >= COUNTS.vehicles || !isSoundVehicle(own)) return site;
  return withList(site, 'vehicles', [...site.vehicles, own]);
};

/** As high as anything on a road is looked at, metres. */
const HIGHEST = 3;

export const vehicleHeight: VariableDefinition = {
  value: ({ site }, { subject }) => {
    const vehicle = vehicleOf(subject ?? '', site);
    return vehicle ? tidyLength(heightOf(vehicle)) : null;
  },
  put: (experiment, { subject }, value) => {
    const vehicle = vehicleOf(subject!, experiment.site)!;
    // nothing of it in the road
    if (lowestOf(vehicle) + value - heightOf(vehicle) < -1e-9) return null;
    return onSite(experiment, withHeight(experiment.site, subject!, value));
  },
  range: ({ site }, { subject }) => {
    const vehicle = vehicleOf(subject!, site)!;
    const height = heightOf(vehicle);
    const isPlated = vehicle.parts.some(({ kind }) => kind === 'plate');
    // a ring may touch the road, as a wheel nearly does
    const clear = Math.max(0, lowestOf(vehicle) - (isPlated ? 2 * BOUNDS.partHeight.min : 0));
    return continuous(...around(tidyLength(height), tidyLength(height - clear), HIGHEST), stepsOf(site).side);
  },
  subjects: (site) => all(vehiclesOf(site))
};

/** To the right of the middle of the way, metres. */
export const offset: VariableDefinition = {
  value: ({ offset_m }) => offset_m,
  put: (experiment, _, value) => ({ ...experiment, offset_m: value }),
  range: ({ site, offset_m }) => continuous(...around(offset_m, -5, 5), stepsOf(site).side),
  subjects: () => WHOLE
};

/** From the middle of the loops along the way, metres. */
export const along: VariableDefinition = {
  value: ({ along_m }) => along_m,
  put: (experiment, _, value) => ({ ...experiment, along_m: value }),
  range: ({ site, along_m }) => continuous(...around(along_m, -15, 15), stepsOf(site).side),
  subjects: () => WHOLE
};

export const shortedTurns: VariableDefinition = {
  value: ({ site, shorted }, { subject }) => {
    if (!byId(site.loops, subject)) return null;
    return shorted?.loop === subject ? shorted.turns : 0;
  },
  put: (experiment, { subject }, value) => {
    if (value < 0 || value > byId(experiment.site.loops, subject)!.turns) return null;
    return { ...experiment, shorted: value === 0 ? null : { loop: subject!, turns: value } };
  },
  range: ({ site }, { subject }) => counted(0, byId(site.loops, subject)!.turns),
  subjects: ({ loops }) => all(loops)
};
