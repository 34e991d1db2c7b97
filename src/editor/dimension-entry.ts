/** Sizes typed while a gesture is in hand: what is typed stays fixed, the pointer moves the rest. */
import type { Point } from '#plan/schema';
import type { QuantityKind } from '#units/kind';
import type { PointerInput } from './types';

/** SI; angles in degrees counter-clockwise from the plan's x axis. */
export interface EntryValues {
  readonly width?: number;
  readonly length?: number;
  readonly angle?: number;
  readonly diameter?: number;
  readonly radius?: number;
  /** From where the gesture began. */
  readonly across?: number;
  readonly up?: number;
  /** From a line that is already there, to the side where the pointer is. */
  readonly aside?: number;
}

/** What was typed, as a tool gets it with every movement of the pointer. */
export interface TypedSizes extends EntryValues {
  /** A place that was typed from where the gesture began, metres; it comes before all else. */
  readonly offset?: Point;
}

export const NOTHING_TYPED: TypedSizes = {};

/** A size that a gesture has, and within which bounds it can be typed; SI. */
export interface SizeOffer {
  readonly id: keyof EntryValues;
  readonly kind: QuantityKind;
  /** As the gesture has it now. */
  readonly value: number;
  readonly least?: number;
  readonly most?: number;
}

/** What a gesture lets somebody type. */
export interface EntryOffer {
  /** Names the piece of work: what was typed for one piece does not hold for the next. */
  readonly of: string;
  readonly fields: readonly SizeOffer[];
  /** Whether a place from the last point can be typed too: "@3,2", "@5<30". */
  readonly takesPlace: boolean;
}

export interface EntryField extends SizeOffer {
  /** As typed; null while the pointer decides. */
  readonly text: string | null;
  /** What the text says; null for none and for one that cannot be taken. */
  readonly typed: number | null;
  /** Why what is typed cannot be taken; null if it can. */
  readonly problem: string | null;
}

/** A place from the last point as typed, "@" included. */
export interface PlaceEntry {
  readonly text: string;
  readonly offset: Point | null;
  readonly problem: string | null;
}

export interface DimensionEntry {
  readonly of: string;
  readonly fields: readonly EntryField[];
  /** The field that keys go to; null until a digit opens one. */
  readonly active: number | null;
  readonly takesPlace: boolean;
  /** Typed instead of the fields; null unless "@" was pressed. */
  readonly place: PlaceEntry | null;
  /** Somebody wanted to go on with a text that cannot be taken; until the next key. */
  readonly isRefused: boolean;
  /** Where the pointer is, metres. */
  readonly at: Point;
  /** What moves it: keys stand for a pointer too. */
  readonly by: PointerInput['pointer'] | 'keys';
}
