/** What a limit on the ratios leaves of a problem: which choices of two channels go together. */
import { countOf, holds, put, wordsFor } from './bits';
import { isOpen, type PlanProblem } from './problem';

/** From one channel to another that it limits. */
export interface Arc {
  readonly to: number;
  /** By choice of the arc's own channel: the choices of `to` that go with it, as bits. */
  readonly masks: Int32Array;
}

export interface Network {
  readonly words: number;
  /** Of every channel its choices, as bits. */
  readonly domains: Int32Array;
  readonly arcs: readonly (readonly Arc[])[];
}

const fullDomains = (choices: readonly number[], words: number): Int32Array => {
  const domains = new Int32Array(choices.length * words);
  choices.forEach((count, channel) => {
    for (let choice = 0; choice < count; choice++) put(domains, channel * words, choice);
  });
  return domains;
};

/** `limitOf`: the largest ratio that each pair of `pairs` may have. Pairs of channels without a choice do not count. */
export const networkUnder = (problem: PlanProblem, limitOf: (pair: number) => number): Network => {
  const { choices, pairs } = problem;
  const words = wordsFor(Math.max(1, ...choices));
  const arcs = choices.map((): Arc[] => []);
  pairs.forEach((pair, at) => {
    if (!isOpen(problem, pair)) return;
    const limit = limitOf(at);
    const { a, b, ratios } = pair;
    if (ratios.every((ratio) => ratio <= limit)) return;
    const forward = new Int32Array(choices[a]! * words);
    const backward = new Int32Array(choices[b]! * words);
    let cell = 0;
    for (let x = 0; x < choices[a]!; x++)
      for (let y = 0; y < choices[b]!; y++, cell++) {
        if (!(ratios[cell]! <= limit)) continue;
        put(forward, x * words, y);
        put(backward, y * words, x);
      }
    arcs[a]!.push({ to: b, masks: forward });
    arcs[b]!.push({ to: a, masks: backward });
  });
  return { words, domains: fullDomains(choices, words), arcs };
};

/**
 * Takes out, in place, every choice that goes with no choice of some other channel, until there is none (arc consistency).
 * False when a channel is left without a choice: no plan keeps the limit.
 */
export const thinOut = ({ words, domains, arcs }: Network): boolean => {
  const waiting = arcs.map((_, channel) => channel);
  const isWaiting = arcs.map(() => true);
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    isWaiting[next] = false;
    const own = next * words;
    for (const { to, masks } of arcs[next]!) {
      // what `next` still has supports some of what `to` has
      const kept = new Int32Array(words);
      for (let choice = 0; choice * words < masks.length; choice++)
        if (holds(domains, own, choice))
          for (let w = 0; w < words; w++) kept[w]! |= masks[choice * words + w]!;
      const theirs = to * words;
      let isThinner = false;
      for (let w = 0; w < words; w++) {
        const left = domains[theirs + w]! & kept[w]!;
        if (left === domains[theirs + w]) continue;
        domains[theirs + w] = left;
        isThinner = true;
      }
      if (!isThinner) continue;
      if (countOf(domains, theirs, words) === 0) return false;
      if (isWaiting[to]) continue;
      isWaiting[to] = true;
      waiting.push(to);
    }
  }
  return true;
};

/** Whether a choice of a channel goes with the whole of a plan as far as it is made (`plan` is −1 elsewhere). */
export const isAllowed = (
  { words, arcs }: Network,
  channel: number,
  choice: number,
  plan: readonly number[]
) => arcs[channel]!.every(({ to, masks }) => plan[to]! < 0 || holds(masks, choice * words, plan[to]!));
