/**
 * Whether a finding is only gone because things got worse: a vehicle that was detected in part is not detected at all, one of
 * the next lane that called from the edge calls from the middle too. Nobody who wants a finding cleared wants that.
 */
import type { Site } from '#plan/schema';
import type { PassReadout } from '../passing/results';
import type { Judged } from './judge';
import { pairIn } from './needs';
import type { FindingRef } from './results';

/** A drawing with what was found of it. */
export interface Seen {
  readonly site: Site;
  readonly judged: Judged;
}

interface Change {
  readonly before: Seen;
  readonly after: Seen;
  readonly subject: string;
}

/** What was of the one kind before, and is of the other after but was not before. */
const turned = (
  { before, after }: Change,
  was: (seen: Seen) => readonly string[],
  is: (seen: Seen) => readonly string[]
): boolean => {
  const already = new Set(is(before));
  const later = new Set(is(after));
  return was(before).some((name) => later.has(name) && !already.has(name));
};

/** Of the vehicles asked for, those that stay under the threshold by their best or worst path. */
const missed =
  (subject: string, path: 'best' | 'worst') =>
  ({ site, judged }: Seen): readonly string[] => {
    const threshold = site.circuits.find(({ id }) => id === subject)?.channel?.tripThreshold ?? 0;
    const circuit = judged.result.circuits.find(({ id }) => id === subject);
    return (circuit?.responses ?? [])
      .filter((each) => each.wanted && -each[path] < threshold)
      .map(({ vehicle }) => vehicle);
  };

const passing =
  (
    subject: string,
    nameOf: (pass: PassReadout) => string,
    isOne: (pass: PassReadout) => boolean
  ): ((seen: Seen) => readonly string[]) =>
  ({ judged }) =>
    (judged.result.passes ?? []).filter((pass) => pass.circuit === subject && isOne(pass)).map(nameOf);

const onLane = ({ vehicle, lane }: PassReadout): string => JSON.stringify([vehicle, lane]);
const itsLane = ({ lane }: PassReadout): string => lane ?? '';
const isMissed = ({ detections }: PassReadout): boolean => detections === 0;
const inMiddle = ({ offset_m }: PassReadout): boolean => offset_m === 0;
const calls = (pass: PassReadout): boolean => !pass.isServed && !isMissed(pass);

/** Circuits that do not find a frequency. */
const stopped =
  (circuits: readonly string[]) =>
  ({ judged }: Seen): readonly string[] =>
    circuits.filter((id) =>
      judged.result.circuits.some((each) => each.id === id && each.frequencyFrom === 'assumed')
    );

const stops = (change: Change, circuits: readonly string[]): boolean =>
  turned(change, () => circuits, stopped(circuits));

const RULES: Readonly<Record<string, (change: Change) => boolean>> = {
  'detected-in-part': (change) =>
    turned(change, missed(change.subject, 'worst'), missed(change.subject, 'best')),
  'missed-at-edge': (change) =>
    turned(
      change,
      passing(change.subject, onLane, (pass) => pass.wanted && isMissed(pass)),
      passing(change.subject, onLane, (pass) => pass.wanted && isMissed(pass) && inMiddle(pass))
    ),
  'counted-twice': (change) =>
    turned(
      change,
      passing(change.subject, onLane, ({ isServed, detections }) => isServed && detections > 1),
      passing(change.subject, onLane, (pass) => pass.isServed && isMissed(pass))
    ),
  'next-lane-edge': (change) =>
    turned(
      change,
      passing(change.subject, itsLane, calls),
      passing(change.subject, itsLane, (pass) => calls(pass) && inMiddle(pass))
    ),
  'frequency-band': (change) => stops(change, [change.subject]),
  beating: (change) => stops(change, pairIn(change.subject))
};

export const becameWorse = ({ code, subject }: FindingRef, before: Seen, after: Seen): boolean =>
  RULES[code]?.({ before, after, subject }) ?? false;
