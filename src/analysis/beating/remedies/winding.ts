/** One loop wound the other way, in a circuit of several: what they drive in the neighbour may then cancel. */
import { setReversed } from '#plan/edits/index';
import type { Remedy } from '../../results';
import type { Steps } from '../../steps';
import { effectOf, type RemedyContext, type Trial } from './trial';

export function* otherWinding({ a, b }: RemedyContext, attempt: Trial): Steps<Remedy[]> {
  const found: Remedy[] = [];
  for (const { circuit } of [a, b]) {
    const entries = circuit.strings.flat();
    // turned as a whole a circuit couples by the same amount
    if (entries.length < 2) continue;
    let best: Remedy | null = null;
    for (const { loop, reversed } of entries) {
      const outcome = attempt((site) => setReversed(site, circuit.id, loop, !reversed), [circuit.id]);
      yield;
      if (!outcome) continue;
      const remedy: Remedy = { kind: 'winding', circuit: circuit.id, loop, ...effectOf(outcome) };
      if (!best || remedy.ratio < best.ratio) best = remedy;
    }
    if (best) found.push(best);
  }
  return found;
}
