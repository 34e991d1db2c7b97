/** Texts of several lines on the plan. */
import type { Point } from '#plan/schema';
import type { Drawing } from './drawing';
import type { Theme } from './theme';

const TEXT_SIZE = 11;
export const LINE_HEIGHT = 15;
/** Characters in a line of a note. */
export const NOTE_WIDTH = 30;

/** Lines of at most so many characters, broken between words. */
export function wrapped(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

export function writing(text: string, at: Point, align: 'left' | 'center', theme: Theme): Drawing[] {
  const style = { kind: 'text', colour: theme.inkSoft, size: TEXT_SIZE, align, plate: theme.plate } as const;
  return wrapped(text, NOTE_WIDTH).map((line, index): Drawing => {
    const where: Point = [at[0], at[1] + index * LINE_HEIGHT * theme.textScale];
    return { ...style, at: where, text: line };
  });
}
