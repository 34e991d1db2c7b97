/** Two coupled oscillators run from full swing: the rising zero crossings of both. */
import { createFrequencyMeter } from '#physics/coupling/frequency-meter';
import {
  coupledFlow,
  fullSwing,
  startRun,
  VOLTAGE_1,
  VOLTAGE_2,
  type Oscillator
} from '#physics/coupling/oscillators';

export const oscillator = (frequency: number, q: number, excess: number, inductance = 1e-4): Oscillator => ({
  inductance,
  capacitance: 1 / ((2 * Math.PI * frequency) ** 2 * inductance),
  q,
  amplitude: 5,
  excess
});

export const crossingsOf = (
  a: Oscillator,
  b: Oscillator,
  k: number,
  duration: number,
  step = 1 / (50e3 * 40)
): readonly [readonly number[], readonly number[]] => {
  const meters = [createFrequencyMeter(), createFrequencyMeter()] as const;
  startRun(coupledFlow(a, b, k), fullSwing(a, b), step).advance(
    Math.ceil(duration / step),
    (time, state, slope) => {
      meters[0].hear(time, state[VOLTAGE_1]!, slope[VOLTAGE_1]!);
      meters[1].hear(time, state[VOLTAGE_2]!, slope[VOLTAGE_2]!);
    }
  );
  return [meters[0].crossings, meters[1].crossings];
};

export const within = (crossings: readonly number[], from: number, to: number): number[] =>
  crossings.filter((time) => time > from && time < to);

export const meanOf = (crossings: readonly number[]): number =>
  (crossings.length - 1) / (crossings.at(-1)! - crossings[0]!);
