/** Which causes explain the readings, and how likely each is: every single one, and two at once where no single one does. */
import { USUAL_METER_FREQUENCY } from '#plan/catalogue/instruments';
import type { Hypothesis } from '../forward/contract';
import type { CauseKind } from '../results';
import type { Steps } from '../../steps';
import { logSum } from './normal';
import { isWorthAPair, logPriorOfPair, pairsOf } from './pairs';
import { KIND_WEIGHTS } from './priors';
import type { Scene } from './scene';
import { suspectOf, type Suspect } from './suspect';
import { unmodelled } from './unmodelled';

/** ln of the prior of each hypothesis, of "nothing wrong" and of "something else". */
export const logPriorsOf = (
  hypotheses: readonly Hypothesis[],
  isCommissioning: boolean
): ((hypothesis: Pick<Hypothesis, 'kind'>) => number) => {
  const counts = new Map<CauseKind, number>([
    ['nothing wrong', 1],
    ['something else', 1]
  ]);
  for (const { kind } of hypotheses) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const weightOf = (kind: CauseKind): number =>
    KIND_WEIGHTS[kind][isCommissioning ? 'commissioning' : 'later'];
  const all = [...counts.keys()].reduce((sum, kind) => sum + weightOf(kind), 0);
  return ({ kind }) => Math.log(weightOf(kind) / (counts.get(kind) ?? 1) / all);
};

/** A meter is only wrong where it does not measure at what it says. */
const SAME = 0.02;

/** Without values that change nothing here. */
const sensible = (hypothesis: Hypothesis, { observed }: Scene): Hypothesis => {
  if (hypothesis.kind !== 'wrong meter frequency') return hypothesis;
  const stated = observed
    .filter(({ asked }) => asked.testPoint !== 'unit')
    .map(({ asked }) => asked.meterFrequency_Hz ?? USUAL_METER_FREQUENCY);
  return {
    ...hypothesis,
    unknowns: hypothesis.unknowns.map((unknown) => {
      const kept = unknown.values.map((value) => !stated.some((each) => Math.abs(value / each - 1) < SAME));
      return {
        ...unknown,
        values: unknown.values.filter((_, k) => kept[k]),
        weights: unknown.weights.filter((_, k) => kept[k])
      };
    })
  };
};

export interface Posterior {
  /** The likeliest first. */
  readonly suspects: readonly (Suspect & { readonly probability: number })[];
}

/** Nats behind the likeliest cause within which a rough look does not do. */
const CLOSE = 14;

/** Those that may count looked at exactly. */
function* withCare(
  scene: Scene,
  rivals: readonly Suspect[],
  suspects: readonly Suspect[],
  logPriorOf: (suspect: Suspect) => number
): Steps<readonly Suspect[]> {
  const best = Math.max(...[...rivals, ...suspects].map(({ logMass }) => logMass));
  const careful: Suspect[] = [];
  for (const suspect of suspects) {
    const isWorthIt = suspect.hypotheses.length > 0 && suspect.logMass > best - CLOSE;
    careful.push(isWorthIt ? suspectOf(scene, suspect.hypotheses, logPriorOf(suspect), 'exact') : suspect);
    if (isWorthIt) yield 0.6;
  }
  return careful;
}

/** In slices of one cause each. */
export function* posteriorOf(scene: Scene, isCommissioning: boolean): Steps<Posterior> {
  const hypotheses = scene.prepared.hypotheses.map((each) => sensible(each, scene));
  const logPrior = logPriorsOf(hypotheses, isCommissioning);
  const rough: Suspect[] = [
    suspectOf(scene, [], logPrior({ kind: 'nothing wrong' }), 'exact'),
    unmodelled(scene, logPrior({ kind: 'something else' }))
  ];
  for (const [done, hypothesis] of hypotheses.entries()) {
    rough.push(suspectOf(scene, [hypothesis], logPrior(hypothesis), 'rough'));
    yield (0.5 * (done + 1)) / hypotheses.length;
  }
  const singles = yield* withCare(scene, [], rough, (suspect) => logPrior(suspect.hypotheses[0]!));
  const pairs = yield* withCare(
    scene,
    singles,
    yield* pairsOf(scene, hypotheses, singles, logPrior),
    (pair) => logPriorOfPair(pair.hypotheses, logPrior)
  );
  const suspects = [...singles, ...pairs.filter((pair) => isWorthAPair(pair, singles))];
  const total = logSum(suspects.map(({ logMass }) => logMass));
  return {
    suspects: suspects
      .map((each) => ({ ...each, probability: Math.exp(each.logMass - total) }))
      .sort((a, b) => b.probability - a.probability)
  };
}
