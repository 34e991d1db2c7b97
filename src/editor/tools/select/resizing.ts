import { saying } from '#i18n/saying';
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
import { hasTyped } from '../../entry/placing';
import { opensEntry } from '../../entry/typing';
import { boxAround } from '../../geometry/box';
import { stationOf } from '../../geometry/lanes';
import type { PlanHandle } from '../../handles';
import type { Scene } from '../../scene';
import { sayRefs } from '../../selection';
import { clearances } from '../../snapping/clearances';
import { NO_SNAP } from '../../snapping/snap';
import { createSnapper } from '../../snapping/snapper';
import { boxOf, laneOf, loopOf, pointsOf } from '../../things';
import type { Ref } from '../../types';
import { joinedText, lengthText, sizeText } from '../../wording';
import type { Outcome, ToolPointer, ToolState } from '../tool';
import { handleOffer, handleTo } from './handle-sizes';
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

  function result(input: ToolPointer, last: Site) {
    const found = snapper.point([input.at[0] + grip[0], input.at[1] + grip[1]], input, axes);
    const isTyped = hasTyped(input.typed);
    const to = isTyped ? handleTo(site, ref, handle, found.at, input.typed, input.control) : found.at;
    const { width } = input.typed;
    const next =
      handle.kind === 'width' && width !== undefined
        ? updateLane(site, ref.id, { width })
        : dragged(site, ref, handle, to, input.control);
    // What was typed may be what the thing has already: that is no result that cannot be.
    return { to, snap: isTyped ? NO_SNAP : found, draft: next === site && !isTyped ? last : next };
  }

  /** `last`: the pointer as it was last heard of, and the last plan that could be: one that cannot is not taken. */
  function from(last: ToolPointer, lastDraft: Site): ToolState {
    function shown(input: ToolPointer): Outcome {
      const { to, snap, draft } = result(input, lastDraft);
      const outline = ref.kind === 'loop' ? pointsOf(draft, ref) : [];
      const room = outline.length === 0 ? [] : clearances(scene, outline, [ref], snap.guides);
      const label = { at: input.at, text: joinedText(measure(draft, ref), snap.text) };
      const overlay = { guides: [...snap.guides, ...room], label, cursor: handle.cursor };
      return { next: from(input, draft), draft, overlay, entry: handleOffer(draft, ref, handle, to) };
    }

    const finished = (input: ToolPointer): Outcome => {
      const label = saying('step.resizeThings', { things: sayRefs([ref]) });
      return { next: idle, step: { label, site: result(input, lastDraft).draft } };
    };

    return {
      name: 'resizing',
      busy: true,
      on(input): Outcome | null {
        if (input.type === 'move') return shown(input);
        if (input.type === 'up') return finished(input);
        if (input.type !== 'key') return null;
        if (input.key === 'Enter') return finished(last);
        return opensEntry(input.key) ? shown(last) : null;
      }
    };
  }
  return from(start, site);
}
