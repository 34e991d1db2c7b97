/**
 * Two faults at once, looked at only where no single cause explains the readings: to each of the best single ones every
 * other is added at a few places of its unknowns, and the pairs that come nearest are gone into.
 */
import type { Hypothesis } from '../forward/contract';
import type { Steps } from '../../steps';
import { isStrange } from './apart-from-numbers';
import type { Seen } from './likelihood';
import { SECOND_FAULT } from './priors';
import type { Scene } from './scene';
import { faultsAt, likeliest, suspectOf, type Suspect } from './suspect';

/** Single causes that a second one is added to. */
const FIRSTS = 5;
const PAIRS = 6;
/** Places of a second one's unknowns at which it is tried. */
const MOST_TRIALS = 8;
/** Nats that slips had to explain. */
const SLIPPED = 2;

/** Misfit no larger than chance makes it but once in some thousand, and nothing that took a slip. */
const isExplained = (
  { observed }: Scene,
  { misfit, numbers, logLikelihood, logNormal, predicted }: Seen
): boolean => {
  const count = Math.max(1, numbers.length);
  return (
    misfit < count + 3 * Math.sqrt(2 * count) + 3 &&
    logLikelihood - logNormal < SLIPPED &&
    !observed.some((each, k) => isStrange(each, predicted[k]!))
  );
};

/** An even pick of all combinations of the values. */
const trialsOf = ({ unknowns }: Hypothesis): readonly (readonly number[])[] => {
  const all = unknowns.reduce<readonly (readonly number[])[]>(
    (rows, { values }) => rows.flatMap((row) => values.map((value) => [...row, value])),
    [[]]
  );
  const step = Math.max(1, Math.ceil(all.length / MOST_TRIALS));
  return all.filter((_, k) => k % step === Math.floor(step / 2));
};

export const logPriorOfPair = (
  pair: readonly Hypothesis[],
  logPrior: (hypothesis: Hypothesis) => number
): number => pair.reduce((sum, each) => sum + logPrior(each), Math.log(SECOND_FAULT));

/** Looked at roughly. */
export function* pairsOf(
  scene: Scene,
  hypotheses: readonly Hypothesis[],
  singles: readonly Suspect[],
  logPrior: (hypothesis: Hypothesis) => number
): Steps<readonly Suspect[]> {
  const known = singles.filter(({ isUnknown }) => !isUnknown);
  const best = known.reduce((a, b) => (a.logMass > b.logMass ? a : b));
  if (isExplained(scene, likeliest(best).look)) return [];
  const firsts = known
    .filter((single) => single.hypotheses.length === 1)
    .sort((a, b) => b.logMass - a.logMass)
    .slice(0, FIRSTS);
  const found: { readonly pair: readonly Hypothesis[]; readonly score: number }[] = [];
  const seen = new Set<string>();
  for (const first of firsts) {
    const one = first.hypotheses[0]!;
    const at = likeliest(first).values;
    for (const other of hypotheses) {
      const names = [one, other].map(({ kind, subject }) => `${kind} ${subject}`).sort();
      // two variants of one fault are no two faults
      if (names[0] === names[1] || seen.has(names.join())) continue;
      seen.add(names.join());
      const scores = trialsOf(other).map(
        (values) => scene.look(faultsAt([one, other], [...at, ...values]), 'rough').logLikelihood
      );
      found.push({ pair: [one, other], score: Math.max(...scores) + logPrior(one) + logPrior(other) });
    }
    yield 0.7;
  }
  found.sort((a, b) => b.score - a.score);
  const pairs: Suspect[] = [];
  for (const { pair } of found.slice(0, PAIRS)) {
    pairs.push(suspectOf(scene, pair, logPriorOfPair(pair, logPrior), 'rough'));
    yield 0.8;
  }
  return pairs;
}

/** Nats by which a second fault has to make the readings likelier for being claimed. */
const WORTH_A_SECOND = 3;

const bestOf = ({ particles }: Suspect): number =>
  Math.max(...particles.map(({ look }) => look.logLikelihood));

/** Whether each of its two faults explains something that the other one alone does not. */
export const isWorthAPair = (pair: Suspect, singles: readonly Suspect[]): boolean => {
  const alone = singles.filter(({ hypotheses: [only, ...others] }) =>
    only && others.length === 0
      ? pair.hypotheses.some(({ kind, subject }) => kind === only.kind && subject === only.subject)
      : false
  );
  return alone.every((single) => bestOf(pair) > bestOf(single) + WORTH_A_SECOND);
};
