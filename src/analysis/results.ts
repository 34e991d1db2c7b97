/** What follows from a drawing. SI; ratios are fractions; a drop is negative. Everything here is plain data: it crosses from the worker to the page. */
import type { Point } from '#plan/schema';

export interface LoopReadout {
  readonly id: string;
  /** Frequency at which the figures hold: the circuit's, or 50 kHz for a loop in no circuit. */
  readonly frequency_Hz: number;
  /** Magnetic, the loop alone: no tail, no lead-in, capacitance apart; the internal part with skin effect. */
  readonly inductance_H: number;
  readonly resistanceDc_ohm: number;
  readonly resistanceAc_ohm: number;
  readonly capacitance_F: number;
  readonly selfResonance_Hz: number;
  /** Turns in the slot only. */
  readonly wireLength_m: number;
  readonly slotLength_m: number;
  /** Road surface down to the top of the uppermost wire; negative when the wires stand out of the slot. */
  readonly cover_m: number;
}

export interface Coupling {
  readonly a: string;
  readonly b: string;
  readonly mutual_H: number;
  readonly k: number;
}

/** A vehicle driven along the lane over the circuit's loops. */
export interface VehicleResponse {
  readonly vehicle: string;
  /** The strongest ΔL/L of the pass on the best and on the worst path across the lane (negative: a drop). */
  readonly best: number;
  readonly worst: number;
  /** Where on the plan the vehicle's centre is at the best; heading in degrees, 90 = along +y. */
  readonly at: Point;
  readonly heading: number;
  /** −worst over the trip threshold; above 1 the vehicle makes a call on every path. Null without a channel. */
  readonly margin: number | null;
  /** Asked for on this circuit. */
  readonly wanted: boolean;
}

export interface NeighbourResponse {
  readonly lane: string;
  readonly vehicle: string;
  readonly deltaLOverL: number;
  readonly at: Point;
}

export interface CircuitReadout {
  readonly id: string;
  readonly frequency_Hz: number;
  /** How the frequency came about. */
  readonly frequencyFrom: 'given' | 'setting' | 'assumed';
  /** At the unit's terminals. */
  readonly inductance_H: number;
  readonly resistance_ohm: number;
  readonly q: number;
  readonly resistanceDc_ohm: number;
  /** Lowest frequency at which a loop of the circuit resonates with its own capacitance. */
  readonly selfResonance_Hz: number;
  readonly responses: readonly VehicleResponse[];
  readonly neighbours: readonly NeighbourResponse[];
}

export interface ProbeReadout {
  readonly vehicle: string;
  readonly at: Point;
  readonly circuits: readonly {
    readonly id: string;
    readonly deltaL_H: number;
    readonly deltaLOverL: number;
    readonly deltaF_Hz: number;
    readonly detected: boolean;
  }[];
  readonly loops: readonly { readonly id: string; readonly deltaL_H: number }[];
}

export type BeatVerdict = 'clear' | 'watch' | 'false calls likely';

export interface Beat {
  readonly a: string;
  readonly b: string;
  readonly k: number;
  /** Smallest distance between the intervals that the two frequencies sweep. */
  readonly separation_Hz: number;
  /** Apparent ΔL/L after the unit's averaging, of the channel that suffers more. */
  readonly ripple: number;
  /** Ripple over that channel's trip threshold. */
  readonly ratio: number;
  readonly verdict: BeatVerdict;
}

export interface QuantityLine {
  readonly subject: string;
  readonly what: 'loop wire' | 'tail wire' | 'loop saw cut' | 'home run saw cut' | 'sealant' | 'lead-in';
  readonly amount: number;
  readonly unit: 'm' | 'm3';
}

export interface Quantities {
  readonly wire_m: number;
  readonly sawCut_m: number;
  readonly sealant_m3: number;
  readonly leadIn_m: number;
  readonly lines: readonly QuantityLine[];
}

export type Severity = 'problem' | 'caution' | 'note';

export interface Finding {
  readonly severity: Severity;
  readonly code: string;
  /** The id of the loop, circuit, lane or pair ("C1 + C2") concerned. */
  readonly subject: string;
  /** Ids of everything to select when the finding is clicked. */
  readonly selects: readonly string[];
  readonly message: string;
  readonly advice: string;
}

export interface Assessment {
  /** True while some vehicles are still being prepared: their responses are missing. */
  readonly pending: boolean;
  readonly loops: readonly LoopReadout[];
  readonly couplings: readonly Coupling[];
  readonly circuits: readonly CircuitReadout[];
  readonly probes: readonly ProbeReadout[];
  readonly beats: readonly Beat[];
  readonly quantities: Quantities;
  readonly findings: readonly Finding[];
}
