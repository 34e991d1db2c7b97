/** All pairs of a set of oscillators, rated and counted. */
import type { Site } from '#plan/schema';
import { coupleCircuits } from '../beating/couple';
import { canRunTogether, ratePair } from '../beating/rate';
import type { BeatTank } from '../beating/tank';
import type { BeatVerdict } from '../results';
import type { SurveyMeans } from '../survey';
import type { PlannedPair, PlanState } from './plan';

const WORST_PAIRS = 5;

export const stateOf = (
  tanks: readonly BeatTank[],
  isKept: (circuit: string) => boolean,
  site: Site,
  means: SurveyMeans
): PlanState => {
  const pairs = tanks
    .flatMap((a, i) =>
      tanks
        .slice(i + 1)
        .filter((b) => canRunTogether(a, b))
        .map((b): PlannedPair => {
          const { ratio, verdict } = ratePair(a, b, coupleCircuits(a, b, site, means));
          const [first, second] = [a.circuit.id, b.circuit.id];
          return { a: first, b: second, ratio, verdict, isKept: isKept(first) && isKept(second) };
        })
    )
    .sort((a, b) => b.ratio - a.ratio);
  const count = (verdict: BeatVerdict): number => pairs.filter((pair) => pair.verdict === verdict).length;
  const changeable = pairs.find((pair) => !pair.isKept);
  return {
    worst: pairs.slice(0, WORST_PAIRS),
    verdicts: {
      clear: count('clear'),
      watch: count('watch'),
      'false calls likely': count('false calls likely')
    },
    changeable: changeable ? changeable.ratio : null
  };
};
