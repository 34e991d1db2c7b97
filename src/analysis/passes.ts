/** Vehicles driven over every circuit, and what is kept of it. */
import type { Site } from '#plan/schema';
import { neighbourResponses, vehicleResponses, type PassMeans } from './passing/responses';
import type { Strongest } from './passing/strongest';
import { RecentCache } from './recent-cache';
import type { NeighbourResponse, VehicleResponse } from './results';
import type { Ready } from './ready';
import type { Survey, SurveyedCircuit, Surveyor } from './survey';

export interface Passes {
  readonly responses: readonly VehicleResponse[];
  readonly neighbours: readonly NeighbourResponse[];
  /** They belong to an earlier drawing: those of this one follow. */
  readonly isFollowing: boolean;
}

export interface PassKeeper {
  /** `atOnce`: over steel too, which takes longer than a gesture may. */
  passesOver(surveyed: SurveyedCircuit, survey: Survey, ready: Ready, atOnce: boolean): Passes;
  /** One more step of what `passesOver` left for later; false when nothing is left. */
  followNext(surveyed: SurveyedCircuit, survey: Survey, ready: Ready): boolean;
  isLeft(surveyed: SurveyedCircuit, survey: Survey, ready: Ready): boolean;
  /** Means for passes of other kinds over the same circuit. */
  meansFor(surveyed: SurveyedCircuit, site: Site, given: Pick<PassMeans, 'bodyOf'>): PassMeans;
}

/** By content: whoever drives the same vehicle over the same circuit may share it. */
export interface KeptPasses {
  readonly passes: RecentCache<string, readonly Strongest[]>;
  readonly answers: RecentCache<string, Passes>;
}

export const createKeptPasses = (): KeptPasses => ({
  passes: new RecentCache(20_000),
  answers: new RecentCache(2_000)
});

const NOTHING: Passes = { responses: [], neighbours: [], isFollowing: true };

export const createPassKeeper = (
  { numberOf }: Surveyor,
  { passes, answers }: KeptPasses = createKeptPasses()
): PassKeeper => {
  const last = new Map<string, Passes>();

  const lanes = new WeakMap<Site, number>();
  const lanesOf = (site: Site): number => {
    const known = lanes.get(site);
    if (known !== undefined) return known;
    const number = numberOf(JSON.stringify(site.lanes));
    lanes.set(site, number);
    return number;
  };
  const contextOf = ({ key }: SurveyedCircuit, site: Site): string => `${key} ${lanesOf(site)}`;

  const meansFor = (
    surveyed: SurveyedCircuit,
    site: Site,
    { bodyOf }: Pick<PassMeans, 'bodyOf'>
  ): PassMeans => {
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
  const missing = (surveyed: SurveyedCircuit, site: Site, { bodyOf }: Ready): (() => void) | null => {
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

  const keyOf = (surveyed: SurveyedCircuit, site: Site, ready: Ready): string => {
    const { channel, detect } = surveyed.circuit;
    const asked = JSON.stringify([channel?.tripThreshold, detect, site.vehicles]);
    return `${contextOf(surveyed, site)} ${numberOf(ready.text)} ${asked}`;
  };

  /** The first pass over steel that is still to be made. */
  const left = (surveyed: SurveyedCircuit, site: Site, ready: Ready): (() => void) | null =>
    surveyed.solved.steel === null || answers.has(keyOf(surveyed, site, ready))
      ? null
      : missing(surveyed, site, ready);

  return {
    meansFor,
    passesOver: (surveyed, { site }, ready, atOnce) => {
      const { circuit, solved } = surveyed;
      if (!atOnce && left(surveyed, site, ready))
        return { ...(last.get(circuit.id) ?? NOTHING), isFollowing: true };
      const made = answers.get(keyOf(surveyed, site, ready), () =>
        answer(surveyed, site, meansFor(surveyed, site, ready))
      );
      if (solved.steel) last.set(circuit.id, made);
      return made;
    },
    followNext: (surveyed, { site }, ready) => {
      const next = left(surveyed, site, ready);
      next?.();
      return next !== null;
    },
    isLeft: (surveyed, { site }, ready) => left(surveyed, site, ready) !== null
  };
};

/** Stands for a pass that is still to be made; nobody sees it. */
const UNKNOWN: Strongest = { deltaLOverL: 0, at: [0, 0], heading: 90 };
