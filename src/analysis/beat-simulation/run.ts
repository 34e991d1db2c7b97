/** Two coupled oscillators run for as long as there is something to see, in steps, and heard once they have settled. */
import { createFrequencyMeter } from '#physics/coupling/frequency-meter';
import {
  coupledFlow,
  fullSwing,
  startRun,
  VOLTAGE_1,
  VOLTAGE_2,
  type Oscillator
} from '#physics/coupling/oscillators';
import { settlingTime } from '#physics/coupling/tuning';
import type { Steps } from '../steps';
import type { Heard } from './heard';

const STEPS_PER_CYCLE = 40;
/** Between two looks at whether something newer is asked; about a millisecond. */
const STEPS_AT_ONCE = 4_000;

/** What is to be shown, as far as it does not take too long. */
const READINGS_SHOWN = 12;
const LEAST_READINGS = 2.2;
const LONGEST_READINGS = 0.08;
const LONGEST_BEATS = 0.03;

/** Coupled so strongly for their separation, two may draw each other into step, s. */
const STRONG = 0.6;
const LOCKING = 0.01;

export interface Course {
  readonly step: number;
  readonly settled: number;
  readonly duration: number;
}

/** How long to let them run: until settled, then enough beats, and enough measuring times for what units read. */
export const courseOf = (
  tanks: readonly { readonly q: number; readonly frequency: number }[],
  separation: number,
  strength: number,
  times: readonly number[]
): Course => {
  const beat = separation > 0 ? 1 / separation : Infinity;
  const longest = Math.max(...times);
  const settled =
    Math.max(...tanks.map(settlingTime)) +
    Math.min(beat, LONGEST_BEATS / 6) +
    (strength > STRONG ? LOCKING : 0);
  const shown = Math.max(
    Math.min(READINGS_SHOWN * longest, LONGEST_READINGS),
    LEAST_READINGS * longest,
    longest + Math.min(2 * beat, LONGEST_BEATS),
    Math.min(6 * beat, LONGEST_BEATS)
  );
  return {
    step: 1 / (STEPS_PER_CYCLE * Math.max(...tanks.map(({ frequency }) => frequency))),
    settled,
    duration: settled + shown + 3 / Math.min(...tanks.map(({ frequency }) => frequency))
  };
};

export function* runInSteps(
  pair: readonly [Oscillator, Oscillator],
  k: number,
  { step, settled, duration }: Course
): Steps<readonly [Heard, Heard]> {
  const meters = [createFrequencyMeter(), createFrequencyMeter()] as const;
  const { advance } = startRun(coupledFlow(...pair, k), fullSwing(...pair), step);
  const steps = Math.ceil(duration / step);
  for (let taken = 0; taken < steps; taken += STEPS_AT_ONCE) {
    advance(Math.min(STEPS_AT_ONCE, steps - taken), (time, state, slope) => {
      if (time < settled) return;
      meters[0].hear(time, state[VOLTAGE_1]!, slope[VOLTAGE_1]!);
      meters[1].hear(time, state[VOLTAGE_2]!, slope[VOLTAGE_2]!);
    });
    yield taken / steps;
  }
  return meters;
}
