import { add, between, distance, scale, subtract } from '#plan/geometry/points';
import type { Lane, Point } from '#plan/schema';
import { laneOutline } from '#editor/geometry/lanes';
import { segmentsOf } from '#editor/geometry/lines';
import type { Viewport } from '#editor/types';
import { area, line, type Drawing } from './drawing';
import { drawnBox, isInSight, onScreen } from './frame';
import type { Theme } from './theme';
import { laneEdges, type EdgeRun } from './lane-edges';

const EDGE_WIDTH = 1.5;
/** Metres on the road: dashes between lanes, and the painted arrow. */
const DASH = { long: 1.5, gap: 1.5 } as const;
const ARROW = { length: 2.6, shaft: 0.16, head: 0.95, barb: 0.42 } as const;
/** Share of the lane's length at which its arrow lies. */
const ARROW_AT = 0.14;
/** Pixels: below this an arrow is a blot. */
const SMALLEST_ARROW = 14;

const inSight = (lanes: readonly Lane[], view: Viewport): readonly Lane[] => {
  const sight = drawnBox(view);
  return lanes.filter((lane) => isInSight(laneOutline(lane), sight));
};

export const surfaceScene = (lanes: readonly Lane[], view: Viewport, theme: Theme): Drawing[] =>
  inSight(lanes, view).map((lane) => area(onScreen(view, laneOutline(lane)), theme.asphalt));

function edgesOf(runs: readonly EdgeRun[], view: Viewport, theme: Theme): Drawing[] {
  const dash = [DASH.long * view.scale, DASH.gap * view.scale];
  const stroke = { colour: theme.roadLine, width: EDGE_WIDTH };
  return runs.map(({ points, adjoins }) =>
    line(onScreen(view, points), adjoins ? { ...stroke, dash } : stroke)
  );
}

/** The point so many metres along the centreline, and the direction of travel there. */
function along(lane: Lane, metres: number): { readonly at: Point; readonly ahead: Point } | null {
  let left = metres;
  for (const { from, to } of segmentsOf(lane.centreline)) {
    const length = distance(from, to);
    if (length > 0 && left <= length)
      return { at: between(from, to, left / length), ahead: scale(subtract(to, from), 1 / length) };
    left -= length;
  }
  return null;
}

function arrowOf(lane: Lane, view: Viewport, theme: Theme): Drawing[] {
  const length = segmentsOf(lane.centreline).reduce((sum, { from, to }) => sum + distance(from, to), 0);
  const place = along(lane, length * ARROW_AT);
  if (!place || ARROW.length * view.scale < SMALLEST_ARROW || length < 2 * ARROW.length) return [];
  const { at, ahead } = place;
  const aside: Point = [-ahead[1], ahead[0]];
  const point = (forward: number, left: number): Point =>
    add(at, add(scale(ahead, forward), scale(aside, left)));
  const { shaft, head, barb } = ARROW;
  const neck = ARROW.length / 2 - head;
  const half = shaft / 2;
  const outline: Point[] = [
    point(-ARROW.length / 2, half),
    point(neck, half),
    point(neck, barb),
    point(ARROW.length / 2, 0),
    point(neck, -barb),
    point(neck, -half),
    point(-ARROW.length / 2, -half)
  ];
  return [area(onScreen(view, outline), theme.paint, { colour: theme.roadLine, width: 1 })];
}

/** Edges, dashed where lanes adjoin, and an arrow in the direction of travel. */
export function laneLinesScene(lanes: readonly Lane[], view: Viewport, theme: Theme): Drawing[] {
  const edges = laneEdges(lanes);
  return inSight(lanes, view).flatMap((lane) => [
    ...edgesOf(edges.get(lane) ?? [], view, theme),
    ...arrowOf(lane, view, theme)
  ]);
}
