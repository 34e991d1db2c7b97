import { isHidden, isLocked } from '#plan/layers';
import type { Point, Site } from '#plan/schema';
import { selectionHandles, type PlanHandle } from '#editor/handles';
import { includesRef } from '#editor/selection';
import { boxOf, pointsOf } from '#editor/things';
import type { Ref } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, boxAt, line, type Drawing } from './drawing';
import { onScreen, type Frame } from './frame';

/** Half a handle's side, pixels. */
const HANDLE = 5;
/** Radius of the place where a point can be drawn out of a way. */
const BETWEEN = 3;
const OUTLINE = { selected: 2.5, hover: 1.5 } as const;

/** With what is hidden: that can be selected in the outline. */
const wholeSite = ({ state }: Frame): Site => state.draft ?? state.site;

function outlined(frame: Frame, ref: Ref, width: number): Drawing[] {
  const { state, theme } = frame;
  const site = wholeSite(frame);
  const points = onScreen(state.viewport, pointsOf(site, ref));
  const dash = isHidden(site, ref) ? { dash: [6, 5] } : {};
  const stroke = { colour: theme.accent, width, ...dash };
  const [only] = points;
  if (points.length === 1 && only) return [{ kind: 'circle', at: only, radius: 12, stroke }];
  if (ref.kind === 'mark' || ref.kind === 'path')
    return points.length > 1 ? [line(points, { ...stroke, width: width + 1 })] : [];
  return points.length > 1 ? [{ kind: 'line', points, closed: true, stroke }] : [];
}

/** Pixels: half the width of a padlock's body, and how high its shackle stands above it. */
const LOCK = { half: 6, body: 4.5, shackle: 3.6, above: 5 } as const;

/** At the upper right of a locked thing, where a hand would look for why it does not move. */
function padlock({ state, theme }: Frame, site: Site, ref: Ref): Drawing[] {
  const box = boxOf(site, [ref]);
  if (!box) return [];
  const [x, y] = planToScreen(state.viewport, [box.right, box.top]);
  const { width } = state.viewport;
  const at: Point = [Math.min(width - 14, Math.max(14, x + 10)), Math.max(18, y - 10)];
  const top = at[1] - LOCK.body;
  const shackle = Array.from({ length: 9 }, (_, step): Point => {
    const turn = Math.PI * (1 + step / 8);
    return [at[0] + LOCK.shackle * Math.cos(turn), top - LOCK.above / 2 + LOCK.shackle * Math.sin(turn)];
  });
  const legs: Point[] = [[at[0] - LOCK.shackle, top], ...shackle, [at[0] + LOCK.shackle, top]];
  return [
    {
      kind: 'circle',
      at: [at[0], at[1] - 2],
      radius: 12,
      fill: theme.paper,
      stroke: { colour: theme.accent, width: 1 }
    },
    line(legs, { colour: theme.accent, width: 1.8 }),
    area(boxAt(at, LOCK.half, LOCK.body), theme.accent)
  ];
}

function handleDrawings(handle: PlanHandle, handles: readonly PlanHandle[], frame: Frame): Drawing[] {
  const { state, theme } = frame;
  const at = planToScreen(state.viewport, handle.at);
  const stroke = { colour: theme.accent, width: 1.5 };
  if (handle.kind === 'via') return [{ kind: 'circle', at, radius: HANDLE, fill: theme.paper, stroke }];
  if (handle.kind === 'between') return [{ kind: 'circle', at, radius: BETWEEN, fill: theme.paper, stroke }];
  if (handle.kind !== 'rotate') return [area(boxAt(at, HANDLE), theme.paper, stroke)];
  const stem = nearest(at, handles, frame);
  return [
    ...(stem ? [line([stem, at], stroke)] : []),
    { kind: 'circle', at, radius: HANDLE + 1, fill: theme.paper, stroke }
  ];
}

/** The handle that the rotation handle stands beyond. */
function nearest(at: Point, handles: readonly PlanHandle[], { state }: Frame): Point | null {
  let best: Point | null = null;
  const far = ([x, y]: Point): number => Math.hypot(x - at[0], y - at[1]);
  for (const handle of handles) {
    if (handle.kind !== 'resize' && handle.kind !== 'point') continue;
    const there = planToScreen(state.viewport, handle.at);
    if (!best || far(there) < far(best)) best = there;
  }
  return best && far(best) < 60 ? best : null;
}

/** Outlines of what is selected and under the pointer; handles while nothing is in hand. */
export function selectionScene(frame: Frame): Drawing[] {
  const { state } = frame;
  const site = wholeSite(frame);
  const { hover } = state.overlay;
  const handles =
    state.tool === 'select' && !state.busy ? selectionHandles(site, state.selection, state.viewport) : [];
  const beside = hover && !includesRef(state.selection, hover) ? [hover] : [];
  return [
    ...beside.flatMap((ref) => outlined(frame, ref, OUTLINE.hover)),
    ...state.selection.flatMap((ref) => outlined(frame, ref, OUTLINE.selected)),
    ...[...beside, ...state.selection]
      .filter((ref) => isLocked(site, ref))
      .flatMap((ref) => padlock(frame, site, ref)),
    ...handles.flatMap((handle) => handleDrawings(handle, handles, frame))
  ];
}
