import type { Mark, Point } from '#plan/schema';
import { parallelTo } from '#editor/geometry/lanes';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, boxAt, line, type Drawing } from '../drawing';
import { drawnBox, isInSight, onScreen } from '../frame';
import type { Theme } from '../theme';

/** Metres of paint across a stop line; at least so many pixels. */
const STOP_LINE = 0.3;
const LEAST_WIDTH = 3;
/** Half the side of a symbol for a thing with no size of its own, pixels. */
const SYMBOL = 7;
const TEXT_SIZE = 11;
const LINE_HEIGHT = 15;
/** Characters in a line of a note. */
const NOTE_WIDTH = 30;

function stopLine(points: readonly Point[], view: Viewport, theme: Theme): Drawing {
  const width = Math.max(STOP_LINE, LEAST_WIDTH / view.scale);
  const outline = [...parallelTo(points, width / 2), ...parallelTo(points, -width / 2).reverse()];
  return area(onScreen(view, outline), theme.paint, { colour: theme.roadLine, width: 1 });
}

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

function writing(text: string, at: Point, align: 'left' | 'center', theme: Theme): Drawing[] {
  const style = { kind: 'text', colour: theme.inkSoft, size: TEXT_SIZE, align, plate: theme.plate } as const;
  return wrapped(text, NOTE_WIDTH).map((line, index): Drawing => {
    const where: Point = [at[0], at[1] + index * LINE_HEIGHT];
    return { ...style, at: where, text: line };
  });
}

/** A box with what it is in writing: a colour or a shape alone would have to be learnt. A note is writing only. */
function symbol(mark: Mark, at: Point, theme: Theme): Drawing[] {
  if (mark.kind === 'note') return writing(mark.text ?? 'note', at, 'left', theme);
  const stroke = { colour: theme.roadLine, width: 1.5 };
  const text = mark.text ?? mark.kind.replace('-', ' ');
  const below: Point = [at[0], at[1] + SYMBOL + LINE_HEIGHT * 0.75];
  return [area(boxAt(at, SYMBOL), theme.paper, stroke), ...writing(text, below, 'center', theme)];
}

function markDrawings(mark: Mark, view: Viewport, theme: Theme): Drawing[] {
  const [first] = mark.points;
  if (mark.kind === 'stop-line' && mark.points.length > 1) return [stopLine(mark.points, view, theme)];
  if (mark.points.length === 1 && first) return symbol(mark, planToScreen(view, first), theme);
  const dashed = mark.kind === 'conduit' || mark.kind === 'joint';
  const stroke = { colour: theme.roadLine, width: mark.kind === 'kerb' ? 3 : 1.5 };
  return [line(onScreen(view, mark.points), dashed ? { ...stroke, dash: [6, 4] } : stroke)];
}

/** Lines first: the boxes that they run to stand on them. */
export function marksScene(marks: readonly Mark[], view: Viewport, theme: Theme): Drawing[] {
  const sight = drawnBox(view);
  return [...marks]
    .sort((a, b) => Number(a.points.length === 1) - Number(b.points.length === 1))
    .filter((mark) => isInSight(mark.points, sight))
    .flatMap((mark) => markDrawings(mark, view, theme));
}
