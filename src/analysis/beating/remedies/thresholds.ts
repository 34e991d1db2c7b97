/** A higher trip threshold, and which vehicles it would lose. */
import { updateChannel } from '#plan/edits/index';
import { BOUNDS } from '#plan/bounds';
import type { Site } from '#plan/schema';
import type { Remedy } from '../../results';
import type { Steps } from '../../steps';
import { WATCH_FROM } from '../rate';
import { roundedUp } from './rounding';
import { effectOf, type RemedyContext, type Trial } from './trial';

export function* higherThreshold({ pair, responsesOf }: RemedyContext, attempt: Trial): Steps<Remedy[]> {
  const circuits = pair.sides
    .filter(({ ratio }) => ratio >= WATCH_FROM)
    .map(({ circuit, ripple, tripThreshold: present }) => {
      const tripThreshold = roundedUp(ripple / WATCH_FROM);
      const lost = responsesOf(circuit)
        .filter(({ wanted, worst }) => wanted && -worst >= present && -worst < tripThreshold)
        .map(({ vehicle }) => vehicle);
      return { circuit, tripThreshold, lost };
    });
  if (circuits.some(({ tripThreshold }) => tripThreshold > BOUNDS.ratio.max)) return [];
  const edit = (site: Site): Site =>
    circuits.reduce(
      (result, { circuit, tripThreshold }) => updateChannel(result, circuit, { tripThreshold }),
      site
    );
  const outcome = attempt(
    edit,
    circuits.map(({ circuit }) => circuit)
  );
  yield;
  return outcome ? [{ kind: 'threshold', circuits, ...effectOf(outcome) }] : [];
}
