/** A gate: its leaf closed, the post that it hangs on, and dashed where it is when it stands open and how it gets there. */
import { add, distance, rotate, scale, subtract } from '#plan/geometry/points';
import type { Mark, Point } from '#plan/schema';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, boxAt, line, type Drawing } from './drawing';
import { onScreen } from './frame';
import type { Theme } from './theme';

const LEAF_WIDTH = 4;
const OPEN = { width: 1.5, dash: [5, 4] } as const;
/** Half a post's side, pixels. */
const POST = 4;
/** Pixels from the closed leaf to where it is drawn open when it slides along itself. */
const BESIDE = 8;
/** Degrees between two points of the arc that the tip goes through. */
const ARC_STEP = 4;
const HEAD = { length: 9, half: 4 } as const;

function swung(hinge: Point, tip: Point, angle: number): { readonly arc: Point[]; readonly open: Point[] } {
  const steps = Math.max(1, Math.ceil(Math.abs(angle) / ARC_STEP));
  const arc = Array.from({ length: steps + 1 }, (_, step) => rotate(tip, (angle * step) / steps, hinge));
  return { arc, open: [hinge, arc.at(-1)!] };
}

/** On the screen: a line with an arrow's head at its end. */
function arrowLine(from: Point, to: Point, colour: string): Drawing[] {
  const length = distance(from, to);
  if (length < HEAD.length) return [];
  const [x, y] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const wing = (side: number): Point => [
    to[0] - x * HEAD.length - y * side,
    to[1] - y * HEAD.length + x * side
  ];
  return [
    line([from, to], { colour, width: 1.5 }),
    line([wing(HEAD.half), to, wing(-HEAD.half)], { colour, width: 1.5 })
  ];
}

function opened({ opening, points }: Mark, view: Viewport, theme: Theme): Drawing[] {
  const [hinge, tip] = points;
  if (!opening || !hinge || !tip) return [];
  const stroke = { colour: theme.roadLine, ...OPEN };
  if (opening.kind === 'swing') {
    const { arc, open } = swung(hinge, tip, opening.angle);
    return [line(onScreen(view, arc), stroke), line(onScreen(view, open), { ...stroke, width: 2.5 })];
  }
  const length = distance(hinge, tip);
  if (length === 0) return [];
  const ahead = scale(subtract(tip, hinge), 1 / length);
  const aside = scale([-ahead[1], ahead[0]], BESIDE / view.scale);
  const slid = (at: Point, travel: number): Point =>
    planToScreen(view, add(add(at, aside), scale(ahead, travel)));
  const outer = opening.travel > 0 ? tip : hinge;
  return [
    line([slid(hinge, opening.travel), slid(tip, opening.travel)], { ...stroke, width: 2.5 }),
    ...arrowLine(slid(outer, 0), slid(outer, opening.travel), theme.roadLine)
  ];
}

export function gateDrawings(mark: Mark, view: Viewport, theme: Theme): Drawing[] {
  const points = onScreen(view, mark.points);
  const [hinge, tip] = points;
  const leaf = line(points, { colour: theme.ink, width: LEAF_WIDTH });
  if (!hinge || !tip || points.length !== 2) return [leaf];
  const stroke = { colour: theme.ink, width: 1.5 };
  return [
    ...opened(mark, view, theme),
    leaf,
    area(boxAt(hinge, POST), theme.ink, stroke),
    area(boxAt(tip, POST), theme.paper, stroke)
  ];
}
