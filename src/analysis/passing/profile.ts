/**
 * How every circuit in reach of a way answers to one vehicle that drives along it. Kept by what it follows from, so that an
 * edit of one loop computes its circuit's profiles alone.
 */
import type { CompressedBody } from '#physics/vehicle/compressed';
import type { Placement } from '#physics/field/filaments';
import { reducedAlong, reducedAt } from '#physics/vehicle/reduce';
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import { outlineOf } from '#plan/shapes/index';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { compressedOf } from '../electrical/compressed-bodies';
import { responsesAt, type Range } from '../electrical/many-effects';
import { responsesOneByOne } from '../electrical/one-by-one';
import { boxOf, footprintOf, gapBetween, reachOf, type Footprint, type LoopBox, type Reach } from '../electrical/reach';
import { RecentCache } from '../recent-cache';
import { finish, type Steps } from '../steps';
import type { Survey, SurveyedCircuit } from '../survey';
import type { Profile } from './results';
import { awayOf, COARSER, fillBetween, fineSteps, refined, runsFor, STEP, type Run } from './samples';
import { placeOn, stationOf, type Way } from './way';

export { STEP };

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

/** One loop as a pass sees it. */
interface Passed {
  readonly box: LoopBox;
  readonly reach: Reach;
  readonly from: number;
  readonly to: number;
  readonly isBeside: boolean;
}

const passedBy = (
  { loops, solved }: SurveyedCircuit,
  footprint: Footprint,
  way: Way,
  offset: number
): readonly Passed[] =>
  loops.map(({ shape }, i) => {
    const box = boxOf(solved.input.loops[i]!.model.filaments);
    const reach = reachOf(box, footprint, solved.inductance, loops.length);
    const { from, to, left, right } = extentOn(way, shape);
    const isBeside =
      left - offset > reach.own + footprint.right || offset - right > reach.own - footprint.left;
    return { box, reach, from, to, isBeside };
  });

/** The numbers of a profile's places: `from` metres along the way, `step` metres apart, 0 to `last`. */
interface Grid {
  readonly from: number;
  readonly step: number;
  readonly last: number;
  readonly runs: readonly Run[];
}

const gridFor = (passed: readonly Passed[], footprint: Footprint): Grid => {
  const step = fineSteps(footprint) * STEP;
  const half = Math.max(-footprint.rear, footprint.front);
  const near = passed.filter(({ isBeside }) => !isBeside);
  const least = Math.min(...near.map(({ from, reach }) => from - reach.own)) - half;
  const most = Math.max(...near.map(({ to, reach }) => to + reach.own)) + half;
  const first = Math.floor(least / step);
  const last = COARSER * Math.ceil((Math.ceil(most / step) - first) / COARSER);
  const away = awayOf(footprint) + half;
  const intervals = near.map(
    ({ from, to }) => [(from - away) / step - first, (to + away) / step - first] as const
  );
  return { from: first * step, step, last, runs: runsFor(last, intervals) };
};

/** Where among the places a loop answers. */
const rangeOf = ({ box, reach }: Passed, footprint: Footprint, placements: readonly Placement[]): Range => {
  const isNear = (placement: Placement): boolean => gapBetween(box, footprint, placement) <= reach.field;
  const first = placements.findIndex(isNear);
  return first < 0 ? null : [first, placements.findLastIndex(isNear) + 1];
};

/** All in one line and heading along it, evenly spaced. */
const isRun = (placements: readonly Placement[], spacing: number): boolean => {
  const { x, y, heading } = placements[0]!;
  const [ux, uy] = [Math.cos((heading * Math.PI) / 180), Math.sin((heading * Math.PI) / 180)];
  return placements.every(
    (place, k) =>
      Math.abs(place.x - x - k * spacing * ux) < 1e-7 &&
      Math.abs(place.y - y - k * spacing * uy) < 1e-7 &&
      Math.abs(place.heading - heading) < 1e-6
  );
};

/** Places that are made before others get their turn, of a way that is not straight. */
const A_TURN = 40;

function* compressedSamples(
  solved: SolvedCircuit,
  compressed: CompressedBody,
  passed: readonly Passed[],
  footprint: Footprint,
  grid: Grid,
  placeAt: (along: number) => Placement
): Steps<Float64Array> {
  const samples = new Float64Array(grid.last + 1);
  const isKnown = new Uint8Array(grid.last + 1);
  const spacing = Math.round(grid.step / STEP);
  for (const { from, count, every } of grid.runs) {
    const placements = Array.from({ length: count }, (_, k) =>
      placeAt(grid.from + (from + k * every) * grid.step)
    );
    const straight = isRun(placements, every * grid.step);
    for (let start = 0; start < count; start += straight ? count : A_TURN) {
      const part = straight ? placements : placements.slice(start, start + A_TURN);
      const ranges = passed.map((each) => rangeOf(each, footprint, part));
      const reduced = (loop: number, first: number, to: number): Float64Array => {
        const { filaments } = solved.input.loops[loop]!.model;
        return straight
          ? reducedAlong(compressed, filaments, part[first]!, to - first, every * spacing)
          : reducedAt(compressed, filaments, part.slice(first, to));
      };
      const places = { count: part.length, isRun: true, ranges, rank: compressed.rank, reduced };
      responsesAt(solved, places).forEach((response, k) => {
        samples[from + (start + k) * every] = response;
        isKnown[from + (start + k) * every] = 1;
      });
      yield;
    }
  }
  fillBetween(samples, isKnown, COARSER);
  return samples;
}

function* samplesOneByOne(
  solved: SolvedCircuit,
  body: VehicleBody,
  passed: readonly Passed[],
  footprint: Footprint,
  grid: Grid,
  placeAt: (along: number) => Placement
): Steps<Float64Array> {
  const samples = new Float64Array(grid.last + 1);
  const isKnown = new Uint8Array(grid.last + 1);
  const isNear = (placement: Placement): boolean =>
    passed.some(({ box, reach }) => gapBetween(box, footprint, placement) <= reach.own);
  for (const { from, count, every } of grid.runs) {
    const numbers = Array.from({ length: count }, (_, k) => from + k * every);
    for (const k of numbers) isKnown[k] = 1;
    const near = numbers.filter((k) => isNear(placeAt(grid.from + k * grid.step)));
    const placements = near.map((k) => placeAt(grid.from + k * grid.step));
    const responses = yield* responsesOneByOne(solved, body, placements);
    near.forEach((k, at) => {
      samples[k] = responses[at]!;
    });
  }
  fillBetween(samples, isKnown, COARSER);
  return samples;
}

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
