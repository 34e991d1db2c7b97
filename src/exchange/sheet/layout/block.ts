/** What flows over the columns of a sheet: blocks of pieces that are never broken themselves. Millimetres. */
import type { Drawing } from '#scenes/drawing';

export interface Piece {
  readonly height: number;
  readonly draw: (left: number, top: number) => Drawing[];
  /** Of a heading: what begins with it. */
  readonly title?: string;
  /** Never stands last in a column: a title, a head. */
  readonly staysWithNext?: boolean;
}

export interface Laid {
  readonly pieces: readonly Piece[];
  /** Drawn first in every further column that the block takes. */
  readonly again: readonly Piece[];
}

/** `height` is that of the tallest column there is: no piece may be higher. */
export type Block = (width: number, height: number) => Laid;

export interface Column {
  readonly page: number;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Room between two blocks. */
export const BETWEEN = 5;

export const space = (height: number): Piece => ({ height, draw: () => [] });
