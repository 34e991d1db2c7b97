/** What is looked at of a field, on the plan: the line of a section with its letters, and the currents in a vehicle. */
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, line, type Drawing } from './drawing';
import { onScreen, type FieldOverlay } from './frame';
import type { Theme } from './theme';

/** Dots and dashes, as sections are marked on drawings. */
const DASH = [14, 4, 3, 4] as const;
const LINE = 1.5;
const LOOK = { length: 16, head: 5 } as const;
const LETTER = 13;
const CURRENT = 1.4;
const HEAD = 4;
/** Pixels of a line of current between two arrowheads. */
const PER_HEAD = 160;
/** Shorter lines than this have no head, nearer points no direction: pixels. */
const SHORT = 14;
const SAME = 1e-9;

/** The line, at each end an arrow in the direction of sight, and the letter. */
function sectionDrawings(
  { from, to }: NonNullable<FieldOverlay['section']>,
  view: Viewport,
  theme: Theme
): Drawing[] {
  const [a, b] = [planToScreen(view, from), planToScreen(view, to)];
  const length = distance(a, b);
  if (length < SHORT) return [];
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  // who sees the section from left to right looks to the left of its line; the screen's y runs downwards
  const [sx, sy] = [uy, -ux];
  const stroke = { colour: theme.ink, width: LINE };
  const end = ([x, y]: Point, outwards: 1 | -1): Drawing[] => {
    const tip: Point = [x + LOOK.length * sx, y + LOOK.length * sy];
    const at = (back: number, beside: number): Point => [
      tip[0] - back * sx + beside * ux,
      tip[1] - back * sy + beside * uy
    ];
    return [
      line([[x, y], tip], stroke),
      area([at(0, 0), at(2 * LOOK.head, LOOK.head), at(2 * LOOK.head, -LOOK.head)], theme.ink),
      {
        kind: 'text',
        at: [x + outwards * LETTER * ux, y + outwards * LETTER * uy],
        text: 'A',
        colour: theme.ink,
        size: LETTER,
        bold: true,
        align: 'center',
        plate: theme.plate
      }
    ];
  };
  return [line([a, b], { ...stroke, dash: DASH }), ...end(a, -1), ...end(b, 1)];
}

/** Heads along a closed line, in its direction. */
function headsOf(points: readonly Point[], colour: string): Drawing[] {
  const heads: Drawing[] = [];
  const whole = points.slice(1).reduce((sum, point, k) => sum + distance(points[k]!, point), 0);
  if (whole < SHORT) return [];
  let next = Math.min(whole, PER_HEAD) / 2;
  let gone = 0;
  for (let k = 1; k < points.length; k++) {
    const [from, to] = [points[k - 1]!, points[k]!];
    const step = distance(from, to);
    if (step > SAME && next <= gone + step) {
      const [ux, uy] = [(to[0] - from[0]) / step, (to[1] - from[1]) / step];
      const at = (ahead: number, beside: number): Point => [
        from[0] + (next - gone + ahead) * ux - beside * uy,
        from[1] + (next - gone + ahead) * uy + beside * ux
      ];
      heads.push(area([at(HEAD, 0), at(-HEAD, HEAD), at(-HEAD, -HEAD)], colour));
      next += PER_HEAD;
    }
    gone += step;
  }
  return heads;
}

/** Beneath labels. */
export const currentsScene = ({ currents }: FieldOverlay, view: Viewport, theme: Theme): Drawing[] =>
  currents.flatMap((points): Drawing[] => {
    const ring = onScreen(view, points);
    return [
      { kind: 'line', points: ring, closed: true, stroke: { colour: theme.guide, width: CURRENT } },
      ...headsOf(ring, theme.guide)
    ];
  });

/** Over labels. */
export const sectionScene = ({ section }: FieldOverlay, view: Viewport, theme: Theme): Drawing[] =>
  section ? sectionDrawings(section, view, theme) : [];
