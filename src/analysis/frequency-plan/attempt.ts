/** Whether a plan keeps a limit, within a budget of choices tried. */
import { createBacktracker } from './backtrack';
import { holds } from './bits';
import { isAllowed, networkUnder, thinOut, type Network } from './network';
import type { Plan, PlanProblem } from './problem';
import { reduce } from './reduce';

export type AttemptResult =
  | { readonly kind: 'found'; readonly plan: Plan }
  /** Proven: no plan keeps the limit. */
  | { readonly kind: 'none' }
  | { readonly kind: 'given up' };

/** Choices tried between two places where something more urgent may come in. */
const STRETCH = 1_000;

export interface Purse {
  /** Choices that may still be tried; counted down. */
  left: number;
}

/**
 * `limitOf`: the largest ratio of each pair. `purse` is shared with other attempts; `most` is what this one may take of
 * it. `only`: a channel's one choice, where it has to keep it. Yields from time to time.
 */
export function* attempt(
  problem: PlanProblem,
  limitOf: (pair: number) => number,
  purse: Purse,
  most: number,
  only: (channel: number) => number | null = () => null
): Generator<void, AttemptResult> {
  const network = restricted(networkUnder(problem, limitOf), only);
  if (!network || !thinOut(network)) return { kind: 'none' };
  const { easy, parts } = reduce(network);
  const plan = problem.choices.map(() => -1);
  let mayTry = most;
  for (const part of parts) {
    const backtracker = createBacktracker(network, part, problem);
    for (;;) {
      const before = backtracker.nodes();
      const outcome = backtracker.run(Math.min(STRETCH, mayTry, purse.left));
      const spent = backtracker.nodes() - before;
      mayTry -= spent;
      purse.left -= spent;
      if (outcome === 'none') return { kind: 'none' };
      if (outcome === 'found') break;
      if (mayTry <= 0 || purse.left <= 0) return { kind: 'given up' };
      yield;
    }
    for (const channel of part) plan[channel] = backtracker.choiceOf(channel);
  }
  for (const channel of [...easy].reverse())
    plan[channel] = choiceBeside(network, channel, problem.present[channel]!, plan);
  return { kind: 'found', plan };
}

/** In place; null where a channel cannot keep its only choice. */
const restricted = (network: Network, only: (channel: number) => number | null): Network | null => {
  const { domains, words, arcs } = network;
  for (let channel = 0; channel < arcs.length; channel++) {
    const choice = only(channel);
    if (choice === null) continue;
    if (!holds(domains, channel * words, choice)) return null;
    domains.fill(0, channel * words, (channel + 1) * words);
    domains[channel * words + (choice >>> 5)] = 1 << (choice & 31);
  }
  return network;
};

/** The present choice if it goes with the plan as far as it is made, or the first one that does. */
const choiceBeside = (
  network: Network,
  channel: number,
  present: number,
  plan: readonly number[]
): number => {
  const { words, domains } = network;
  const fits = (choice: number): boolean =>
    holds(domains, channel * words, choice) && isAllowed(network, channel, choice, plan);
  if (present >= 0 && fits(present)) return present;
  for (let choice = 0; choice < 32 * words; choice++) if (fits(choice)) return choice;
  throw new Error('a channel that was taken off the network has no choice left');
};
