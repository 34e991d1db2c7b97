/**
 * What follows the first answer to an edit: passes over steel first, then, circuit by circuit, what is made in several
 * steps. A step is short enough that the next edit does not wait for long.
 */
import { testPlates } from '#plan/catalogue/test-plates';
import { builtInVehicles, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import { classMarginsInSteps } from './classes/class-margins';
import type { BodyStore } from './electrical/bodies';
import type { PassKeeper } from './passes';
import { detectionHeightsInSteps, REFERENCE_VEHICLE } from './passing/detection-height';
import { passReadoutsInSteps } from './passing/pass-readouts';
import type { DetectionHeight, PassReadout } from './passing/results';
import type { Ready } from './ready';
import { RecentCache } from './recent-cache';
import type { CircuitRanges, CircuitReadout, ClassMargin, SteelCost } from './results';
import { steelCost } from './steel-cost';
import { rangesInSteps } from './tolerance/ranges';
import type { Steps } from './steps';
import type { Survey, SurveyedCircuit, Surveyor } from './survey';

type Following = Pick<CircuitReadout, 'ranges' | 'classes' | 'steel'>;

/** What vehicles do path by path. */
interface PassesFollowing {
  readonly passes: readonly PassReadout[];
  readonly detectionHeights: readonly DetectionHeight[];
}

export interface FollowUps {
  /** One more step; false when nothing is left. */
  next(survey: Survey, ready: Ready): boolean;
  isLeft(survey: Survey, ready: Ready): boolean;
  /** What is there already. */
  resultsOf(surveyed: SurveyedCircuit, survey: Survey, ready: Ready): Following;
  /** Null until it is there. */
  passesOf(surveyed: SurveyedCircuit, survey: Survey, ready: Ready): PassesFollowing | null;
}

/** By content, as with passes. */
export interface KeptFollowing {
  readonly ranges: RecentCache<string, CircuitRanges>;
  readonly steel: RecentCache<string, SteelCost | null>;
  readonly classes: RecentCache<string, readonly ClassMargin[]>;
  readonly paths: RecentCache<string, PassesFollowing>;
}

export const createKeptFollowing = (): KeptFollowing => ({
  ranges: new RecentCache(2_000),
  steel: new RecentCache(2_000),
  classes: new RecentCache(2_000),
  paths: new RecentCache(2_000)
});

/** A result that is made in steps; the last step leaves it in the cache. */
interface Task<T> {
  readonly cache: RecentCache<string, T>;
  readonly steps: (surveyed: SurveyedCircuit, survey: Survey, ready: Ready) => Steps<T>;
}

export const createFollowUps = (
  surveyor: Surveyor,
  keeper: PassKeeper,
  bodies: BodyStore,
  kept: KeptFollowing = createKeptFollowing()
): FollowUps => {
  const withoutSteel = new WeakMap<Site, Site>();
  const bareSite = (site: Site): Site => {
    const known = withoutSteel.get(site);
    if (known) return known;
    const bare = { ...site, steel: [] };
    withoutSteel.set(site, bare);
    return bare;
  };

  const steel: Task<SteelCost | null> = {
    cache: kept.steel,
    *steps(surveyed, survey, ready) {
      if (!surveyed.solved.steel) return null;
      const bareSurvey = surveyor.survey(bareSite(survey.site));
      const bare = bareSurvey.circuits.get(surveyed.circuit.id)!;
      const { responses } = keeper.passesOver(surveyed, survey, ready, true);
      yield;
      const { responses: bareResponses } = keeper.passesOver(bare, bareSurvey, ready, true);
      yield;
      const [first] = [...responses.filter(({ wanted }) => wanted), ...responses];
      const body = first && ready.bodyOf({ id: first.vehicle });
      const vehicle = body ? { id: first.vehicle, body } : null;
      return yield* steelCost({ survey, surveyed, bare, responses, bareResponses, vehicle });
    }
  };

  const ranges: Task<CircuitRanges> = {
    cache: kept.ranges,
    *steps(surveyed, survey, ready) {
      const { responses } = keeper.passesOver(surveyed, survey, ready, true);
      const means = {
        numberOf: surveyor.numberOf,
        steel: survey.means.steel,
        bodyOf: ready.bodyOf
      };
      return yield* rangesInSteps(survey.site, surveyed.circuit, surveyed.solved, responses, means);
    }
  };

  const classes: Task<readonly ClassMargin[]> = {
    cache: kept.classes,
    *steps(surveyed, survey, ready) {
      for (const plate of testPlates)
        if (!bodies.has(plate)) {
          bodies.get(plate);
          yield;
        }
      const bodyOf = (vehicle: CatalogueVehicle) => ready.bodyOf(vehicle) ?? bodies.get(vehicle);
      const { circuit, solved, loops } = surveyed;
      const means = keeper.meansFor(surveyed, survey.site, { bodyOf });
      return yield* classMarginsInSteps(circuit, solved, loops, survey.site, means);
    }
  };

  const paths: Task<PassesFollowing> = {
    cache: kept.paths,
    *steps(surveyed, survey, ready) {
      const bodyOf = (vehicle: CatalogueVehicle) => ready.bodyOf(vehicle) ?? bodies.get(vehicle);
      const passes = yield* passReadoutsInSteps(surveyed, survey.site, bodyOf);
      const body = bodies.get(builtInVehicles.find(({ id }) => id === REFERENCE_VEHICLE)!);
      return { passes, detectionHeights: yield* detectionHeightsInSteps(surveyed, survey.site, body) };
    }
  };

  // what most people look at comes first
  const tasks: readonly Task<unknown>[] = [ranges, steel, classes, paths];
  const begun = new Map<string, Steps<unknown>>();

  const givens = new WeakMap<Site, number>();
  const givenOf = (site: Site): number => {
    const known = givens.get(site);
    if (known !== undefined) return known;
    const number = surveyor.numberOf(
      JSON.stringify([site.lanes, site.vehicles, site.tolerances, site.acceptedSteelCost])
    );
    givens.set(site, number);
    return number;
  };
  const keyOf = ({ circuit, key }: SurveyedCircuit, { site }: Survey, ready: Ready): string => {
    const { channel, detect } = circuit;
    const asked = JSON.stringify([channel?.tripThreshold, channel?.releaseRatio, detect]);
    return `${key} ${givenOf(site)} ${asked} ${ready.text}`;
  };

  /** The first task without a result, of the circuits in order. */
  const missing = (survey: Survey, ready: Ready) => {
    for (const surveyed of survey.circuits.values()) {
      const key = keyOf(surveyed, survey, ready);
      const task = tasks.findIndex(({ cache }) => !cache.has(key));
      if (task >= 0) return { surveyed, key, task: tasks[task]!, name: `${task} ${key}` };
    }
    return null;
  };

  const next = (survey: Survey, ready: Ready): boolean => {
    for (const surveyed of survey.circuits.values())
      if (keeper.followNext(surveyed, survey, ready)) return true;
    const found = missing(survey, ready);
    if (!found) {
      begun.clear();
      return false;
    }
    const { surveyed, key, task, name } = found;
    const steps = begun.get(name) ?? task.steps(surveyed, survey, ready);
    begun.set(name, steps);
    const step = steps.next();
    if (step.done) {
      task.cache.get(key, () => step.value);
      begun.delete(name);
    }
    return true;
  };

  return {
    next,
    isLeft: (survey, ready) =>
      missing(survey, ready) !== null ||
      [...survey.circuits.values()].some((each) => keeper.isLeft(each, survey, ready)),
    resultsOf: (surveyed, survey, ready) => {
      const key = keyOf(surveyed, survey, ready);
      return {
        ranges: ranges.cache.peek(key) ?? null,
        classes: classes.cache.peek(key) ?? null,
        steel: steel.cache.peek(key) ?? null
      };
    },
    passesOf: (surveyed, survey, ready) => {
      const found = paths.cache.peek(keyOf(surveyed, survey, ready));
      if (!found) return null;
      // equal circuits share what is kept
      const of = <T extends { readonly circuit: string }>(each: T): T => ({
        ...each,
        circuit: surveyed.circuit.id
      });
      return { passes: found.passes.map(of), detectionHeights: found.detectionHeights.map(of) };
    }
  };
};
