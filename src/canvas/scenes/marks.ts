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

function stopLine(points: readonly Point[], view: Viewport, theme: Theme): Drawing {
  const width = Math.max(STOP_LINE, LEAST_WIDTH / view.scale);
  const outline = [...parallelTo(points, width / 2), ...parallelTo(points, -width / 2).reverse()];
  return area(onScreen(view, outline), theme.paint, { colour: theme.roadLine, width: 1 });
}

/** A box with what it is in writing: a colour or a shape alone would have to be learnt. */
function symbol(mark: Mark, at: Point, theme: Theme): Drawing[] {
  const stroke = { colour: theme.roadLine, width: 1.5 };
  const text = mark.text ?? mark.kind.replace('-', ' ');
  const label = { colour: theme.inkSoft, size: 11, align: 'left', plate: theme.plate } as const;
  const where: Point = [at[0] + SYMBOL + 7, at[1]];
  return [area(boxAt(at, SYMBOL), theme.paper, stroke), { kind: 'text', at: where, text, ...label }];
}

function markDrawings(mark: Mark, view: Viewport, theme: Theme): Drawing[] {
  const [first] = mark.points;
  if (mark.kind === 'stop-line' && mark.points.length > 1) return [stopLine(mark.points, view, theme)];
  if (mark.points.length === 1 && first) return symbol(mark, planToScreen(view, first), theme);
  const dashed = mark.kind === 'conduit' || mark.kind === 'joint';
  const stroke = { colour: theme.roadLine, width: mark.kind === 'kerb' ? 3 : 1.5 };
  return [line(onScreen(view, mark.points), dashed ? { ...stroke, dash: [6, 4] } : stroke)];
}

export function marksScene(marks: readonly Mark[], view: Viewport, theme: Theme): Drawing[] {
  const sight = drawnBox(view);
  return marks
    .filter((mark) => isInSight(mark.points, sight))
    .flatMap((mark) => markDrawings(mark, view, theme));
}
