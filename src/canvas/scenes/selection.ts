import type { Point } from '#plan/schema';
import { selectionHandles, type PlanHandle } from '#editor/handles';
import { includesRef } from '#editor/selection';
import { pointsOf } from '#editor/things';
import type { Ref } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, boxAt, line, type Drawing } from '../drawing';
import { onScreen, type Frame } from '../frame';

/** Half a handle's side, pixels. */
const HANDLE = 5;
/** Radius of the place where a point can be drawn out of a way. */
const BETWEEN = 3;
const OUTLINE = { selected: 2.5, hover: 1.5 } as const;

function outlined(frame: Frame, ref: Ref, width: number): Drawing[] {
  const { site, state, theme } = frame;
  const points = onScreen(state.viewport, pointsOf(site, ref));
  const stroke = { colour: theme.accent, width };
  const [only] = points;
  if (points.length === 1 && only) return [{ kind: 'circle', at: only, radius: 12, stroke }];
  if (ref.kind === 'mark' || ref.kind === 'path')
    return points.length > 1 ? [line(points, { ...stroke, width: width + 1 })] : [];
  return points.length > 1 ? [{ kind: 'line', points, closed: true, stroke }] : [];
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
  const { site, state } = frame;
  const { hover } = state.overlay;
  const handles =
    state.tool === 'select' && !state.busy ? selectionHandles(site, state.selection, state.viewport) : [];
  return [
    ...(hover && !includesRef(state.selection, hover) ? outlined(frame, hover, OUTLINE.hover) : []),
    ...state.selection.flatMap((ref) => outlined(frame, ref, OUTLINE.selected)),
    ...handles.flatMap((handle) => handleDrawings(handle, handles, frame))
  ];
}
