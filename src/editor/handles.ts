/** What can be taken hold of on the selection. */
import { add, distance, scale, subtract } from '#plan/geometry/points';
import { contains } from '#plan/geometry/polygons';
import { cornersOf } from '#plan/lane-bends';
import { isLocked } from '#plan/layers';
import type { Lane, Point, Site } from '#plan/schema';
import { centreOf, definitionOf } from '#plan/shapes/index';
import { boxOf, laneOf, loopOf, markOf, onPlan, pathOf, pointsOf, probeOf, steelOf } from './things';
import type { PointerInput, Ref, Viewport } from './types';
import { planToScreen } from './viewport';
import { leftEdge } from './geometry/lanes';
import { towards } from './geometry/rays';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { wayHandles, type WayHandle } from './ways';

export interface PlanHandle {
  readonly kind: 'resize' | 'point' | 'width' | 'rotate' | WayHandle['kind'];
  /** Name of the shape's handle, index of the point, or what `wayOfHandle` reads. */
  readonly id: string;
  readonly at: Point;
  readonly cursor: string;
}

/** Pixels between the selection and its rotation handle. */
const ROTATION_DISTANCE = 28;
/** Side handles nearer than this to a corner are left out, pixels. */
const CROWDED = 18;
/** Half a handle's hit area in pixels; inside the selected shape less, or small shapes could not be moved. */
const HIT = { mouse: 12, pen: 12, touch: 22 } as const;
const HIT_INSIDE = 6;

const ARROWS = ['ew-resize', 'nesw-resize', 'ns-resize', 'nwse-resize'] as const;

/** The resize cursor that points along a direction of the plan. */
function arrowAlong([x, y]: Point): string {
  const eighth = Math.round(Math.atan2(y, x) / (Math.PI / 4));
  return ARROWS[((eighth % 4) + 4) % 4]!;
}

function shapeHandles(site: Site, id: string, view: Viewport): PlanHandle[] {
  const loop = loopOf(site, id);
  if (!loop) return [];
  const handles = definitionOf(loop.shape).handles(loop.shape);
  if (loop.shape.kind === 'polygon')
    return handles.map(({ id: name, at }) => ({ kind: 'resize', id: name, at, cursor: 'move' }));
  const centre = centreOf(loop.shape);
  const shown: PlanHandle[] = [];
  // Corners, which have two letters, claim their place before the sides.
  for (const { id: name, at } of [...handles].sort((a, b) => b.id.length - a.id.length)) {
    if (shown.some((other) => distance(other.at, at) * view.scale < CROWDED)) continue;
    shown.push({ kind: 'resize', id: name, at, cursor: arrowAlong(subtract(at, centre)) });
  }
  return shown;
}

function laneHandles(lane: Lane): PlanHandle[] {
  const points = cornersOf(lane).points.map((at, index): PlanHandle => ({
    kind: 'point',
    id: String(index),
    at,
    cursor: 'move'
  }));
  const [from, to] = leftEdge(lane);
  const [start, end] = lane.centreline;
  if (!from || !to || !start || !end) return points;
  const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const across: Point = [from[0] - start[0], from[1] - start[1]];
  return [...points, { kind: 'width', id: 'width', at, cursor: arrowAlong(across) }];
}

/** Beyond the far side of a box shape, ahead of a vehicle, above anything else; none for a circle or a lane alone. */
function rotationHandle(site: Site, refs: readonly Ref[], view: Viewport): PlanHandle[] {
  const away = ROTATION_DISTANCE / view.scale;
  const made = (at: Point): PlanHandle[] => [{ kind: 'rotate', id: 'rotate', at, cursor: 'grab' }];
  const [ref] = refs;
  if (refs.length === 1 && ref) {
    if (ref.kind === 'lane') return [];
    const shape = ref.kind === 'loop' ? loopOf(site, ref.id)?.shape : undefined;
    if (shape?.kind === 'circle') return [];
    if (shape && shape.kind !== 'polygon')
      return made(add(shape.centre, scale(towards(shape.rotation + 90), shape.length / 2 + away)));
    const probe = ref.kind === 'probe' ? probeOf(site, ref.id) : undefined;
    if (probe) return made(onPlan(probe, [0, (vehicleOf(probe.vehicle, site)?.bodyLength ?? 0) / 2 + away]));
  }
  const box = boxOf(site, refs);
  return box ? made([(box.left + box.right) / 2, box.top + away]) : [];
}

export function selectionHandles(site: Site, selection: readonly Ref[], view: Viewport): PlanHandle[] {
  const [ref] = selection;
  // What is locked cannot be taken hold of; a padlock stands there instead.
  if (!ref || selection.every((each) => isLocked(site, each))) return [];
  const rotation = rotationHandle(site, selection, view);
  if (selection.length > 1) return rotation;
  if (ref.kind === 'loop')
    return [...shapeHandles(site, ref.id, view), ...wayHandles(site, ref.id, view), ...rotation];
  if (ref.kind === 'lane') {
    const lane = laneOf(site, ref.id);
    return lane ? laneHandles(lane) : [];
  }
  if (ref.kind === 'steel') {
    const corners = steelOf(site, ref.id)?.outline ?? [];
    const handles = corners.map((at, index): PlanHandle => ({
      kind: 'point',
      id: String(index),
      at,
      cursor: 'move'
    }));
    return [...handles, ...rotation];
  }
  if (ref.kind === 'mark' || ref.kind === 'path') {
    const points = (ref.kind === 'mark' ? markOf : pathOf)(site, ref.id)?.points ?? [];
    const handles = points.map((at, index): PlanHandle => ({
      kind: 'point',
      id: String(index),
      at,
      cursor: 'move'
    }));
    return points.length > 1 ? [...handles, ...rotation] : [];
  }
  return rotation;
}

/** The nearest handle within reach of a screen point. */
export function pickHandle(
  site: Site,
  selection: readonly Ref[],
  view: Viewport,
  screen: Point,
  at: Point,
  pointer: PointerInput['pointer']
): PlanHandle | null {
  const [only] = selection;
  const inside = selection.length === 1 && only?.kind === 'loop' && contains(pointsOf(site, only), at);
  let reach: number = inside ? HIT_INSIDE : HIT[pointer];
  let best: PlanHandle | null = null;
  for (const handle of selectionHandles(site, selection, view)) {
    const away = distance(planToScreen(view, handle.at), screen);
    if (away > reach) continue;
    reach = away;
    best = handle;
  }
  return best;
}
