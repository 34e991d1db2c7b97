/** A cause as it is shown: its evidence, what each figure would be under it, and what to do about it. */
import { inRow } from '#i18n/locale';
import { wireOf } from '#plan/catalogue/wires';
import type { Site } from '#plan/schema';
import { evidenceOf, type Rivals } from './evidence';
import type { Placed } from './inference/observe';
import { placesOf, type Entry, type Place } from './ranked';
import type { Evidence, RankedCause, Told } from './results';

/** From this on a cause counts as possible beside another one. */
const POSSIBLE = 0.05;

const nameOf = (site: Site, subject: string): string =>
  [
    site.loops.find(({ id }) => id === subject)?.name,
    site.circuits.find(({ id }) => id === subject)?.name,
    wireOf(subject, site)?.name
  ].find((name) => name !== undefined && name !== '') ?? subject;

/** What no figure says, but what follows from the cause being among these. */
const notesOn = (site: Site, entry: Entry, entries: readonly Entry[]): readonly Evidence[] => {
  const notes: Told[] = [];
  /** It was looked for in the loops as well, and is not there. */
  const couldBeALoop = (kind: string): boolean =>
    entries.some(({ faults: [only, other] }) => !other && only!.kind === kind && only!.subject !== null);
  entry.candidates.forEach((subjects, fault) => {
    const { kind, subject } = entry.faults[fault]!;
    if (subject !== null) return;
    const named = subjects.flatMap((each) => (each === null ? [] : [nameOf(site, each)]));
    if (subjects.length > 1) {
      const key = named.length < subjects.length ? 'evidence.which-one-or-lead-in' : 'evidence.which-one';
      notes.push({ key, values: { names: inRow(named) } });
    } else if (couldBeALoop(kind)) notes.push({ key: 'evidence.in-lead-in', values: {} });
  });
  const shareOf = (kind: string): number =>
    entries
      .filter(({ faults }) => faults.length === 1 && faults[0]!.kind === kind)
      .reduce((sum, { probability }) => sum + probability, 0);
  const isShort = entry.faults.some(({ kind }) => kind === 'short at splice' || kind === 'short in lead-in');
  if (isShort && shareOf('short at splice') > POSSIBLE && shareOf('short in lead-in') > POSSIBLE)
    notes.push({ key: 'evidence.splice-or-end', values: {} });
  const isLeak = entry.faults.some(({ kind }) => kind === 'wet splice' || kind === 'cut insulation');
  if (isLeak && shareOf('wet splice') > POSSIBLE && shareOf('cut insulation') > POSSIBLE)
    notes.push({ key: 'evidence.splice-or-cable', values: {} });
  if (entry.faults.length > 1) notes.push({ key: 'evidence.two-at-once', values: {} });
  return notes.map((told) => ({ figure: null, told, weight: 0 }));
};

/** Nothing can be wrong beside a figure that does not fit only if that is a slip: then it is to be read again. */
const remedyOf = ({ faults: [fault, other] }: Entry, heard: readonly Evidence[]): Told => ({
  key: other
    ? 'remedy.two-at-once'
    : fault!.kind === 'nothing wrong' && heard.some(({ weight }) => weight < 0)
      ? 'remedy.slip'
      : `remedy.${fault!.kind}`,
  values: {}
});

export interface Answering {
  readonly site: Site;
  readonly entries: readonly Entry[];
  readonly rivals: Rivals;
  readonly placed: readonly Placed[];
  readonly figures: number;
}

/** Of a cause's unknowns: what is left of them is told by this many. */
const PLACES = 24;

/**
 * The middle of what would be read over all that the readings leave of its unknowns, on the scale of the logarithm, as the
 * estimates beside it are; a word where most of it gives that instead of a number, null where nothing can be said.
 */
const middleOf = (places: readonly Place[], figure: number): RankedCause['predicted'][number] => {
  const shareOf = (word: 'sound' | 'over range'): number =>
    places.reduce(
      (sum, { particle, share }) => sum + (particle.look.predicted[figure] === word ? share : 0),
      0
    );
  for (const word of ['sound', 'over range'] as const) if (shareOf(word) > 0.5) return word;
  const told = places.flatMap(({ particle, share }) => {
    const value = particle.look.predicted[figure];
    return typeof value === 'number' ? [{ value, share }] : [];
  });
  const all = told.reduce((sum, { share }) => sum + share, 0);
  if (all < 0.5) return null;
  const isPositive = told.every(({ value }) => value > 0);
  const sum = told.reduce((s, { value, share }) => s + share * (isPositive ? Math.log(value) : value), 0);
  return isPositive ? Math.exp(sum / all) : sum / all;
};

export const causeOf = ({ site, entries, rivals, placed, figures }: Answering, entry: Entry): RankedCause => {
  const predicted: RankedCause['predicted'][number][] = Array.from({ length: figures }, () => null);
  const places = entry.isUnknown ? [] : placesOf(entry, PLACES);
  placed.forEach(({ figure, observed }, k) => {
    if (!observed.isBaseline) predicted[figure] = middleOf(places, k);
  });
  const heard = evidenceOf(entry, rivals, placed);
  const notes = notesOn(site, entry, entries);
  const isSilent = heard.length === 0 && notes.length === 0;
  return {
    faults: entry.faults,
    probability: entry.probability,
    evidence: isSilent
      ? [{ figure: null, told: { key: 'evidence.prior', values: {} }, weight: 0 }]
      : [...notes, ...heard],
    predicted,
    remedy: remedyOf(entry, heard)
  };
};
