/** Texts of a sheet as drawings. */
import type { Point } from '#plan/schema';
import type { Drawing, TextDrawing } from '#scenes/drawing';
import { shortened, wrapped } from '../text/wrap';
import { INK, LEADING } from './look';

export interface Hand {
  readonly size: number;
  readonly bold?: boolean;
  readonly colour?: string;
  readonly align?: TextDrawing['align'];
}

/** Its middle at the height given. */
export const written = (text: string, at: Point, hand: Hand): Drawing => ({
  kind: 'text',
  at,
  text,
  size: hand.size,
  colour: hand.colour ?? INK,
  align: hand.align ?? 'left',
  ...(hand.bold ? { bold: true } : {})
});

/** On one line, shortened where it does not fit; nothing for an empty text. */
export function writtenWithin(text: string, at: Point, width: number, hand: Hand): Drawing[] {
  const shown = shortened(text, width, hand);
  return shown === '' ? [] : [written(shown, at, hand)];
}

export interface Lines {
  readonly height: number;
  readonly draw: (at: Point) => Drawing[];
}

/** Lines one below the other; `at` is the upper left corner, or the upper right one for texts that end there. */
function linesOf(texts: readonly string[], hand: Hand): Lines {
  const step = hand.size * LEADING;
  return {
    height: texts.length * step,
    draw: ([x, y]) =>
      texts.flatMap((text, index) =>
        text === '' ? [] : [written(text, [x, y + (index + 0.5) * step], hand)]
      )
  };
}

export const paragraph = (text: string, width: number, hand: Hand, most?: number): Lines =>
  linesOf(wrapped(text, width, hand, most), hand);
