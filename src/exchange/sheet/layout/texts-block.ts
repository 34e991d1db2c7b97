/** Paragraphs under a title, each line a piece, so that long ones go on in the next column. */
import { clean } from '../text/clean';
import { wrapped } from '../text/wrap';
import type { Block, Piece } from './block';
import { heading, headingAgain } from './heading';
import { LEADING, TYPE } from './look';
import { written } from './writing';

const INDENT = 3.4;
const HAND = { size: TYPE.text };
const STEP = HAND.size * LEADING;

function linePieces(text: string, mark: string, width: number): Piece[] {
  const indent = mark === '' ? 0 : INDENT;
  const lines = wrapped(clean(text), width - indent, HAND);
  return lines.map((shown, at) => ({
    height: STEP + (at === lines.length - 1 ? 0.8 : 0),
    draw: (left, top) => [
      ...(mark !== '' && at === 0 ? [written(mark, [left, top + STEP / 2], HAND)] : []),
      ...(shown === '' ? [] : [written(shown, [left + indent, top + STEP / 2], HAND)])
    ]
  }));
}

export const textsBlock =
  (title: string, texts: readonly string[], mark = ''): Block =>
  (width) => ({
    pieces:
      texts.length === 0
        ? []
        : [heading(title, width), ...texts.flatMap((text) => linePieces(text, mark, width))],
    again: [headingAgain(title, width)]
  });
