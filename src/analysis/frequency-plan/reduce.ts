/**
 * What can be taken off a network before anything is tried: channels that the others can never leave without a choice
 * come last, and what is left falls apart into parts that know nothing of one another.
 */
import { countOf, holds } from './bits';
import type { Network } from './network';

export interface Reduced {
  /** Channels in the order in which they were taken off: the last one is decided first. */
  readonly easy: readonly number[];
  /** The others, part by part, the largest part last. */
  readonly parts: readonly (readonly number[])[];
}

/** The most choices of `to` that one choice of `from` rules out. */
const mostTaken = ({ words, domains }: Network, from: number, to: number, masks: Int32Array): number => {
  const theirs = to * words;
  const all = countOf(domains, theirs, words);
  const left = new Int32Array(words);
  let most = 0;
  for (let choice = 0; choice * words < masks.length; choice++) {
    if (!holds(domains, from * words, choice)) continue;
    for (let w = 0; w < words; w++) left[w] = masks[choice * words + w]! & domains[theirs + w]!;
    most = Math.max(most, all - countOf(left, 0, words));
  }
  return most;
};

/** Of a network that has been thinned out. */
export const reduce = (network: Network): Reduced => {
  const { arcs, domains, words } = network;
  const channels = arcs.map((_, channel) => channel);
  /** What each neighbour can take from a channel at most, by the neighbour. */
  const taken = arcs.map(() => new Map<number, number>());
  arcs.forEach((list, from) => {
    for (const { to, masks } of list) {
      const most = mostTaken(network, from, to, masks);
      if (most > 0) taken[to]!.set(from, most);
    }
  });
  const isEasy = (channel: number): boolean => {
    const most = [...taken[channel]!.values()].reduce((sum, count) => sum + count, 0);
    return countOf(domains, channel * words, words) > most;
  };
  const easy: number[] = [];
  const isOff = arcs.map(() => false);
  const waiting = [...channels];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (isOff[next] || !isEasy(next)) continue;
    isOff[next] = true;
    easy.push(next);
    for (const { to } of arcs[next]!) {
      if (isOff[to]) continue;
      taken[to]!.delete(next);
      waiting.push(to);
    }
  }
  const parts: number[][] = [];
  const isSeen = [...isOff];
  for (const start of channels) {
    if (isSeen[start]) continue;
    const part = [start];
    isSeen[start] = true;
    for (let at = 0; at < part.length; at++)
      for (const { to } of arcs[part[at]!]!)
        if (!isSeen[to] && taken[to]!.has(part[at]!)) {
          isSeen[to] = true;
          part.push(to);
        }
    parts.push(part.sort((a, b) => a - b));
  }
  return { easy, parts: parts.sort((a, b) => a.length - b.length) };
};
