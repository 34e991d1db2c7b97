/** The pairs that can be simulated: those of the drawing, the worst first, and an invented one. */
import type { Beat } from '#analysis/results';
import { pairKey } from '../pairs';

export interface OfferedPair {
  readonly key: string;
  /** Null for the invented pair. */
  readonly circuits: readonly [string, string] | null;
}

/** No key of a pair: those are written as lists. */
const INVENTED = 'invented';

export const pairsOf = (beats: readonly Pick<Beat, 'a' | 'b' | 'ratio'>[]): readonly OfferedPair[] => [
  ...[...beats]
    .sort((one, other) => other.ratio - one.ratio)
    .map((beat): OfferedPair => ({ key: pairKey(beat), circuits: [beat.a, beat.b] })),
  { key: INVENTED, circuits: null }
];

/** What was chosen, as long as it is offered; otherwise the first. */
export const pairChosen = (offered: readonly OfferedPair[], chosen: string | null): OfferedPair =>
  offered.find(({ key }) => key === chosen) ?? offered[0]!;
