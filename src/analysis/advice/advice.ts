/** What the turns adviser answers: figures and codes, no prose. SI; ratios are fractions. */

/** What the designer wants at the unit's terminals. */
export interface TurnsWish {
  readonly least_H: number;
  readonly most_H: number;
  readonly leastQ: number;
  /** The one loop of the circuit that may change; all of them alike without it. */
  readonly loop?: string;
}

/** What can be said against a choice: by code, what `value` and `limit` of an objection are. */
export const OBJECTIONS = [
  /** Terminal inductance, H, against the window's lower end. */
  'inductance-low',
  /** Against its upper end. */
  'inductance-high',
  /** Q against the least. */
  'q-low',
  /** Insulated diameter against the slot's width, metres. */
  'slot-narrow',
  /** Cover, metres, against none: the wires stand out of the slot. */
  'slot-full',
  /** Cover against what is usual, metres. */
  'cover-thin',
  /** The loops' share of the terminal inductance against a half: a lead-in that outweighs them hides the vehicles. */
  'lead-in-heavy',
  /** Self-resonance over operating frequency, against a ratio where the winding's capacitance begins to rule. */
  'resonance-near'
] as const;
export type ObjectionCode = (typeof OBJECTIONS)[number];

export interface Objection {
  readonly code: ObjectionCode;
  readonly value: number;
  readonly limit: number;
  /** Rules the choice out; otherwise a caution. */
  readonly refuses: boolean;
}

/** One choice, computed in full: turns and wire of every loop that may change. */
export interface TurnsChoice {
  readonly turns: number;
  /** Id of the wire. */
  readonly wire: string;
  readonly inductance_H: number;
  readonly resistance_ohm: number;
  readonly q: number;
  readonly frequency_Hz: number;
  /** Lowest self-resonance of its loops over the operating frequency. */
  readonly resonanceRatio: number;
  /** How much of a change in the loops' inductance arrives at the terminals, as a ratio of relative changes. */
  readonly loopShare: number;
  /** The least of the loops that may change, metres; negative where wires stand out. */
  readonly cover_m: number;
  /** Turns in the slots, of the loops that may change. */
  readonly wireLength_m: number;
  /** Refusals first. */
  readonly objections: readonly Objection[];
}

export interface Why {
  /** What one turn fewer of this wire would have against it; null for a single turn. */
  readonly oneTurnFewer: Objection | null;
  /** Why this wire among those that need no more turns. */
  readonly wire: 'only' | 'drawn' | 'thinnest' | 'highest-q';
  /** Q over the least wanted. */
  readonly qRatio: number;
}

/** What a rule of thumb says of one number of turns, in the drawn wire. */
export interface ThumbRow {
  readonly turns: number;
  /** Of the loops as they are wired, without lead-in and without coupling. */
  readonly loops_H: number;
  /** The same by the model. */
  readonly modelled_H: number;
  /** The rule over the model, less one. */
  readonly error: number;
}

export interface RulesOfThumb {
  readonly rows: readonly ThumbRow[];
  /** Fewest turns whose inductance, with lead-in and tails, lies in the window; null if none does. */
  readonly turns: number | null;
  /** Inductance of the lead-in, H. */
  readonly leadIn_H: number;
  /** Fewest turns with which the loops outweigh the lead-in. */
  readonly leastTurnsForLeadIn: number | null;
}

export interface TurnsAdvice {
  readonly circuit: string;
  /** Ids of the loops that may change. */
  readonly loops: readonly string[];
  readonly wish: TurnsWish;
  /** By wire as in the catalogue, then by turns. */
  readonly choices: readonly TurnsChoice[];
  readonly best: TurnsChoice | null;
  readonly why: Why | null;
  /** Where nothing satisfies: the choice that misses by least; its refusals say what would have to change. */
  readonly nearest: TurnsChoice | null;
  /** Null where the rule does not speak of such a shape. */
  readonly rulesOfThumb: RulesOfThumb | null;
}
