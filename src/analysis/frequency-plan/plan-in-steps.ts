/**
 * A setting for every channel of a drawing so that the worst ratio of all pairs that can run together is smallest. Pinned
 * channels and given frequencies stay. In steps: every channel on every setting that it may have, every two of them rated,
 * then the search.
 */
import type { Site } from '#plan/schema';
import { WATCH_FROM } from '../beating/rate';
import type { Deepest } from '../beating/tank';
import { finish, type Steps } from '../steps';
import { createSurveyor } from '../survey';
import { createOfferMaker, tuningOf, type Offer } from './offers';
import type { FrequencyPlan, PlannedChannel, PlanWish } from './plan';
import type { PlanProblem } from './problem';
import { searchPlan } from './search';
import { stateOf } from './state';
import { pairTables } from './tables';

/** Shares of the whole after which each part is done. */
const SOLVED = 0.3;
const RATED = 0.6;

/** Clear, with a fifth to spare. */
const ENOUGH = 0.8 * WATCH_FROM;

const NO_SHIFT: Deepest = { deltaLOverL: 0, vehicle: null };

export type FrequencyPlanner = (site: Site, wish: PlanWish) => Steps<FrequencyPlan>;

/** Keeps what it has solved: the same drawing with another channel pinned is planned quickly. */
export const createFrequencyPlanner = (): FrequencyPlanner => {
  const surveyor = createSurveyor();
  const offerOf = createOfferMaker();

  return function* (site, { aim, shifts }) {
    const survey = surveyor.survey(site);
    const offers: Offer[] = [];
    for (const [k, circuit] of site.circuits.entries()) {
      const offer = offerOf(circuit, survey, shifts[circuit.id] ?? NO_SHIFT);
      if (offer) offers.push(offer);
      yield (SOLVED * (k + 1)) / site.circuits.length;
    }
    // a channel that does not oscillate disturbs nobody
    const tuned = offers.filter(({ tanks }) => tanks.length > 0);
    const rating = pairTables(
      tuned.map(({ tanks }) => tanks),
      site,
      survey.means
    );
    const problem: PlanProblem = {
      choices: tuned.map(({ tanks }) => tanks.length),
      present: tuned.map(({ present }) => present),
      pairs: yield* within(rating, SOLVED, RATED),
      ranks: tuned.map(({ tanks }) => tanks.map(({ sweep }) => sweep.rest_Hz))
    };
    const wishes = { calm: WATCH_FROM, enough: aim === 'fewest changes' ? ENOUGH : 0 };
    const { plan, worst, isProven, lowerBound, nodes } = yield* within(searchPlan(problem, wishes), RATED, 1);
    const chosen = new Map(tuned.map((offer, k) => [offer, offer.tanks[plan[k]!]!]));
    const isKept = (id: string): boolean =>
      offers.some(({ channel }) => channel.circuit === id && channel.kept !== null);
    return {
      channels: offers.map((offer): PlannedChannel => {
        const tank = chosen.get(offer);
        return { ...offer.channel, after: tank ? tuningOf(tank) : offer.channel.before };
      }),
      before: stateOf(
        offers.flatMap(({ now }) => now ?? []),
        isKept,
        site,
        survey.means
      ),
      after: stateOf([...chosen.values()], isKept, site, survey.means),
      smallest: worst,
      isProven,
      lowerBound,
      nodes
    };
  };
};

/** The same at once. */
export const planFrequencies = (site: Site, wish: PlanWish): FrequencyPlan =>
  finish(createFrequencyPlanner()(site, wish));

/** Steps whose shares are a part of the whole. */
function* within<T>(steps: Steps<T>, from: number, to: number): Steps<T> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield typeof step.value === 'number' ? from + (to - from) * step.value : undefined;
  }
}
