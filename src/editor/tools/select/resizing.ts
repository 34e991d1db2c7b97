import {
  dragLoopHandle,
  moveLanePoint,
  moveMarkPoint,
  movePathPoint,
  moveSteelPoint,
  updateLane
} from '#plan/edits/index';
import { BOUNDS } from '#plan/bounds';
import type { Point, Site } from '#plan/schema';
import { definitionOf } from '#plan/shapes/index';
import { boxAround } from '../../geometry/box';
import { stationOf } from '../../geometry/lanes';
import type { PlanHandle } from '../../handles';
import type { Scene } from '../../scene';
import { describeRefs } from '../../selection';
import { createSnapper } from '../../snapping/snapper';
import { boxOf, laneOf, loopOf } from '../../things';
import type { Ref } from '../../types';
import { joinedText, lengthText, sizeText } from '../../wording';
import type { Outcome, ToolPointer, ToolState } from '../tool';
import { idle } from './idle';

function dragged(site: Site, { kind, id }: Ref, handle: PlanHandle, to: Point, fromCentre: boolean): Site {
  if (kind === 'loop') return dragLoopHandle(site, id, handle.id, to, fromCentre);
  if (kind === 'mark') return moveMarkPoint(site, id, Number(handle.id), to);
  if (kind === 'path') return movePathPoint(site, id, Number(handle.id), to);
  if (kind === 'steel') return moveSteelPoint(site, id, Number(handle.id), to);
  if (handle.kind === 'point') return moveLanePoint(site, id, Number(handle.id), to);
  const lane = laneOf(site, id);
  const offset = lane ? (stationOf(lane, to)?.offset ?? 0) : 0;
  const { min, max } = BOUNDS.laneWidth;
  return updateLane(site, id, { width: Math.min(max, Math.max(min, Math.round(offset * 2e4) / 1e4)) });
}

function measure(site: Site, { kind, id }: Ref): string {
  if (kind === 'lane') return lengthText(site, laneOf(site, id)?.width ?? 0);
  const steel = kind === 'steel' ? boxOf(site, [{ kind, id }]) : null;
  if (steel) return sizeText(site, steel.right - steel.left, steel.top - steel.bottom);
  const shape = kind === 'loop' ? loopOf(site, id)?.shape : undefined;
  if (!shape) return '';
  if (shape.kind === 'circle') return lengthText(site, shape.diameter);
  if (shape.kind !== 'polygon') return sizeText(site, shape.width, shape.length);
  const box = boxAround(shape.points);
  return box ? sizeText(site, box.right - box.left, box.top - box.bottom) : '';
}

/** Along which axes the handle does anything: the side of an upright box moves one way only. */
function axesOf(site: Site, { kind, id }: Ref, handle: PlanHandle): readonly [boolean, boolean] {
  const shape = kind === 'loop' ? loopOf(site, id)?.shape : undefined;
  if (!shape) return [true, true];
  const definition = definitionOf(shape);
  const nudged = (by: Point): boolean => {
    const to: Point = [handle.at[0] + by[0], handle.at[1] + by[1]];
    const [x, y] = definition.centre(definition.dragHandle(shape, handle.id, to));
    const [atX, atY] = definition.centre(definition.dragHandle(shape, handle.id, handle.at));
    return Math.hypot(x - atX, y - atY) > 1e-6;
  };
  return [nudged([0.01, 0]), nudged([0, 0.01])];
}

/** Dragging a handle: a corner or side of a loop, a point of a polygon, lane or mark, the edge of a lane. */
export function resizing(start: ToolPointer, handle: PlanHandle, scene: Scene): ToolState {
  const { site, selection } = scene;
  const ref = selection[0]!;
  const grip: Point = [handle.at[0] - start.at[0], handle.at[1] - start.at[1]];
  const axes = axesOf(site, ref, handle);
  const snapper = createSnapper(scene, [ref]);

  /** A result that cannot be keeps the last one that could. */
  function from(last: Site): ToolState {
    const result = (input: ToolPointer) => {
      const snap = snapper.point([input.at[0] + grip[0], input.at[1] + grip[1]], input, axes);
      const next = dragged(site, ref, handle, snap.at, input.control);
      return { snap, draft: next === site ? last : next };
    };
    return {
      name: 'resizing',
      busy: true,
      on(input): Outcome | null {
        if (input.type !== 'move' && input.type !== 'up') return null;
        const { snap, draft } = result(input);
        if (input.type === 'up')
          return { next: idle, step: { label: `Resize ${describeRefs([ref])}`, site: draft } };
        const label = { at: input.at, text: joinedText(measure(draft, ref), snap.text) };
        return { next: from(draft), draft, overlay: { guides: snap.guides, label, cursor: handle.cursor } };
      }
    };
  }
  return from(site);
}
