/**
 * What faults make of a circuit's figures: the circuit is prepared once (the expensive part, in steps), then any fault or
 * pair of faults can be put into it and every meter's figure predicted in microseconds. Exact for the linear network that
 * the circuit is modelled as.
 */
import type { Circuit, Quantity, Site } from '#plan/schema';
import type { ToleranceInput } from '../../results';
import type { CauseKind, Estimate, MeasuringPlace } from '../results';

/** One figure that a meter is asked for. */
export interface AskedFigure extends MeasuringPlace {
  readonly quantity: Quantity;
  /** At which the meter says that it measures inductance, Q and responses; null: the usual, at the unit its own. */
  readonly meterFrequency_Hz: number | null;
  /** Of the wires; null: the site's. */
  readonly temperature_C: number | null;
  /** Frequency setting at which the unit is believed to stand; null: the channel's. */
  readonly setting: number | null;
  /** That stands where it lowers most what is there, faults and all; for `deltaLOverL` alone. Has to be prepared. */
  readonly vehicle: string | null;
}

/**
 * What the meter shows: a number in SI; 'over range' where it shows none, for being over its range or for want of anything
 * to show (an open circuit; a unit that finds no frequency); 'sound' for an insulation that is as good as it happens to be,
 * `SOUND_INSULATION`; null where the model says nothing.
 */
export type Predicted = number | 'over range' | 'sound' | null;

/**
 * Insulation of what is sound, Ω: log-uniform between the two, with the share `overRange` above what a tester shows.
 * Common practice: new cable in a dry duct is beyond most testers, old and damp cable that still serves lies lower.
 */
export const SOUND_INSULATION = { low: 5e7, high: 1e10, overRange: 0.3 } as const;

export type UnknownName = Estimate['name'];

/** A quantity of a cause that nobody knows beforehand. */
export interface Unknown {
  readonly name: UnknownName;
  /** How it is spaced, and between which values it may be interpolated: 'whole' ones not at all. */
  readonly scale: 'log' | 'linear' | 'whole';
  readonly values: readonly number[];
  /** Of the values beforehand; add up to one. */
  readonly weights: readonly number[];
}

/** A single fault that this circuit can have, with all that is not known of it. The grid is the product of its unknowns. */
export interface Hypothesis {
  readonly kind: CauseKind;
  /** Loop, wire or circuit; null for the lead-in, its splice and the circuit as a whole. */
  readonly subject: string | null;
  /** Where there are several of one kind and subject: which of them, to be handed on to `ConcreteFault`. */
  readonly variant?: number | undefined;
  readonly unknowns: readonly Unknown[];
}

/** A fault of which everything is known. */
export interface ConcreteFault {
  readonly kind: CauseKind;
  readonly subject: string | null;
  /**
   * Of shorted turns: the first of them counted from the bottom of the slot; left out, those in the middle. Of steel: how
   * much it loses, from a plate to thin bars.
   */
  readonly variant?: number | undefined;
  readonly values: Readonly<Partial<Record<UnknownName, number>>>;
}

/** What moves figures beside the meter: the design's tolerances, and the errors of the model itself. */
export interface Spread {
  readonly inputs: readonly ToleranceInput[];
  /**
   * Of each asked figure: the change of its natural logarithm (of ΔL/L: of its size) for one standard deviation of each
   * input. Figures move together: their covariance is the sum over the inputs of the products. Zeros for a figure that is
   * no number, and for insulation.
   */
  readonly derivatives: readonly (readonly number[])[];
  /** Of each asked figure: one standard deviation of the model's own error, as a share; independent. */
  readonly model: readonly number[];
}

export interface Prepared {
  readonly site: Site;
  readonly circuit: Circuit;
  /** Of the whole lead-in, metres. */
  readonly leadInLength_m: number;
  /** Ids of the circuit's loops, string by string. */
  readonly loops: readonly string[];
  /** Of the unit's channel as designed, Hz. */
  readonly operatingFrequency_Hz: number;
  /** Single faults, without "nothing wrong" (no fault at all) and "something else" (no model). */
  readonly hypotheses: readonly Hypothesis[];
  /** One or two faults at once, or none. In the order of `asked`. */
  predict(faults: readonly ConcreteFault[], asked: readonly AskedFigure[]): readonly Predicted[];
  /** About what these faults make of the circuit: some 12 times as expensive as predicting. */
  spread(faults: readonly ConcreteFault[], asked: readonly AskedFigure[]): Spread;
  /** Every figure that can be asked for, under the usual conditions; of ΔL/L for the prepared vehicles. */
  readonly askable: readonly AskedFigure[];
}
