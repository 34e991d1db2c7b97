/**
 * What assessments with the same means keep, by content: a design that shares circuits with the present one finds there what
 * was found of them. What is half made, and what was shown last, each assessor has for itself.
 */
import { createKeptRemedies, type KeptRemedies } from './beating/remedy-keeper';
import { createKeptCalls, type KeptCalls } from './calls-keeper';
import { createKeptFollowing, type KeptFollowing } from './follow-ups';
import type { Means } from './means';
import { createKeptPasses, type KeptPasses } from './passes';

interface Kept {
  readonly passes: KeptPasses;
  readonly following: KeptFollowing;
  readonly calls: KeptCalls;
  readonly remedies: KeptRemedies;
}

const all = new WeakMap<Means, Kept>();

/** One for everybody who has the same means. */
export function keptOf(means: Means): Kept {
  const known = all.get(means);
  if (known) return known;
  const made: Kept = {
    passes: createKeptPasses(),
    following: createKeptFollowing(),
    calls: createKeptCalls(),
    remedies: createKeptRemedies()
  };
  all.set(means, made);
  return made;
}
