/**
 * How every circuit in reach of a way answers to one vehicle that drives along it. The response is smooth on the scale of
 * the vehicle's height above the road: it is computed at places that lie closer than that and interpolated between.
 */
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import { outlineOf } from '#plan/shapes/index';
import type { VehicleBody } from '../electrical/bodies';
import { vehicleEffect } from '../electrical/vehicle-effect';
import type { Survey, SurveyedCircuit } from '../survey';
import type { Profile } from './results';
import { placeOn, stationOf, type Way } from './way';

/** Metres between the values of a profile. */
export const STEP = 0.05;
/** Between the places that are computed. */
const SAMPLE = 0.1;
const PER_SAMPLE = Math.round(SAMPLE / STEP);
/** Beyond the vehicle's body the response of a loop is followed for this far, and a loop this far beside is left out, metres. */
const FOLLOWED = 4;
const BESIDE = 8;

/** Along a way, where a loop lies and how far beside it comes nearest. */
export const extentOn = (way: Way, loop: Parameters<typeof outlineOf>[0]) => {
  const stations = outlineOf(loop).map((point) => stationOf(way, point));
  const along = stations.map((each) => each.along);
  const beside = stations.map((each) => each.offset);
  return {
    from: Math.min(...along),
    to: Math.max(...along),
    right: Math.max(...beside),
    left: Math.min(...beside)
  };
};

const isBeside = ({ left, right }: { left: number; right: number }, offset: number): boolean =>
  left - offset > BESIDE || offset - right > BESIDE;

/** Between samples a line through four of them, along Lagrange's cubic; outside them it falls to nothing. */
const refined = (samples: Float64Array): Float64Array => {
  const values = new Float64Array((samples.length - 1) * PER_SAMPLE + 1);
  for (let k = 0; k < values.length; k++) {
    const at = Math.floor(k / PER_SAMPLE);
    const t = (k % PER_SAMPLE) / PER_SAMPLE;
    if (t === 0) {
      values[k] = samples[at]!;
      continue;
    }
    const [a, b, c, d] = [samples[at - 1] ?? 0, samples[at]!, samples[at + 1]!, samples[at + 2] ?? 0];
    values[k] =
      (-a * t * (t - 1) * (t - 2)) / 6 +
      (b * (t + 1) * (t - 1) * (t - 2)) / 2 -
      (c * (t + 1) * t * (t - 2)) / 2 +
      (d * (t + 1) * t * (t - 1)) / 6;
  }
  return values;
};

/** Null for a circuit out of reach. */
export const profileOver = (
  surveyed: SurveyedCircuit,
  vehicle: CatalogueVehicle,
  body: VehicleBody,
  way: Way,
  offset: number
): Profile | null => {
  const extents = surveyed.loops
    .map(({ shape }) => extentOn(way, shape))
    .filter((extent) => !isBeside(extent, offset));
  if (extents.length === 0) return null;
  const reach = vehicle.bodyLength / 2 + FOLLOWED;
  const from = Math.floor((Math.min(...extents.map((each) => each.from)) - reach) / SAMPLE) * SAMPLE;
  const to = Math.max(...extents.map((each) => each.to)) + reach;
  const count = Math.ceil((to - from) / SAMPLE) + 1;
  const samples = Float64Array.from({ length: count }, (_, k) =>
    Math.max(
      0,
      -vehicleEffect(surveyed.solved, body, placeOn(way, from + k * SAMPLE, offset, vehicle.bodyLength))
    )
  );
  return { circuit: surveyed.circuit.id, vehicle: vehicle.id, from, step: STEP, values: refined(samples) };
};

/** Of every circuit in reach. */
export const profilesAlong = (
  survey: Survey,
  vehicle: CatalogueVehicle,
  body: VehicleBody,
  way: Way,
  offset: number
): readonly Profile[] =>
  [...survey.circuits.values()].flatMap((surveyed) => {
    const profile = profileOver(surveyed, vehicle, body, way, offset);
    return profile ? [profile] : [];
  });
