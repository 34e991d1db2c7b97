/** What a circuit's meters should say, what they said, and what may be wrong. SI; plain data throughout. */
import type { Quantity, TestPoint } from '#plan/schema';
import type { ToleranceInput } from '../results';

/** Where something is measured: a loop alone has its name. */
export interface MeasuringPlace {
  readonly testPoint: TestPoint;
  /** Only at "loop". */
  readonly loop: string | null;
}

/** A limit that was published or agreed. */
export interface Limit {
  /** Of `plan/catalogue/acceptance.ts`, or "own". */
  readonly id: string;
  readonly least: number | null;
  readonly most: number | null;
}

/** One figure that a meter should show if everything is as designed. */
export interface ExpectedFigure extends MeasuringPlace {
  readonly quantity: Quantity;
  /** Null where a design says nothing, as of insulation: then limits alone hold. */
  readonly value: number | null;
  /** Plausible, nineteen times in twenty, from the design's tolerances. */
  readonly low: number | null;
  readonly high: number | null;
  readonly contributions: readonly { readonly input: ToleranceInput; readonly halfWidth: number }[];
  /** At which inductance and Q hold, Hz. */
  readonly frequency_Hz: number | null;
  /** For `deltaLOverL`: of which vehicle, where it answers most. */
  readonly vehicle: string | null;
  readonly limits: readonly Limit[];
}

/** Under which something is measured; what is left out is as the site and its instruments usually have it. */
export interface MeterConditions {
  /** At which the meter measures inductance and Q away from the unit. */
  readonly meterFrequency_Hz?: number;
  /** Of the wires, in the place of the site's temperature and its tolerance. */
  readonly temperature_C?: number;
  /** Frequency setting of the unit. */
  readonly setting?: number;
}

export interface CircuitExpectation {
  readonly circuit: string;
  readonly figures: readonly ExpectedFigure[];
}

/** A key under `causes.` and what fills it: SI values with their kind, or words. */
export interface Told {
  readonly key: string;
  readonly values: Readonly<Record<string, ToldValue>>;
}
export interface ToldAmount {
  readonly value: number;
  readonly kind:
    | 'count'
    | 'length'
    | 'smallLength'
    | 'resistance'
    | 'inductance'
    | 'frequency'
    | 'insulation'
    | 'ratio'
    /** Seconds. */
    | 'time'
    /** °C, of a thing; not a difference. */
    | 'temperature'
    | 'share'
    | 'plain';
}
/** A day of ISO 8601. */
interface ToldDay {
  readonly day: string;
}
export type ToldValue = string | ToldDay | ToldAmount;

/** Of one measured figure. */
export type FigureVerdict =
  /** Within what meter and tolerances allow. */
  | 'fits'
  | 'low'
  | 'high'
  /** Beyond a published or agreed limit. */
  | 'beyond a limit'
  /** No circuit can read so: the entry or the meter is in doubt. */
  | 'in doubt'
  /** Nothing is expected of it. */
  | 'no expectation';

export interface MeasuredFigure extends MeasuringPlace {
  /** Place in `site.readings`. */
  readonly reading: number;
  readonly quantity: Quantity;
  /** Null: the meter was over its range. */
  readonly value: number | null;
  readonly expected: ExpectedFigure | null;
  /** One standard deviation of the meter alone, in the quantity's unit. */
  readonly meterDeviation: number;
  /** How many standard deviations of meter and tolerances together it lies from the expected; null where that means nothing. */
  readonly deviations: number | null;
  readonly verdict: FigureVerdict;
  /** Why it is in doubt, which limit it breaks, or what is asked about it for lying far out of this circuit's own range. */
  readonly doubt: Told | null;
}

export const CAUSE_KINDS = [
  'nothing wrong',
  'shorted turns',
  'wrong turns',
  'wrong wire',
  'open',
  'resistive splice',
  'short at splice',
  'short in lead-in',
  'reversed loop',
  'missing loop',
  'parallel for series',
  'series for parallel',
  'wet splice',
  'cut insulation',
  'steel near',
  'other loop',
  'longer lead-in',
  'wrong setting',
  'wrong meter frequency',
  /** Something that none of these models holds. */
  'something else'
] as const;
export type CauseKind = (typeof CAUSE_KINDS)[number];

/** An unknown of a cause, as the readings leave it. */
export interface Estimate {
  readonly name:
    | 'turns'
    | 'shortedTurns'
    | 'distance_m'
    | 'resistance_ohm'
    | 'leakage_ohm'
    | 'depth_m'
    | 'extraLength_m'
    | 'setting'
    | 'frequency_Hz';
  readonly value: number;
  /** Nineteen times in twenty. */
  readonly low: number;
  readonly high: number;
}

export interface Fault {
  readonly kind: CauseKind;
  /** Loop, wire, circuit that it is about. */
  readonly subject: string | null;
  readonly estimates: readonly Estimate[];
}

export interface Evidence {
  /** Place in `Diagnosis.figures`; null for what speaks from the design alone. */
  readonly figure: number | null;
  readonly told: Told;
  /** Natural logarithm of how much likelier the figure is under this cause than if nothing were wrong; negative: against. */
  readonly weight: number;
}

export interface RankedCause {
  /** One fault, or two at once. */
  readonly faults: readonly Fault[];
  readonly probability: number;
  readonly evidence: readonly Evidence[];
  /** What each of `Diagnosis.figures` would be under it. */
  readonly predicted: readonly (number | 'sound' | 'over range' | null)[];
  /** What to do about it, and how to make sure. */
  readonly remedy: Told;
}

export interface NextMeasurement extends MeasuringPlace {
  readonly quantity: Quantity;
  /** That is to stand on the loops, for `deltaLOverL`. */
  readonly vehicle: string | null;
  /** Expected gain, bits. */
  readonly information: number;
  /** Places in `Diagnosis.causes` that it tells apart, and what each would read. */
  readonly separates: readonly { readonly cause: number; readonly low: number; readonly high: number }[];
  /** How to take it. */
  readonly how: Told;
  /** What to mind: mains, traffic, stored energy of an insulation tester. */
  readonly safety: readonly Told[];
}

/** How far along the lead-in a short or a contact lies, from the cabinet. */
export interface FaultDistance {
  readonly from: 'resistance' | 'inductance';
  readonly distance_m: number;
  readonly low: number;
  readonly high: number;
  /** Of the whole lead-in. */
  readonly total_m: number;
  readonly told: Told;
}

export interface Diagnosis {
  readonly circuit: string;
  readonly figures: readonly MeasuredFigure[];
  /** The likeliest first; adds up to one with what is left out below a thousandth. */
  readonly causes: readonly RankedCause[];
  readonly next: readonly NextMeasurement[];
  readonly distances: readonly FaultDistance[];
  /** The readings fit the design: no cause is claimed. */
  readonly fits: boolean;
  /** What the reckoning takes for granted here. */
  readonly assumptions: readonly Told[];
}

/** Which readings are looked at together: places in `site.readings`; none given: the newest visit's. */
export interface DiagnosisWish {
  readonly circuit: string;
  readonly readings?: readonly number[];
}
