/**
 * How far all parts of a vehicle must be lifted for the model to answer as was measured. The vehicle drives over a circuit
 * along its lane; its strongest response falls with every bit of height, so there is one answer or none.
 *
 * A vehicle that was calibrated before begins from the heights before that. The mesh of a vehicle is made for its height:
 * the height found is solved for again with a mesh of its own until both agree, so that the site with the vehicle lifted
 * says what was measured.
 */
import { BOUNDS } from '#plan/bounds';
import { vehicleOf, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import { lifted, uncalibrated } from '#plan/edits/vehicle-height';
import { tidyLength } from '#plan/edits/tidy';
import type { Loop, Site } from '#plan/schema';
import { clearanceOf, lowestOf, raised } from '../electrical/raised';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import type { Means } from '../means';
import { extentAlong, servedLines } from '../passing/paths';
import { strongestOnPath } from '../passing/strongest';
import { finish, type Steps } from '../steps';
import { solveFalling } from './solve-falling';

export interface HeightWish {
  readonly vehicle: string;
  readonly circuit: string;
  /** ΔL/L at the terminals, negative. */
  readonly measured: number;
  /** To the right of the lane's middle, metres. */
  readonly offset_m: number;
}

export interface HeightAnswer {
  readonly wish: HeightWish;
  /** ΔL/L of the strongest place of the pass, as the vehicle stands in the catalogue or was drawn. */
  readonly before: number;
  /** The same, with the vehicle just clear of the road and with its lowest part 3 m up. */
  readonly strongest: number;
  readonly weakest: number;
  /** Null where no height between these two gives what was measured. */
  readonly found: { readonly raised_m: number; readonly after: number } | null;
}

/** As high as the lowest part is tried, metres. */
const HIGHEST = 3;
/** Of the measured figure; better is not to be had where a finer height changes a mesh. */
const CLOSE_ENOUGH = 2e-5;
/** Rounds of a new mesh each. */
const MOST_ROUNDS = 6;

/** ΔL/L of the strongest place of the pass over the circuit, of every lane that it serves. */
const passOver =
  (solved: SolvedCircuit, loops: readonly Loop[], site: Site, vehicle: CatalogueVehicle, offset: number) =>
  (body: VehicleBody): number => {
    const along = servedLines(loops, site).map((line) => {
      const extents = loops.map((loop) => extentAlong(loop, line));
      return strongestOnPath(solved, body, vehicle, line, offset, extents).deltaLOverL;
    });
    return Math.min(...along);
  };

/** From just clear of the road to its lowest part 3 m up, as far as a document may hold the parts. */
const liftsOf = (body: VehicleBody): readonly [number, number] => {
  const room = BOUNDS.partHeight.max - Math.max(...body.parts.map(({ height }) => height));
  const lowest = Math.min(...body.parts.map(lowestOf));
  return [-clearanceOf(body), Math.max(0, Math.min(room, HIGHEST - lowest))];
};

/** In steps. Null for a vehicle or a circuit that is not there or cannot be wound, and where nothing answers at all. */
export function* calibrateHeightInSteps(
  site: Site,
  wish: HeightWish,
  means: Means
): Steps<HeightAnswer | null> {
  const present = vehicleOf(wish.vehicle, site);
  const surveyed = means.surveyor.survey(site).circuits.get(wish.circuit);
  if (!present || !surveyed) return null;
  const vehicle = uncalibrated(present);
  const pass = passOver(surveyed.solved, surveyed.loops, site, vehicle, wish.offset_m);
  yield;
  const drawn = means.bodies.get(vehicle);
  yield;
  const [down, up] = liftsOf(drawn);
  const before = pass(drawn);
  yield;
  const strongest = Math.min(before, pass(means.bodies.get(lifted(vehicle, down))));
  yield;
  const weakest = Math.max(before, pass(raised(drawn, up)));
  if (!(strongest < 0)) return null;
  yield;
  const { measured } = wish;
  const answer = { wish, before, strongest, weakest };
  if (measured < strongest || measured > weakest) return { ...answer, found: null };

  let lift = 0;
  let best = { raised_m: 0, after: before };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const at = lift;
    const body = at === 0 ? drawn : means.bodies.get(lifted(vehicle, at));
    yield;
    lift = tidyLength(yield* solveFalling((by) => -pass(raised(body, by - at)), -measured, [down, up], at));
    const after = pass(means.bodies.get(lifted(vehicle, lift)));
    yield;
    if (Math.abs(after - measured) < Math.abs(best.after - measured) || round === 0)
      best = { raised_m: lift, after };
    if (Math.abs(best.after - measured) <= CLOSE_ENOUGH * -measured || lift === at) break;
  }
  return { ...answer, found: best };
}

/** The same at once. */
export const calibrateHeight = (...given: Parameters<typeof calibrateHeightInSteps>): HeightAnswer | null =>
  finish(calibrateHeightInSteps(...given));
