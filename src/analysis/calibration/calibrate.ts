/**
 * What a frequency that was read on the site says of the capacitance behind it. The circuit is solved at that frequency,
 * as it is drawn and at the site's temperature; the capacitance is the one on which it runs there. How well it is known
 * is how well the circuit is: every tolerance of the site moves it, the reading itself is taken as exact.
 */
import { tankCapacitance } from '#physics/coupling/beat';
import type { Channel, Circuit, Site } from '#plan/schema';
import { ownMeans, solveAlone, type Alone, type AloneMeans } from '../electrical/alone';
import { solveCircuit } from '../electrical/circuit-model';
import type { PlausibleRange } from '../results';
import { finish, type Steps } from '../steps';
import { rangeOf } from '../tolerance/range';
import { shiftsOf } from '../tolerance/shifts';

export interface CalibrationWish {
  readonly circuit: string;
  /** As it was read, Hz. */
  readonly frequency_Hz: number;
  /** What the setting's capacitance is taken to be so far. */
  readonly present_F: number;
}

export interface CalibrationAnswer {
  readonly wish: CalibrationWish;
  /** Of the circuit at that frequency, at the unit's terminals. */
  readonly inductance_H: number;
  readonly q: number;
  readonly capacitance_F: number;
  readonly range_F: PlausibleRange;
  /** What the present capacitance lets the circuit run at; null where it would not oscillate. */
  readonly expected_Hz: number | null;
}

/** Of a circuit that is on none; only its frequency matters here. */
const NO_CHANNEL: Channel = {
  ...{
    unit: '',
    number: 1,
    frequencySetting: 1,
    frequency_Hz: null,
    tripThreshold: 0.001,
    releaseRatio: 0.6
  },
  output: { mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null }
};

/** Driven at a frequency, whatever its channel says. */
const drivenAt = (circuit: Circuit, frequency_Hz: number): Circuit => ({
  ...circuit,
  channel: { ...(circuit.channel ?? NO_CHANNEL), frequency_Hz }
});

/** Inductive, and with a Q at which the law of `tankCapacitance` still means something: 1/(8Q²) under 1. */
const oscillates = ({ solved: { inductance, q } }: Alone): boolean => inductance > 0 && 8 * q * q > 1;

/** In steps. Null for a circuit that is not there, cannot be wound, or does not oscillate at the frequency. */
export function* calibrateInSteps(
  site: Site,
  wish: CalibrationWish,
  means: AloneMeans = ownMeans()
): Steps<CalibrationAnswer | null> {
  const drawn = site.circuits.find(({ id }) => id === wish.circuit);
  if (!drawn) return null;
  const circuit = drivenAt(drawn, wish.frequency_Hz);
  const alone = solveAlone(site, circuit, means);
  if (!alone || !oscillates(alone)) return null;
  const capacitanceOf = ({ solved }: Alone): number =>
    tankCapacitance(solved.inductance, wish.frequency_Hz, solved.q);
  const { solved } = alone;
  const expected = solveCircuit({ ...solved.input, frequency: null, setting: wish.present_F });
  yield;
  const { pairs } = yield* shiftsOf(site, circuit, solved, means);
  const capacitance_F = capacitanceOf(alone);
  const bends = pairs.map(({ input, below, above }) => ({
    input,
    below: { share: below.share, value: capacitanceOf(below.alone) },
    above: { share: above.share, value: capacitanceOf(above.alone) }
  }));
  return {
    ...{ wish, capacitance_F },
    inductance_H: solved.inductance,
    q: solved.q,
    range_F: rangeOf(capacitance_F, bends),
    expected_Hz: expected.frequencyFrom === 'setting' ? expected.frequency : null
  };
}

/** The same at once. */
export const calibrate = (...given: Parameters<typeof calibrateInSteps>): CalibrationAnswer | null =>
  finish(calibrateInSteps(...given));
