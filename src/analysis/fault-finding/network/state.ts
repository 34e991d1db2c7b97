/** A circuit with faults in it, as what is different about each of its parts. */
import type { Wire } from '#plan/catalogue/wires';
import type { Design } from './design';
import { RememberedOf } from './remembered';
import type { NearSteel } from './steel-near';

/** Turns that are joined by a contact, counted from the bottom of the slot. */
interface ShortedTurns {
  readonly from: number;
  readonly count: number;
  /** Of the contact, Ω. */
  readonly resistance: number;
}

export interface LoopState {
  readonly turns: number;
  readonly wire: Wire;
  readonly shorted: ShortedTurns | null;
  readonly isOpen: boolean;
  /** Its string goes on without it. */
  readonly isMissing: boolean;
  readonly reversed: boolean;
  /** In its splice at the pull box, Ω. */
  readonly splice: number;
  /** From its wire to the ground, Ω; null where that is sound. */
  readonly leak: number | null;
}

export interface LeadInState {
  readonly isOpen: boolean;
  /** In series in its splice to the loops, Ω. */
  readonly splice: number;
  /** Between the two wires in that splice, S. */
  readonly shunt: number;
  /** Between its wires, so far from the cabinet, metres and Ω. */
  readonly short: { readonly distance: number; readonly resistance: number } | null;
  /** More of it than designed, metres. */
  readonly extra: number;
  /** To the ground, Ω, and whether that is in its splice. */
  readonly leak: number | null;
  readonly isSpliceWet: boolean;
  /** A contact of its wires in the splice. */
  readonly isSpliceShorted: boolean;
}

export interface State {
  /** The same for states that differ in the lead-in, the unit and the meter alone. */
  readonly key: string;
  readonly loops: readonly LoopState[];
  /** Number of each loop's string. */
  readonly strings: readonly number[];
  /** That nobody drew. */
  readonly steel: NearSteel | null;
  /** Circuit whose loops are spliced to the lead-in in place of these. */
  readonly other: string | null;
  readonly leadIn: LeadInState;
  /** At which the unit really stands. */
  readonly setting: number | null;
  /** At which the meter really measures. */
  readonly meterFrequency: number | null;
}

const SOUND: LeadInState = {
  isOpen: false,
  splice: 0,
  shunt: 0,
  short: null,
  extra: 0,
  leak: null,
  isSpliceWet: false,
  isSpliceShorted: false
};

const soundStates = new RememberedOf<Design, State>();

/** Nothing wrong: one object a design, so that what is worked out of its parts is found again. */
export const soundState = (design: Design): State => soundStates.get(design, () => made(design));

const made = ({ loops }: Design): State => ({
  key: '',
  loops: loops.map(({ loop, model, reversed }) => ({
    turns: loop.turns,
    wire: model.wire,
    shorted: null,
    isOpen: false,
    isMissing: false,
    reversed,
    splice: 0,
    leak: null
  })),
  strings: loops.map(({ string }) => string),
  steel: null,
  other: null,
  leadIn: SOUND,
  setting: null,
  meterFrequency: null
});
