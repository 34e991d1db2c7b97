/** A drawing as it was read: everything a line by now, in its own unit, y upwards. */
import type { Point } from '#plan/schema';

/** What is no line, or cannot be made one. */
export type LeftOut = 'text' | 'fill' | 'dimension' | 'surface' | 'point' | 'picture' | 'sheet' | 'tilted' | 'damaged' | 'other'; // prettier-ignore

export interface DrawnPath {
  /** Place in the list of layers. */
  readonly layer: number;
  readonly points: readonly Point[];
}

export interface DrawnLayer {
  readonly name: string;
  /** Switched off or frozen in the drawing. */
  readonly isHidden: boolean;
  readonly paths: number;
  readonly points: number;
}

export interface Drawing {
  /** Null where the drawing does not say. */
  readonly metresPerUnit: number | null;
  /** Layers with lines, in order of their names. */
  readonly layers: readonly DrawnLayer[];
  readonly paths: readonly DrawnPath[];
  readonly leftOut: readonly { readonly what: LeftOut; readonly count: number }[];
}

/** How much is read at most; what is laid under the plan is less. */
export const MOST = {
  /** Bytes. */
  file: 50_000_000,
  paths: 200_000,
  points: 1_000_000,
  /** Things looked at in blocks that hold blocks that hold blocks. */
  visits: 600_000,
  /** Blocks within one another. */
  depth: 24,
  /** Characters of one thing. */
  thing: 4_000_000
} as const;

/** Why a file is not read, as a key of the messages. */
export type Refusal = 'binary' | 'sealed' | 'none' | 'damaged' | 'cut' | 'empty' | 'tooMuch';

export class Unreadable extends Error {
  readonly why: Refusal;
  constructor(why: Refusal) {
    super(why);
    this.why = why;
  }
}
