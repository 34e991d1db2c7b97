/** Two channels let run in time: what is asked, and what comes of it, ready to be drawn. */

export interface SimulationWish {
  /** Two circuits on channels; null for an invented pair of equal loops. The second one's loops are moved. */
  readonly circuits: readonly [string, string] | null;
  /** Further away along the line between the middles of their loops, metres. */
  readonly extraDistance_m: number;
  /** Between their frequencies at rest, by moving the second's; null leaves both where they are. */
  readonly separation_Hz: number | null;
  /** Of both units; null for each unit's own. */
  readonly measuringTime_s: number | null;
}

/** Points of a curve, of equal number. */
export interface Curve {
  /** s from the beginning of what is shown. */
  readonly times: readonly number[];
  readonly values: readonly number[];
}

/** A swing, and what a unit reads of it: as a frequency and as an apparent ΔL/L, both plus or minus. */
export interface Swing {
  readonly swing_Hz: number;
  readonly ripple: number;
  /** After averaging over the measuring time, at the worst moment to begin. */
  readonly averaged_Hz: number;
  readonly averaged: number;
}

export interface SimulatedSide {
  /** Null in the invented pair. */
  readonly circuit: string | null;
  readonly inductance_H: number;
  readonly q: number;
  /** By itself, with nothing coupled to it. */
  readonly frequency_Hz: number;
  readonly measuringTime_s: number;
  readonly tripThreshold: number;
  /** The shift of the frequency that trips it, Hz. */
  readonly threshold_Hz: number;
  readonly law: Swing;
  readonly seen: Swing;
  /** What was seen after averaging, over the threshold. */
  readonly ratio: number;
  /** Every cycle's frequency, Hz above its mean, over a few beats. */
  readonly cycles: Curve;
  /** The amplitude over the same time, over the amplitude that the tank has by itself. */
  readonly amplitude: Curve;
  /** One reading after the other, Hz above the mean, each at the time at which it began. */
  readonly readings: Curve;
}

export interface BeatSimulation {
  readonly wish: SimulationWish;
  readonly k: number;
  readonly mutual_H: number;
  /** Between the middles of the loops, metres: as drawn, and as simulated. */
  readonly drawnDistance_m: number;
  readonly distance_m: number;
  /** Between the frequencies that either has by itself: as drawn, and as simulated. */
  readonly drawnSeparation_Hz: number;
  readonly separation_Hz: number;
  /** Between the mean frequencies that came out; 0 where they lock. */
  readonly beat_Hz: number;
  /** |k|·f over the separation, of the side where it is more: the law is first order in it. Infinite without a separation. */
  readonly strength: number;
  /** Neither swings: they run in step, on one frequency. */
  readonly isLocked: boolean;
  /** The units' own, as far as `LONGEST_MEASURED`. */
  readonly ownMeasuringTime_s: number;
  /** Length of `cycles` and of `readings`, s. */
  readonly shownCycles_s: number;
  readonly shownReadings_s: number;
  readonly sides: readonly [SimulatedSide, SimulatedSide];
}

/** A unit that measures longer is simulated with this: it would average even more away. */
export const LONGEST_MEASURED = 0.1;
