/** Tails to the pull box and lead-ins to the cabinet. */
import { distance } from '#plan/geometry/points';
import { leadInPath, tailPath } from '#plan/lead-out';
import type { Loop, Point, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import type { Viewport } from '#editor/types';
import { line, type Drawing } from './drawing';
import { drawnBox, isInSight, onScreen } from './frame';
import type { Theme } from './theme';

const TAIL = { width: 1, twisted: true } as const;
const LEAD_IN = { width: 2, dash: [10, 4] } as const;

/** A tail that is not drawn is a length only; it is shown straight to the nearest pull box, if there is one. */
function nearest(outline: readonly Point[], boxes: readonly Point[]): readonly Point[] | null {
  let best: readonly [Point, Point] | null = null;
  for (const box of boxes)
    for (const corner of outline)
      if (!best || distance(corner, box) < distance(...best)) best = [corner, box];
  return best;
}

export function tailDrawings(
  site: Site,
  loop: Loop,
  boxes: readonly Point[],
  view: Viewport,
  theme: Theme
): Drawing[] {
  const path = tailPath(site, loop) ?? nearest(outlineOf(loop.shape), boxes);
  return path ? [line(onScreen(view, path), { colour: theme.tail, ...TAIL })] : [];
}

/** Circuits that share their way share its line. */
export function leadInDrawings(site: Site, view: Viewport, theme: Theme): Drawing[] {
  const sight = drawnBox(view);
  const paths = new Map(
    site.circuits.flatMap((circuit) => {
      const path = leadInPath(site, circuit);
      return path && isInSight(path, sight) ? [[JSON.stringify(path), path] as const] : [];
    })
  );
  return [...paths.values()].map((path) => line(onScreen(view, path), { colour: theme.tail, ...LEAD_IN }));
}
