/** Dimensions: extension lines from the measured points, a line with a stroke across each end, the length on it. */
import { between, distance, scale, subtract } from '#plan/geometry/points';
import type { DisplayUnits, Mark, Point } from '#plan/schema';
import { format } from '#units/format';
import { dimensionLine } from '#editor/geometry/marks';
import type { Viewport } from '#editor/types';
import { onScreen } from './frame';
import { line, type Drawing } from './drawing';
import type { Theme } from './theme';

const TEXT_SIZE = 12;
/** Pixels: left free at the measured point, beyond the line, and half a stroke across it. */
const GAP = 3;
const BEYOND = 5;
const STROKE = 5;

/** From the measured point to beyond the dimension's line; nothing where they lie on each other. */
function extension(from: Point, to: Point, colour: string): Drawing[] {
  const length = distance(from, to);
  if (length < GAP + 1) return [];
  const ahead = scale(subtract(to, from), 1 / length);
  const at = (along: number): Point => [from[0] + ahead[0] * along, from[1] + ahead[1] * along];
  return [line([at(GAP), at(length + BEYOND)], { colour, width: 1 })];
}

export function dimensionDrawings(mark: Mark, view: Viewport, units: DisplayUnits, theme: Theme): Drawing[] {
  const [from, to] = mark.points;
  const plan = dimensionLine(mark);
  if (!from || !to || !plan) return [];
  const [start, end] = onScreen(view, [from, to]) as [Point, Point];
  const [a, b] = onScreen(view, plan) as [Point, Point];
  const colour = theme.ink;
  const length = distance(a, b);
  // The drawing's usual slant, whichever way the dimension runs.
  const [x, y] = length > 0 ? scale(subtract(b, a), STROKE / length) : [STROKE, 0];
  const across = ([px, py]: Point): Drawing =>
    line([[px - x - y, py - y + x], [px + x + y, py + y - x]], { colour, width: 1.5 }); // prettier-ignore
  const said = format(distance(from, to), 'length', units).text;
  const text = mark.text ? `${mark.text} ${said}` : said;
  return [
    ...extension(start, a, colour),
    ...extension(end, b, colour),
    line([a, b], { colour, width: 1 }),
    across(a),
    across(b),
    { kind: 'text', at: between(a, b), text, colour, size: TEXT_SIZE, align: 'center', plate: theme.plate }
  ];
}
