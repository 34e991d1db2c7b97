/** Remedies of every pair that is not clear, made in steps, the worst pair first, and kept until anything changes. */
import { RecentCache } from '../recent-cache';
import type { Remedy } from '../results';
import type { Steps } from '../steps';
import type { Surveyor } from '../survey';
import type { remediesInSteps } from './remedies/index';
import type { BeatScene, RatedPair } from './scene';

export interface RemedyKeeper {
  /** One more step; false when nothing is left, or nothing is there to find remedies with. */
  next(scene: BeatScene): boolean;
  isLeft(scene: BeatScene): boolean;
  /** Null until computed. */
  of(scene: BeatScene, pair: RatedPair): readonly Remedy[] | null;
}

const NONE: readonly Remedy[] = [];

/** By content, as with passes. */
export type KeptRemedies = RecentCache<string, readonly Remedy[]>;

export const createKeptRemedies = (): KeptRemedies => new RecentCache(5_000);

/** `search`: null until it is there. */
export const createRemedyKeeper = (
  surveyor: Surveyor,
  search: () => typeof remediesInSteps | null,
  cache: KeptRemedies
): RemedyKeeper => {
  const begun = new Map<string, Steps<readonly Remedy[]>>();
  const keys = new WeakMap<BeatScene, number>();

  /** A remedy is judged by what it does to the others: whatever tunes or couples one of them counts. */
  const sceneKey = (scene: BeatScene): number => {
    const known = keys.get(scene);
    if (known !== undefined) return known;
    const { survey, tanks, responsesOf } = scene;
    const text = JSON.stringify([
      tanks.map(({ circuit, channel, sweep }) => [
        circuit.id,
        survey.circuits.get(circuit.id)!.key,
        channel,
        sweep,
        responsesOf(circuit.id).map(({ vehicle, worst, wanted }) => [vehicle, worst, wanted])
      ]),
      survey.site.units,
      survey.site.conduits,
      survey.site.steel
    ]);
    const number = surveyor.numberOf(text);
    keys.set(scene, number);
    return number;
  };
  const keyOf = (scene: BeatScene, { pair }: RatedPair): string =>
    `${sceneKey(scene)} ${JSON.stringify([pair.a, pair.b])}`;

  const missing = (scene: BeatScene): RatedPair | null => {
    let worst: RatedPair | null = null;
    for (const rated of scene.pairs) {
      if (rated.pair.verdict === 'clear' || (worst && rated.pair.ratio <= worst.pair.ratio)) continue;
      if (!cache.has(keyOf(scene, rated))) worst = rated;
    }
    return worst;
  };

  return {
    next(scene) {
      const rated = missing(scene);
      const find = search();
      if (!rated || !find) {
        begun.clear();
        return false;
      }
      const { survey, tanks, responsesOf } = scene;
      const key = keyOf(scene, rated);
      const steps = begun.get(key) ?? find({ surveyor, survey, tanks, responsesOf, ...rated });
      begun.set(key, steps);
      const step = steps.next();
      if (step.done) {
        cache.get(key, () => step.value);
        begun.delete(key);
      }
      return true;
    },
    isLeft: (scene) => missing(scene) !== null,
    of: (scene, rated) => (rated.pair.verdict === 'clear' ? NONE : (cache.peek(keyOf(scene, rated)) ?? null))
  };
};
