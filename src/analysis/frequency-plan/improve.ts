/**
 * A plan made better step by step: one channel at a time, and two at a time where the worst pairs are. Better is the plan
 * whose worst ratio is smaller, or the next worst where that is equal, and so on; then the one that changes fewer
 * channels. No proof that nothing better exists.
 */
import { pairsByChannel, ratioOf, type Plan, type PlanProblem } from './problem';

export interface Aim {
  /** Ratios up to this are as good as 0. */
  readonly calm: number;
  /** No ratio may become larger than this. */
  readonly cap: number;
  /** How often the worst pairs are looked at, two channels at a time. */
  readonly rounds: number;
}

/** Of the pairs over `calm`, so many are looked at two channels at a time. */
const WORST_PAIRS = 4;

const descending = (values: number[]): number[] => values.sort((a, b) => b - a);

/** Under 0 when the first list of ratios, the largest first, is better. */
const compare = (a: readonly number[], b: readonly number[]): number => {
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return a[k]! - b[k]!;
  return 0;
};

export function* improve(
  problem: PlanProblem,
  start: Plan,
  { calm, cap, rounds }: Aim
): Generator<void, Plan> {
  const { choices, pairs, present } = problem;
  const lists = pairsByChannel(problem);
  const plan = [...start];
  const changesOf = (channels: readonly number[]): number =>
    channels.reduce((count, channel) => count + Number(plan[channel] !== present[channel]), 0);

  /** What counts of the given pairs, the largest first; null when one is larger than `most`. */
  const ratiosOf = (list: readonly number[], most: number): number[] | null => {
    const ratios: number[] = [];
    for (const at of list) {
      const ratio = ratioOf(problem, pairs[at]!, plan);
      if (ratio > most) return null;
      ratios.push(Math.max(ratio, calm));
    }
    return descending(ratios);
  };

  /** Leaves the channels on the best of all their choices together; whether that is better than what they had. */
  const settle = (channels: readonly number[]): boolean => {
    const list = [...new Set(channels.flatMap((channel) => lists[channel]!))];
    const before = channels.map((channel) => plan[channel]!);
    let best = before;
    let bestRatios = ratiosOf(list, Infinity)!;
    let bestChanges = changesOf(channels);
    const tryAll = (k: number): void => {
      if (k < channels.length) {
        for (let choice = 0; choice < choices[channels[k]!]!; choice++) {
          plan[channels[k]!] = choice;
          tryAll(k + 1);
        }
        return;
      }
      const ratios = ratiosOf(list, Math.min(cap, Math.max(calm, bestRatios[0] ?? 0)));
      if (!ratios) return;
      const order = compare(ratios, bestRatios) || changesOf(channels) - bestChanges;
      if (order >= 0) return;
      best = channels.map((channel) => plan[channel]!);
      bestRatios = ratios;
      bestChanges = changesOf(channels);
    };
    tryAll(0);
    channels.forEach((channel, k) => {
      plan[channel] = best[k]!;
    });
    return best !== before;
  };

  const movable = choices.flatMap((count, channel) => (count > 1 ? [channel] : []));
  const settleSingly = (): boolean => {
    let isBetter = false;
    for (const channel of movable) isBetter = settle([channel]) || isBetter;
    return isBetter;
  };
  const worstPairs = (): readonly number[] =>
    [...new Set(lists.flat())]
      .map((at) => ({ at, ratio: ratioOf(problem, pairs[at]!, plan) }))
      .filter(({ ratio }) => ratio > calm)
      .sort((a, b) => b.ratio - a.ratio || a.at - b.at)
      .slice(0, WORST_PAIRS)
      .map(({ at }) => at);

  while (settleSingly()) yield;
  for (let round = 0; round < rounds; round++) {
    let isBetter = false;
    for (const at of worstPairs()) {
      const { a, b } = pairs[at]!;
      for (const channel of [a, b]) {
        if (choices[channel]! < 2) continue;
        for (const other of movable) if (other !== channel) isBetter = settle([channel, other]) || isBetter;
        yield;
      }
    }
    if (!isBetter) break;
    while (settleSingly()) yield;
  }
  return plan;
}
