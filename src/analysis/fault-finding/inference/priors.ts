/**
 * What is held for likely before any meter speaks. Common practice and judgement, no published source: on the day of
 * commissioning mistakes of building are to be expected, years later what traffic, water and frost do. Weights, not
 * shares: what a circuit cannot have is left out and the rest adds up to one. A kind's weight is spread evenly over the
 * loops, wires or settings that it may be about.
 */
import type { Quantity } from '#plan/schema';
import type { CauseKind } from '../results';

interface Weights {
  readonly commissioning: number;
  readonly later: number;
}

export const KIND_WEIGHTS: Readonly<Record<CauseKind, Weights>> = {
  'nothing wrong': { commissioning: 60, later: 45 },
  'shorted turns': { commissioning: 1, later: 5 },
  'wrong turns': { commissioning: 8, later: 1.5 },
  'wrong wire': { commissioning: 3, later: 1 },
  open: { commissioning: 2, later: 8 },
  'resistive splice': { commissioning: 4, later: 10 },
  'short at splice': { commissioning: 2, later: 4 },
  'short in lead-in': { commissioning: 2, later: 4 },
  'reversed loop': { commissioning: 4, later: 1.5 },
  'missing loop': { commissioning: 2, later: 1 },
  'parallel for series': { commissioning: 2, later: 1 },
  'series for parallel': { commissioning: 2, later: 1 },
  'wet splice': { commissioning: 2, later: 8 },
  'cut insulation': { commissioning: 4, later: 8 },
  'steel near': { commissioning: 3, later: 2 },
  'other loop': { commissioning: 3, later: 1.5 },
  'longer lead-in': { commissioning: 3, later: 1.5 },
  'wrong setting': { commissioning: 4, later: 3 },
  'wrong meter frequency': { commissioning: 2, later: 2 },
  'something else': { commissioning: 1.5, later: 1.5 }
};

/** Of two faults at once, on top of the product of their own: few visits find two. */
export const SECOND_FAULT = 0.3;

/** A figure that is none of the circuit's: mistyped, a bad contact, the neighbour's terminals. */
export const SLIP_SHARE = 0.003;
/** That the digits are right and the prefix or the sign is not: of a response in percent, of ohms typed as kilohms. */
export const PREFIX_SHARE = 0.004;

/** Between which values, evenly on a logarithmic scale, a figure lies of which nothing is known. */
export const ANYTHING: Readonly<Record<Quantity, readonly [number, number]>> = {
  resistanceDc_ohm: [1e-2, 1e7],
  inductance_H: [1e-6, 0.1],
  q: [0.1, 300],
  frequency_Hz: [2e3, 5e5],
  insulation_ohm: [1e3, 1e12],
  insulationBetween_ohm: [1e3, 1e12],
  deltaLOverL: [1e-5, 0.5]
};

/**
 * Above which a meter shows no figure: the middle, and how widely meters differ, as a standard deviation of the natural
 * logarithm. Null: it shows none only where there is nothing to show.
 */
export const METER_TOPS: Readonly<
  Record<Quantity, { readonly top: number; readonly spread: number } | null>
> = {
  resistanceDc_ohm: { top: 2e4, spread: 2.5 },
  inductance_H: { top: 0.02, spread: 1 },
  q: null,
  frequency_Hz: null,
  insulation_ohm: { top: 5e9, spread: 1.5 },
  insulationBetween_ohm: { top: 5e9, spread: 1.5 },
  deltaLOverL: null
};

/** That a meter shows a figure although there is nothing to show: noise, its own leakage, a resonance of the cable. */
export const NOISE_SHARE: Readonly<Record<Quantity, number>> = {
  resistanceDc_ohm: 0.1,
  inductance_H: 0.3,
  q: 0.3,
  frequency_Hz: 0.1,
  insulation_ohm: 0.1,
  insulationBetween_ohm: 0.1,
  deltaLOverL: 0.1
};
/** Then it lies above this; what is lower was measured. */
export const NOISE_ABOVE: Readonly<Partial<Record<Quantity, number>>> = { resistanceDc_ohm: 3e3 };

/** That a meter shows no figure although it should. */
export const LOST_SHARE = 0.002;

/** By how much figures may be off, each for itself, where none of the models holds: shares, each as likely as the others. */
export const UNMODELLED = [0.05, 0.15, 0.4, 1.2] as const;
/** That insulation is bad as well where none of the models holds. */
export const UNMODELLED_LEAK = 0.2;
export const UNMODELLED_LOST = 0.05;
