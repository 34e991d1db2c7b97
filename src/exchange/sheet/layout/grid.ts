/** Small drawings side by side, in rows that are not broken. Millimetres. */
import type { Drawing } from '#scenes/drawing';
import type { Block, Piece } from './block';
import { heading, headingAgain } from './heading';
import { SOFT, TYPE } from './look';
import { paragraph } from './writing';

export interface Figure {
  readonly width: number;
  readonly height: number;
  readonly draw: (left: number, top: number) => Drawing[];
}

const GAP = { across: 6, down: 4 } as const;

function rowsOf(figures: readonly Figure[], width: number): readonly (readonly Figure[])[] {
  const rows: Figure[][] = [];
  let right = Infinity;
  for (const figure of figures) {
    if (right + GAP.across + figure.width > width + 1e-9) {
      rows.push([]);
      right = -GAP.across;
    }
    rows.at(-1)!.push(figure);
    right += GAP.across + figure.width;
  }
  return rows;
}

function rowPiece(figures: readonly Figure[]): Piece {
  return {
    height: Math.max(...figures.map(({ height }) => height)) + GAP.down,
    draw: (left, top) => {
      let x = left;
      return figures.flatMap((figure) => {
        const drawings = figure.draw(x, top);
        x += figure.width + GAP.across;
        return drawings;
      });
    }
  };
}

/** `figuresFor`: those for a column of that width and height, none of them larger. `hint`: said below the title. */
export const figuresBlock =
  (title: string, figuresFor: (width: number, height: number) => readonly Figure[], hint = ''): Block =>
  (width, height) => {
    const head = heading(title, width);
    const words = hint === '' ? null : hintPiece(hint, width);
    const above = head.height + (words?.height ?? 0) + GAP.down;
    const rows = rowsOf(figuresFor(width, height - above), width).map(rowPiece);
    return {
      pieces: rows.length === 0 ? [] : [head, ...(words ? [words] : []), ...rows],
      again: [headingAgain(title, width)]
    };
  };

function hintPiece(text: string, width: number): Piece {
  const lines = paragraph(text, width, { size: TYPE.small, colour: SOFT });
  return { height: lines.height + 2, staysWithNext: true, draw: (left, top) => lines.draw([left, top]) };
}
