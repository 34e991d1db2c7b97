/** Sizes typed while a gesture is in hand: what is typed stays fixed, the pointer moves the rest. */
import type { QuantityKind } from '#units/kind';

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
}

export interface EntryField {
  readonly id: keyof EntryValues;
  readonly kind: QuantityKind;
  /** As the gesture has it now. */
  readonly value: number;
  /** As typed; null while the pointer decides. */
  readonly text: string | null;
  /** Why what is typed cannot be taken; null if it can. */
  readonly problem: string | null;
}

export interface DimensionEntry {
  readonly fields: readonly EntryField[];
  /** The field that keys go to; null until a digit opens one. */
  readonly active: number | null;
}
