/** The product's diagnosis held against what is really wrong. */
import { diagnoseInSteps } from '#analysis/fault-finding/diagnose';
import type { Diagnosis, RankedCause } from '#analysis/fault-finding/results';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import { drawSample, type Sample } from './sample';
import type { Single } from './planted';

export type ReadingSet = 'full' | 'cabinet';

export interface Trial {
  readonly kind: Single;
  readonly seed: number;
  readonly severity: string;
  /** Place of the true kind among the kinds of the ranking, from 1; Infinity if it is not there. */
  readonly rank: number;
  /** Whether the first cause of the true kind is also about the right loop, wire or circuit; null where there is none to name, or none is named. */
  readonly isRightSubject: boolean | null;
  readonly first: string;
  /** Of every kind that is ranked: causes of two faults count under both names together. */
  readonly probabilities: ReadonlyMap<string, number>;
  /** Of the processor, ms. */
  readonly time: number;
}

const nameOf = ({ faults }: RankedCause): string =>
  faults
    .map(({ kind }) => kind)
    .sort()
    .join(' + ');

/** As in a worker: what vehicles are is known from one question to the next. No circuit comes twice, so memory is let go of. */
let means = createMeans();
let asked = 0;
const MOST_ASKED = 100;

const diagnosed = ({ site, circuit, ...sets }: Sample, set: ReadingSet): Diagnosis => {
  if (++asked % MOST_ASKED === 0) means = createMeans();
  const diagnosis = finish(diagnoseInSteps({ ...site, readings: sets[set] }, { circuit: circuit.id }, means));
  if (!diagnosis) throw new Error('no diagnosis of a circuit that has readings');
  return diagnosis;
};

const trialOf = (sample: Sample, seed: number, set: ReadingSet): Trial => {
  const { kind, subject, severity } = sample.planted;
  const before = process.cpuUsage();
  const { causes } = diagnosed(sample, set);
  const { user, system } = process.cpuUsage(before);
  const time = (user + system) / 1_000;
  const probabilities = new Map<string, number>();
  for (const cause of causes)
    probabilities.set(nameOf(cause), (probabilities.get(nameOf(cause)) ?? 0) + cause.probability);
  const order = [...probabilities.keys()];
  const found = order.indexOf(kind);
  const cause = causes.find((each) => nameOf(each) === kind);
  const named = cause?.faults[0]!.subject;
  return {
    ...{ kind, seed, severity, time, probabilities },
    rank: found < 0 ? Infinity : found + 1,
    isRightSubject: subject === null || !named ? null : named === subject,
    first: order[0] ?? 'none'
  };
};

export const tryOut = (kind: Single, seed: number, set: ReadingSet): Trial =>
  trialOf(drawSample(kind, seed), seed, set);

/** The same circuit with all readings, and with those at the cabinet alone. */
export const tryBoth = (sample: Sample, seed: number): Readonly<Record<ReadingSet, Trial>> => ({
  full: trialOf(sample, seed, 'full'),
  cabinet: trialOf(sample, seed, 'cabinet')
});

export interface Tally {
  readonly first: number;
  readonly inThree: number;
  /** What came first where the true cause did not, and how often. */
  readonly instead: ReadonlyMap<string, number>;
}

export const tally = (trials: readonly Trial[]): Tally => {
  const share = (most: number) => trials.filter(({ rank }) => rank <= most).length / trials.length;
  const instead = new Map<string, number>();
  for (const { rank, first } of trials) if (rank > 1) instead.set(first, (instead.get(first) ?? 0) + 1);
  return { first: share(1), inThree: share(3), instead };
};
