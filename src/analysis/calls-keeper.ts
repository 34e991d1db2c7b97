/** What the drawing's own traffic comes to, kept as long as nothing that it depends on changes. */
import type { CallSummary } from './calls/results';
import type { CallSimulator } from './calls/simulate';
import { RecentCache } from './recent-cache';
import type { Steps } from './steps';
import type { Survey, Surveyor } from './survey';

export interface CallKeeper {
  /** Null until it is there, and without traffic. */
  of(survey: Survey): readonly CallSummary[] | null;
  isLeft(survey: Survey): boolean;
  /** One more step; false when nothing is left, or nothing is there to simulate with. */
  next(survey: Survey): boolean;
}

/** By content, as with passes. */
export type KeptCalls = RecentCache<number, readonly CallSummary[]>;

export const createKeptCalls = (): KeptCalls => new RecentCache(200);

/** `simulator`: null until it is there. */
export const createCallKeeper = (
  { numberOf }: Surveyor,
  simulator: () => CallSimulator | null,
  kept: KeptCalls = createKeptCalls()
): CallKeeper => {
  let begun: { readonly key: number; readonly steps: Steps<readonly CallSummary[]> } | null = null;

  const keys = new WeakMap<Survey, number>();
  const keyOf = (survey: Survey): number => {
    const known = keys.get(survey);
    if (known !== undefined) return known;
    const { traffic, lanes, vehicles } = survey.site;
    // one on no circuit counts too: traffic is followed past the last loop
    const loops = survey.site.loops.map(({ id, shape }) => [id, shape]);
    const circuits = [...survey.circuits.values()].map(({ key, circuit }) => [
      key,
      circuit.id,
      circuit.channel
    ]);
    const key = numberOf(`calls ${JSON.stringify([traffic, lanes, vehicles, loops, circuits])}`);
    keys.set(survey, key);
    return key;
  };

  function* summaries({ simulate }: CallSimulator, { site }: Survey): Steps<readonly CallSummary[]> {
    const picture = yield* simulate(site, {});
    return picture?.channels.map(({ summary }) => summary) ?? [];
  }

  const isLeft = (survey: Survey): boolean => survey.site.traffic !== undefined && !kept.has(keyOf(survey));

  return {
    of: (survey) => (survey.site.traffic ? (kept.peek(keyOf(survey)) ?? null) : null),
    isLeft,
    next: (survey) => {
      const has = simulator();
      if (!has || !isLeft(survey)) {
        begun = null;
        return false;
      }
      const key = keyOf(survey);
      if (begun?.key !== key) begun = { key, steps: summaries(has, survey) };
      const step = begun.steps.next();
      if (step.done) {
        kept.get(key, () => step.value);
        begun = null;
      }
      return true;
    }
  };
};
