/** What would clear a pair: every kind of change tried, what does not help left out, the best first. */
import type { Remedy, RemedyKind } from '../../results';
import type { Steps } from '../../steps';
import { ownConduit } from './conduits';
import { moreDistance } from './distance';
import { otherSettings } from './settings';
import { higherThreshold } from './thresholds';
import { createTrial, type RemedyContext, type Trial } from './trial';
import { longerMeasuring, scanning } from './units';
import { otherWinding } from './winding';

type Source = (context: RemedyContext, attempt: Trial) => Steps<Remedy[]>;

const SOURCES: readonly Source[] = [
  otherSettings,
  ownConduit,
  otherWinding,
  scanning,
  longerMeasuring,
  higherThreshold,
  moreDistance
];

/** From what a hand changes in a minute to what has to be cut again. */
const EFFORT: readonly RemedyKind[] = [
  'setting',
  'threshold',
  'measuring-time',
  'winding',
  'scanning',
  'conduit',
  'distance'
];

/** A change that leaves more of the ratio than this is none. */
const WORTH = 0.9;

export function* remediesInSteps(context: RemedyContext): Steps<readonly Remedy[]> {
  const attempt = createTrial(context);
  const found: Remedy[] = [];
  for (const source of SOURCES) {
    const remedies = yield* source(context, attempt);
    found.push(...remedies.filter(({ ratio }) => ratio < WORTH * context.pair.ratio));
    yield;
  }
  return found.sort((a, b) => rankOf(a) - rankOf(b) || a.ratio - b.ratio);
}

/** What clears the pair at no cost, then what clears it, then what helps; of like worth the least effort. */
const rankOf = (remedy: Remedy): number => {
  const { kind, verdict, spoils } = remedy;
  const loses = remedy.kind === 'threshold' && remedy.circuits.some(({ lost }) => lost.length > 0);
  const worth = verdict !== 'clear' ? 2 : spoils.length > 0 || loses ? 1 : 0;
  return worth * EFFORT.length + EFFORT.indexOf(kind);
};
