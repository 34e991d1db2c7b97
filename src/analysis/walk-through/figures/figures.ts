/** The site's own figures that a way through a complaint rests on. SI; a response is −ΔL/L, positive for a drop. */
import type { Channel, Circuit, Quantity, Site, TestPoint, Unit } from '#plan/schema';
import type { DetectionHeight, PassReadout } from '../../passing/results';
import type { TerminalReadout } from '../../readouts/circuits';
import type { Remedy, VehicleResponse } from '../../results';

/** A figure, and between what a meter plausibly shows it: tolerances and the meter's error together. */
export interface Span {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Name of the site's instrument whose error counts; null: a usual meter's. */
  readonly meter: string | null;
}

/** A circuit that runs at the same time. */
export interface OwnBeat {
  readonly other: string;
  /** Ripple over this circuit's own threshold. */
  readonly ratio: number;
  readonly separation_Hz: number;
  /** Of the coupling, what comes from shared conduits. */
  readonly conduitShare: number;
}

/** What a lane beside does to a circuit. */
export interface PickUp {
  readonly circuit: string;
  readonly lane: string;
  readonly vehicle: string;
  readonly response: number;
  /** Over that circuit's threshold. */
  readonly ratio: number;
}

export interface LastReading {
  /** Null: over the meter's range. */
  readonly value: number | null;
  /** Day, as the document has it; empty where it has none. */
  readonly day: string;
}

export interface WalkFigures {
  readonly site: Site;
  readonly circuit: Circuit;
  readonly channel: Channel | null;
  readonly unit: Unit | null;
  readonly terminals: TerminalReadout;
  readonly expected: {
    readonly resistanceDc_ohm: Span;
    readonly inductance_H: Span;
    readonly frequency_Hz: Span;
  };
  /** At which the inductance is expected, Hz: of the meter in hand, or of a usual one. */
  readonly meterFrequency_Hz: number;
  readonly leadIn: { readonly length: number; readonly resistance_ohm: number };
  /** The strictest limit that the site has chosen. */
  readonly insulationLimit_ohm: number;
  readonly responses: readonly VehicleResponse[];
  /** Of every circuit with a channel, the strongest first. */
  readonly pickUps: readonly PickUp[];
  /** Of this circuit, the strongest first. */
  readonly beats: readonly OwnBeat[];
  /** What would clear the pair that the way has ended at; empty until then. */
  readonly remedies: readonly Remedy[];
  /** At rest, of every circuit that oscillates. */
  readonly frequencies: ReadonlyMap<string, number>;
  /** Lanes that each circuit serves. */
  readonly lanes: ReadonlyMap<string, readonly string[]>;
  readonly passes: readonly PassReadout[];
  readonly heights: readonly DetectionHeight[];
  /** From the loops to the nearest gate that is drawn, metres. */
  readonly gateDistance: number | null;
  readonly lastRead: (testPoint: TestPoint, quantity: Quantity) => LastReading | null;
}
