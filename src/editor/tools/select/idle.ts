import { pickHandle } from '../../handles';
import { pickAll, pickAt, type Pick } from '../../picking';
import { tolerance } from '../../reach';
import type { Scene } from '../../scene';
import { includesRef } from '../../selection';
import { boxOf } from '../../things';
import type { Outcome, ToolInput, ToolPointer, ToolState } from '../tool';
import { pressing } from './pressing';

function hovering(input: ToolPointer, scene: Scene): Outcome {
  const { site, selection, viewport } = scene;
  const handle = pickHandle(site, selection, viewport, input.screen, input.at, input.pointer);
  if (handle) return { next: idle, overlay: { cursor: handle.cursor } };
  const pick = pickAt(site, input.at, tolerance(input.pointer, viewport));
  if (!pick) return { next: idle };
  const movable = !pick.surface || includesRef(selection, pick.ref);
  return { next: idle, overlay: { hover: pick.ref, cursor: movable ? 'move' : 'default' } };
}

/** Of things that lie exactly on each other, such as a copy in place, the hand takes the one that is selected. */
function pickFor({ at, pointer }: ToolPointer, { site, selection, viewport }: Scene): Pick | null {
  const reach = tolerance(pointer, viewport);
  const pick = pickAt(site, at, reach);
  if (!pick || selection.length === 0 || includesRef(selection, pick.ref)) return pick;
  const place = JSON.stringify(boxOf(site, [pick.ref]));
  const twin = pickAll(site, at, reach).find(
    ({ ref }) => includesRef(selection, ref) && JSON.stringify(boxOf(site, [ref])) === place
  );
  return twin ?? pick;
}

/** Something is selected at once, so that the hand sees what it holds; shift and alt wait for the release. */
function pressed(input: ToolPointer, scene: Scene): Outcome {
  const { site, selection, viewport } = scene;
  const handle = pickHandle(site, selection, viewport, input.screen, input.at, input.pointer);
  const pick = handle ? null : pickFor(input, scene);
  const next = pressing({ start: input, handle, pick });
  const atOnce = pick && !pick.surface && !input.shift && !input.alt && !includesRef(selection, pick.ref);
  return atOnce ? { next, selection: [pick.ref] } : { next };
}

export const idle: ToolState = {
  name: 'idling',
  busy: false,
  on(input: ToolInput, scene: Scene): Outcome | null {
    if (input.type === 'move') return hovering(input, scene);
    return input.type === 'down' ? pressed(input, scene) : null;
  }
};
