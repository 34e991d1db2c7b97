/** Vehicles driven over every circuit, and what is kept of it. */
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import type { VehicleBody } from './electrical/bodies';
import { neighbourResponses, vehicleResponses, type PassMeans } from './passing/responses';
import type { Strongest } from './passing/strongest';
import { RecentCache } from './recent-cache';
import type { NeighbourResponse, VehicleResponse } from './results';
import type { Survey, SurveyedCircuit, Surveyor } from './survey';

export interface Passes {
  readonly responses: readonly VehicleResponse[];
  readonly neighbours: readonly NeighbourResponse[];
  /** They belong to an earlier drawing: those of this one follow. */
  readonly isFollowing: boolean;
}

type BodyOf = (vehicle: CatalogueVehicle) => VehicleBody | null;

export interface PassKeeper {
  /** `atOnce`: over steel too, which takes longer than a gesture may. */
  passesOver(
    surveyed: SurveyedCircuit,
    survey: Survey,
    bodyOf: BodyOf,
    ready: string,
    atOnce: boolean
  ): Passes;
  /** One more step of what `passesOver` left for later; false when nothing is left. */
  followNext(surveyed: SurveyedCircuit, survey: Survey, bodyOf: BodyOf): boolean;
  /** Means for passes of other kinds over the same circuit. */
  meansFor(surveyed: SurveyedCircuit, site: Site, bodyOf: BodyOf): PassMeans;
}

const NOTHING: Passes = { responses: [], neighbours: [], isFollowing: true };

export const createPassKeeper = ({ numberOf }: Surveyor): PassKeeper => {
  const passes = new RecentCache<string, readonly Strongest[]>(20_000);
  const answers = new RecentCache<string, Passes>(2_000);
  const last = new Map<string, Passes>();

  const contextOf = ({ key }: SurveyedCircuit, site: Site): string =>
    `${key} ${numberOf(JSON.stringify(site.lanes))}`;

  const meansFor = (surveyed: SurveyedCircuit, site: Site, bodyOf: BodyOf): PassMeans => {
    const context = contextOf(surveyed, site);
    return {
      bodyOf,
      remember: (what, make) => passes.get(`${context} ${what}`, make)
    };
  };

  const answer = (surveyed: SurveyedCircuit, site: Site, means: PassMeans): Passes => ({
    responses: vehicleResponses(surveyed.circuit, surveyed.solved, surveyed.loops, site, means),
    neighbours: neighbourResponses(surveyed.solved, surveyed.loops, site, means),
    isFollowing: false
  });

  /** Whether every pass is kept, and the first that is not. */
  const missing = (surveyed: SurveyedCircuit, site: Site, bodyOf: BodyOf): (() => void) | null => {
    const context = contextOf(surveyed, site);
    let first: (() => void) | null = null;
    answer(surveyed, site, {
      bodyOf,
      remember: (what, make) => {
        const key = `${context} ${what}`;
        const known = passes.peek(key);
        if (known) return known;
        first ??= () => {
          passes.get(key, make);
        };
        return [UNKNOWN];
      }
    });
    return first;
  };

  return {
    meansFor,
    passesOver: (surveyed, survey, bodyOf, ready, atOnce) => {
      const { site } = survey;
      const { circuit, solved } = surveyed;
      const asked = JSON.stringify([circuit.channel?.tripThreshold, circuit.detect, site.vehicles]);
      const key = `${contextOf(surveyed, site)} ${numberOf(ready)} ${asked}`;
      const known = answers.peek(key);
      if (!known && solved.steel && !atOnce && missing(surveyed, site, bodyOf))
        return { ...(last.get(circuit.id) ?? NOTHING), isFollowing: true };
      const made = known ?? answers.get(key, () => answer(surveyed, site, meansFor(surveyed, site, bodyOf)));
      last.set(circuit.id, made);
      return made;
    },
    followNext: (surveyed, { site }, bodyOf) => {
      if (!surveyed.solved.steel) return false;
      const next = missing(surveyed, site, bodyOf);
      next?.();
      return next !== null;
    }
  };
};

/** Stands for a pass that is still to be made; nobody sees it. */
const UNKNOWN: Strongest = { deltaLOverL: 0, at: [0, 0], heading: 90 };
