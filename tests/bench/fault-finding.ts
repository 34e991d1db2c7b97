/**
 * How often the diagnosis is right, how honest its probabilities are, and how long it takes. Circuits by chance, built within their
 * tolerances with one fault each as networks of their own; see `tests/support/faulty-network`.
 */
import { KIND_WEIGHTS } from '#analysis/fault-finding/inference/priors';
import { SINGLES } from '../support/faulty-network/faults';
import { drawAsTheyCome, drawSample } from '../support/faulty-network/sample';
import type { Single } from '../support/faulty-network/planted';
import { tally, tryBoth, type ReadingSet, type Trial } from '../support/faulty-network/trial';

const DESIGNS = Number(process.env['FAULT_DESIGNS'] ?? 10);
/** Others than the tests'. */
const FIRST_SEED = 1_000;
const SETS: readonly ReadingSet[] = ['full', 'cabinet'];
const BINS = 10;
const LEAST_COUNT = 50;

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`.padStart(8);

const common = (instead: ReadonlyMap<string, number>): string =>
  [...instead]
    .sort(([, a], [, b]) => b - a)
    .slice(0, 4)
    .map(([kind, count]) => `${kind} ${count}`)
    .join(', ');

const sayAccuracy = (kind: Single, readings: string, trials: readonly Trial[]): void => {
  const { first, inThree, instead } = tally(trials);
  const named = trials.filter(({ isRightSubject }) => isRightSubject !== null);
  const right = named.filter(({ isRightSubject }) => isRightSubject).length / named.length;
  const subject = named.length > 0 ? `right one named ${percent(right)}` : ''.padEnd(25);
  console.log(
    `${kind.padEnd(22)} ${readings.padEnd(24)} first ${percent(first)}  in three ${percent(inThree)}  ${subject}  ${common(instead)}`
  );
};

/** Of sound and faulty circuits as they come, how often what is held for so and so likely came true. */
const sayCalibration = (trials: readonly Trial[]): void => {
  const bins = Array.from({ length: BINS }, () => ({ predicted: 0, true: 0, count: 0 }));
  for (const { kind, probabilities } of trials)
    for (const [name, probability] of probabilities) {
      const bin = bins[Math.min(BINS - 1, Math.floor(BINS * probability))]!;
      bin.count++;
      bin.predicted += probability;
      if (name === kind) bin.true++;
    }
  let worst = 0;
  for (const { predicted, true: came, count } of bins) {
    if (count === 0) continue;
    const [said, was] = [predicted / count, came / count];
    const doubt = Math.sqrt((said * (1 - said)) / count);
    // a bin of a handful says nothing
    if (count >= LEAST_COUNT) worst = Math.max(worst, Math.abs(was - said));
    console.log(
      `  predicted ${percent(said)}  came true ${percent(was)} ± ${percent(1.96 * doubt)}  of ${count}`
    );
  }
  console.log(
    `  furthest off, of those with ${LEAST_COUNT} or more: ${(100 * worst).toFixed(1)} points (asked: within 10)`
  );
};

const sayTimes = (trials: readonly Trial[]): void => {
  const times = trials.map(({ time }) => time).sort((a, b) => a - b);
  const at = (share: number) => `${times[Math.floor(share * (times.length - 1))]!.toFixed(0)} ms`;
  console.log(`a diagnosis, time of the processor: median ${at(0.5)}  p95 ${at(0.95)}  longest ${at(1)}`);
};

const SAID: Readonly<Record<ReadingSet, string>> = {
  full: 'at every test point',
  cabinet: 'at the cabinet alone'
};

export const measureFaultFinding = (): void => {
  console.log(`\nfault finding, ${DESIGNS} random designs a cause`);
  const all: Record<ReadingSet, Trial[]> = { full: [], cabinet: [] };
  for (const kind of SINGLES) {
    const trials = Array.from({ length: DESIGNS }, (_, k) =>
      tryBoth(drawSample(kind, FIRST_SEED + k), FIRST_SEED + k)
    );
    for (const set of SETS) {
      const own = trials.map((trial) => trial[set]);
      sayAccuracy(kind, SAID[set], own);
      all[set].push(...own);
    }
  }
  for (const set of SETS) {
    const { first, inThree } = tally(all[set]);
    console.log(`\nall causes, ${SAID[set]}: first ${percent(first)}, in three ${percent(inThree)}`);
    sayTimes(all[set]);
  }
  const asTheyCome = Array.from({ length: DESIGNS * SINGLES.length }, (_, k) =>
    tryBoth(
      drawAsTheyCome(k, (kind) => KIND_WEIGHTS[kind].later),
      k
    )
  );
  for (const set of SETS) {
    console.log(`\n${asTheyCome.length} circuits as they come, of any severity, ${SAID[set]}`);
    sayCalibration(asTheyCome.map((trial) => trial[set]));
  }
};
