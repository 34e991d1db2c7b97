/**
 * How every circuit in reach of a way answers to one vehicle that drives along it. Kept by what it follows from, so that an
 * edit of one loop computes its circuit's profiles alone.
 */
import type { Placement } from '#physics/field/filaments';
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { compressedOf } from '../electrical/compressed-bodies';
import { footprintOf } from '../electrical/reach';
import { RecentCache } from '../recent-cache';
import { finish, type Steps } from '../steps';
import type { Survey, SurveyedCircuit } from '../survey';
import { gridFor, passedBy } from './grid';
import { compressedSamples, samplesOneByOne } from './pass-samples';
import type { Profile } from './results';
import { refined, STEP } from './samples';
import { placeOn, type Way } from './way';

export { extentOn } from './grid';
export { STEP };

type Curve = Pick<Profile, 'from' | 'values'> | null;

function* curveOver(
  surveyed: SurveyedCircuit,
  vehicle: CatalogueVehicle,
  body: VehicleBody,
  way: Way,
  offset: number
): Steps<Curve> {
  const { solved } = surveyed;
  const footprint = footprintOf(body.parts);
  const passed = passedBy(surveyed, footprint, way, offset);
  if (passed.every(({ isBeside }) => isBeside)) return null;
  const grid = gridFor(passed, footprint);
  const placeAt = (along: number): Placement => placeOn(way, along, offset, vehicle.bodyLength);
  const compressed = solved.steel ? null : yield* compressedOf(body);
  const samples = compressed
    ? yield* compressedSamples(solved, compressed, passed, footprint, grid, placeAt)
    : yield* samplesOneByOne(solved, body, passed, footprint, grid, placeAt);
  const values = refined(samples, Math.round(grid.step / STEP));
  return { from: grid.from, values: values.map((value) => Math.max(0, value)) };
}

/** Of one vehicle: more than a page of circuits on a few paths. */
const MOST_CURVES = 400;
const curves = new WeakMap<VehicleBody, RecentCache<string, { readonly curve: Curve }>>();
const numbers = new WeakMap<SolvedCircuit, number>();
let nextNumber = 1;

/** A drawing that is surveyed again has the same solution where nothing of it was touched. */
const numberOf = (solved: SolvedCircuit): number => {
  const known = numbers.get(solved);
  if (known !== undefined) return known;
  numbers.set(solved, nextNumber);
  return nextNumber++;
};

const wayTexts = new WeakMap<Way, string>();
const textOf = (way: Way): string => {
  const known = wayTexts.get(way);
  if (known !== undefined) return known;
  const text = JSON.stringify(way.points);
  wayTexts.set(way, text);
  return text;
};

/** Null for a circuit out of reach. */
export function* profileInSteps(
  surveyed: SurveyedCircuit,
  vehicle: CatalogueVehicle,
  body: VehicleBody,
  way: Way,
  offset: number
): Steps<Profile | null> {
  const ofBody = curves.get(body) ?? new RecentCache<string, { readonly curve: Curve }>(MOST_CURVES);
  curves.set(body, ofBody);
  const key = `${numberOf(surveyed.solved)} ${vehicle.bodyLength} ${offset} ${textOf(way)}`;
  const made = ofBody.peek(key) ?? { curve: yield* curveOver(surveyed, vehicle, body, way, offset) };
  const { curve } = ofBody.get(key, () => made);
  return curve && { circuit: surveyed.circuit.id, vehicle: vehicle.id, step: STEP, ...curve };
}

export const profileOver = (...given: Parameters<typeof profileInSteps>): Profile | null =>
  finish(profileInSteps(...given));

/** Of every circuit in reach. */
export function* profilesInSteps(
  survey: Survey,
  vehicle: CatalogueVehicle,
  body: VehicleBody,
  way: Way,
  offset: number
): Steps<readonly Profile[]> {
  const profiles: Profile[] = [];
  for (const surveyed of survey.circuits.values()) {
    const profile = yield* profileInSteps(surveyed, vehicle, body, way, offset);
    if (profile) profiles.push(profile);
  }
  return profiles;
}

export const profilesAlong = (...given: Parameters<typeof profilesInSteps>): readonly Profile[] =>
  finish(profilesInSteps(...given));
