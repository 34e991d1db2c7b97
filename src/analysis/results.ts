/** What follows from a drawing. SI; ratios are fractions; a drop is negative. Everything here is plain data: it crosses from the worker to the page. */
import type { Point } from '#plan/schema';
import type { Beat, ChannelReadout } from './beating/results';
import type { CallSummary } from './calls/results';
import type { DetectionHeight, PassReadout } from './passing/results';
import type { TakeoffLine } from './takeoff/results';

export * from './beating/results';

/** From the dry to the wet pavement of the catalogue: the low and the high end of what its permittivity leaves open. */
interface DryWet {
  readonly dry: number;
  readonly wet: number;
}

/** What the loop alone loses at its frequency, Ω in series. */
export interface LoopLosses {
  readonly copperDc_ohm: number;
  /** What skin and proximity effect add to the copper's direct-current resistance. */
  readonly skin_ohm: number;
  readonly proximity_ohm: number;
  /** Currents in a conducting pavement, and the losses of the capacitance through it. */
  readonly pavement_ohm: number;
  readonly steel_ohm: number;
  /** The user's own figure. */
  readonly added_ohm: number;
}

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
  /** What a bridge reads at the loop's ends: the magnetic inductance raised by the capacitance. */
  readonly apparentInductance_H: number;
  readonly turnCapacitance_F: number;
  readonly groundCapacitance_F: number;
  readonly capacitanceRange_F: DryWet;
  readonly apparentInductanceRange_H: DryWet;
  readonly selfResonanceRange_Hz: DryWet;
  readonly losses: LoopLosses;
  /** What steel takes from the magnetic inductance, H; 0 or negative, already in `inductance_H`. */
  readonly steelInductance_H: number;
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
  /** The same at the worst. */
  readonly worstAt: Point;
  readonly worstHeading: number;
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

/** Terminal figures under one condition. */
export interface Terminals {
  readonly frequency_Hz: number;
  readonly inductance_H: number;
  readonly resistance_ohm: number;
  readonly q: number;
  readonly resistanceDc_ohm: number;
}

export const LOSS_CAUSES = [
  'copper',
  'skin',
  'proximity',
  'tail',
  'lead-in',
  'pavement',
  'steel',
  'added'
] as const;
export type LossCause = (typeof LOSS_CAUSES)[number];

/** A share of the terminal resistance: what dissipates there, per terminal ampere squared. All shares add up to it. */
export interface LossShare {
  readonly cause: LossCause;
  readonly resistance_ohm: number;
}

/** What a tolerance acts on; the order is that of the fields in the document. */
export const TOLERANCE_INPUTS = [
  'dimensions',
  'depth',
  'wirePitch',
  'leadInLength',
  'temperature',
  'permittivity',
  'vehicleHeight'
] as const;
export type ToleranceInput = (typeof TOLERANCE_INPUTS)[number];

/** Where a figure plausibly lies, nineteen times in twenty, if every tolerance is as stated. */
export interface PlausibleRange {
  readonly low: number;
  readonly high: number;
  /** Linear: contributions added as squares. Sampled: the figure bends too much for that. */
  readonly method: 'linear' | 'sampled';
  /** Half widths by input, same unit as the figure, the largest first; inputs without effect are left out. */
  readonly contributions: readonly { readonly input: ToleranceInput; readonly halfWidth: number }[];
}

/** Of one loop alone; without a conducting pavement's losses in its capacitance. */
export interface LoopRanges {
  readonly id: string;
  readonly inductance_H: PlausibleRange;
  readonly resistance_ohm: PlausibleRange;
  readonly resistanceDc_ohm: PlausibleRange;
  readonly selfResonance_Hz: PlausibleRange;
}

export interface CircuitRanges {
  readonly inductance_H: PlausibleRange;
  readonly resistance_ohm: PlausibleRange;
  readonly resistanceDc_ohm: PlausibleRange;
  readonly q: PlausibleRange;
  readonly frequency_Hz: PlausibleRange;
  /** Of its loops alone, in the order of the strings. */
  readonly loops: readonly LoopRanges[];
  /** Of the worst path's response, one a vehicle of `responses`. */
  readonly responses: readonly { readonly vehicle: string; readonly worst: PlausibleRange }[];
}

/** A standard test plate driven over the circuit, as a vehicle is. */
export interface ClassMargin {
  /** Id of the test plate in the catalogue. */
  readonly vehicle: string;
  /** ΔL/L that the class means on the standard loop (negative: a drop). */
  readonly onStandardLoop: number;
  /** Here, on the best and the worst path across the lane. */
  readonly best: number;
  readonly worst: number;
  /** −worst over the trip threshold; null without a channel. */
  readonly margin: number | null;
}

/** What the steel in the pavement costs a circuit. Shares are fractions of the figure without steel; positive = lost. */
export interface SteelCost {
  readonly withoutSteel: Terminals;
  readonly inductanceShare: number;
  readonly qShare: number;
  /** By vehicle of `responses`, of the worst path's response. */
  readonly responses: readonly {
    readonly vehicle: string;
    readonly withoutSteel: number;
    readonly share: number;
  }[];
  /** The depth below which the steel costs the first vehicle asked for less than `statedShare`; null if no depth to 2 m does. */
  readonly statedShare: number;
  readonly clearDepth_m: number | null;
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
  /** With every capacitance at nothing: the magnetic inductance of loops, tails and lead-in at the terminals. */
  readonly magneticInductance_H: number;
  readonly losses: readonly LossShare[];
  readonly cold: Terminals & { readonly temperature_C: number };
  readonly hot: Terminals & { readonly temperature_C: number };
  readonly dry: Terminals;
  readonly wet: Terminals;
  /** Responses and neighbours are those of the drawing as it was a moment ago; the next answers bring the new ones. */
  readonly isFollowing: boolean;
  readonly responses: readonly VehicleResponse[];
  readonly neighbours: readonly NeighbourResponse[];
  /** Null until computed: these follow an edit in later answers. */
  readonly ranges: CircuitRanges | null;
  readonly classes: readonly ClassMargin[] | null;
  /** Null also where no steel lies near the circuit. */
  readonly steel: SteelCost | null;
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

/** A line of the take-off as the report has it: how it came about, and where, is only shown. */
export interface QuantityLine extends Pick<
  TakeoffLine,
  'id' | 'subject' | 'what' | 'item' | 'amount' | 'unit' | 'gross'
> {
  /** Of the gross amount, before whole packs; null where the price book says nothing. */
  readonly cost: number | null;
}

/** Totals as the drawing says: no waste, no overcuts. */
export interface Quantities {
  readonly wire_m: number;
  readonly sawCut_m: number;
  readonly sealant_m3: number;
  readonly leadIn_m: number;
  /** Of one crew on the site. */
  readonly crew_h: number;
  /** Hours of all people in the crew together. */
  readonly work_h: number;
  readonly currency: string | null;
  /** Of what is bought, in whole packs where the site asks for them; what has no price is not in it. */
  readonly cost: number;
  readonly contingency: number;
  readonly costWithContingency: number;
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
  /** True while something else follows: passes over steel, ranges, class margins, the cost of steel. */
  readonly isFollowed: boolean;
  readonly loops: readonly LoopReadout[];
  readonly couplings: readonly Coupling[];
  readonly circuits: readonly CircuitReadout[];
  /** Vehicles in play whose figures the model does not bear out: plates too large for their height. */
  readonly beyondModel: readonly string[];
  readonly probes: readonly ProbeReadout[];
  readonly channels: readonly ChannelReadout[];
  /** Pairs that can run at the same time. */
  readonly beats: readonly Beat[];
  /** Pairs that are not listed because all of them are clear and weaker than those that are. */
  readonly weakerBeats: number;
  /** Null until computed: these follow an edit in later answers. */
  readonly passes: readonly PassReadout[] | null;
  readonly detectionHeights: readonly DetectionHeight[] | null;
  /** What the drawing's own traffic comes to; null also without one. */
  readonly calls: readonly CallSummary[] | null;
  /** Null on a page, which asks the take-off itself: its first answer must not wait for it. */
  readonly quantities: Quantities | null;
  readonly findings: readonly Finding[];
}
