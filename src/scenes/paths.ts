/** Ways that vehicles take and that are no lanes: a thin broken line with an arrow at its end. */
import { distance } from '#plan/geometry/points';
import type { Path, Point } from '#plan/schema';
import type { Viewport } from '#editor/types';
import { line, type Drawing } from './drawing';
import { drawnBox, isInSight, onScreen } from './frame';
import type { Theme } from './theme';

const WIDTH = 1.5;
const DASH = [9, 6] as const;
/** Pixels from the tip back to the wings, and half of what they span. */
const HEAD = { length: 11, half: 5 } as const;

/** At the end, along the last stretch that has a length. */
function arrow(points: readonly Point[], stroke: { colour: string; width: number }): Drawing[] {
  const tip = points.at(-1);
  const before = tip && points.findLast((point) => distance(point, tip) > 1e-6);
  if (!tip || !before) return [];
  const length = distance(before, tip);
  const [x, y] = [(tip[0] - before[0]) / length, (tip[1] - before[1]) / length];
  const wing = (side: number): Point => [
    tip[0] - x * HEAD.length - y * side,
    tip[1] - y * HEAD.length + x * side
  ];
  return [line([wing(HEAD.half), tip, wing(-HEAD.half)], stroke)];
}

export function pathsScene(paths: readonly Path[], view: Viewport, theme: Theme): Drawing[] {
  const sight = drawnBox(view);
  const stroke = { colour: theme.vehicleLine, width: WIDTH };
  return paths
    .filter(({ points }) => isInSight(points, sight))
    .flatMap((path) => {
      const points = onScreen(view, path.points);
      return [line(points, { ...stroke, dash: DASH }), ...arrow(points, stroke)];
    });
}
