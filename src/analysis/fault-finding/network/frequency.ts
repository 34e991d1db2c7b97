/** The frequency at which the unit's channel runs on whatever hangs on its terminals. */
import { oscillatorFrequency, tankCapacitance } from '#physics/coupling/beat';
import type { Complex } from '#physics/numeric/complex';
import { settledFrequency } from '../../electrical/circuit-model';

/** Below this quality factor no channel keeps swinging; the law of its frequency has lost its meaning there. */
const LEAST_Q = 0.5;

interface Tank {
  readonly inductance: number;
  readonly q: number;
}

const tankOf = ({ re, im }: Complex, frequency: number): Tank => ({
  inductance: im / (2 * Math.PI * frequency),
  q: im / re
});

/** Hz; null where it cannot swing. `terminals` at a frequency: null for an open end. */
export const runningFrequency = (
  terminals: (frequency: number) => Complex | null,
  capacitance: number,
  start: number
): number | null => {
  const aim = (frequency: number): number => {
    const impedance = terminals(frequency);
    if (!impedance || !(impedance.im > 0)) return NaN;
    const { inductance, q } = tankOf(impedance, frequency);
    return q < LEAST_Q ? NaN : oscillatorFrequency(inductance, capacitance, q);
  };
  const first = terminals(start);
  // losses that stop it at one frequency stop it at any other nearby: no need to look further
  if (!first || (first.im > 0 && first.im < LEAST_Q * first.re)) return null;
  return settledFrequency(aim, start);
};

/** F: what makes the circuit run at a frequency that was given rather than set. */
export const capacitanceBehind = (terminals: Complex, frequency: number): number | null => {
  const { inductance, q } = tankOf(terminals, frequency);
  return inductance > 0 ? tankCapacitance(inductance, frequency, q) : null;
};
