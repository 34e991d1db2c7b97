/**
 * Two oscillators whose capacitances are such that each by itself runs at a frequency that is asked for. The series
 * resistance and the harmonics of the feeding current slow an oscillator below 1/(2π√(LC)), by about 1/(2Q²); it is
 * run alone, measured, and C changed with the square of what is missing. What is left is of second order, under 10⁻⁶.
 */
import { createFrequencyMeter } from './frequency-meter';
import { coupledFlow, fullSwing, startRun, VOLTAGE_1, VOLTAGE_2, type Oscillator } from './oscillators';

/** As an oscillator, but by its frequency, Hz. */
export type Wanted = Omit<Oscillator, 'capacitance'> & { readonly frequency: number };

/** Cycles that are counted, after a tank has settled to its amplitude. */
const COUNTED = 40;
const STEPS_PER_CYCLE = 40;

/** s; the amplitude comes to rest like exp(−πft/Q), faster where the limiting is firm. */
export const settlingTime = ({ q, frequency }: Pick<Wanted, 'q' | 'frequency'>): number =>
  (10 * q) / (Math.PI * frequency);

const untuned = ({ frequency, ...rest }: Wanted): Oscillator => ({
  ...rest,
  capacitance: 1 / ((2 * Math.PI * frequency) ** 2 * rest.inductance)
});

/** Mean frequency of the crossings after `from`, Hz. */
const meanAfter = (crossings: readonly number[], from: number): number => {
  const first = crossings.findIndex((time) => time > from);
  const last = crossings.length - 1;
  return (last - first) / (crossings[last]! - crossings[first]!);
};

export const tuned = (a: Wanted, b: Wanted): readonly [Oscillator, Oscillator] => {
  const pair = [untuned(a), untuned(b)] as const;
  const settled = Math.max(settlingTime(a), settlingTime(b));
  const step = 1 / (STEPS_PER_CYCLE * Math.max(a.frequency, b.frequency));
  const duration = settled + (COUNTED + 2) / Math.min(a.frequency, b.frequency);
  const meters = [createFrequencyMeter(), createFrequencyMeter()] as const;
  startRun(coupledFlow(...pair, 0), fullSwing(...pair), step).advance(
    Math.ceil(duration / step),
    (time, state, slope) => {
      meters[0].hear(time, state[VOLTAGE_1]!, slope[VOLTAGE_1]!);
      meters[1].hear(time, state[VOLTAGE_2]!, slope[VOLTAGE_2]!);
    }
  );
  const trimmed = (oscillator: Oscillator, { frequency }: Wanted, at: 0 | 1): Oscillator => ({
    ...oscillator,
    capacitance: oscillator.capacitance * (meanAfter(meters[at].crossings, settled) / frequency) ** 2
  });
  return [trimmed(pair[0], a, 0), trimmed(pair[1], b, 1)];
};
