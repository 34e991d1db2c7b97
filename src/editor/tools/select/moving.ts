import { moveThings } from '#plan/edits/index';
import type { Point } from '#plan/schema';
import { movedBox } from '../../geometry/box';
import type { Scene } from '../../scene';
import { describeRefs } from '../../selection';
import { createSnapper } from '../../snapping/snapper';
import { boxOf } from '../../things';
import type { Overlay, Ref } from '../../types';
import { joinedText, lengthText } from '../../wording';
import type { Outcome, ToolPointer, ToolState } from '../tool';
import { idle } from './idle';

/** Always from the plan as it was when the gesture began, so that rounding cannot add up. */
export function moving(start: ToolPointer, refs: readonly Ref[], scene: Scene): ToolState {
  const { site } = scene;
  const box = boxOf(site, refs);
  const snapper = createSnapper(scene, refs);

  function shifted(input: ToolPointer) {
    const dx = input.at[0] - start.at[0];
    const dy = input.at[1] - start.at[1];
    const level = Math.abs(dx) >= Math.abs(dy);
    const axes = input.shift ? ([level, !level] as const) : ([true, true] as const);
    const by: Point = [axes[0] ? dx : 0, axes[1] ? dy : 0];
    const snap = snapper.box(movedBox(box!, by), input, axes);
    const draft = moveThings(site, refs, [by[0] + snap.by[0], by[1] + snap.by[1]]);
    const distance = Math.hypot(by[0] + snap.by[0], by[1] + snap.by[1]);
    const text = joinedText(lengthText(site, distance), snap.text);
    const overlay: Partial<Overlay> = {
      guides: snap.guides,
      label: { at: input.at, text },
      cursor: 'move'
    };
    return { draft, overlay };
  }

  const state: ToolState = {
    name: 'moving',
    busy: true,
    on(input): Outcome | null {
      if (input.type === 'move') return { next: state, selection: refs, ...shifted(input) };
      if (input.type !== 'up') return null;
      const step = { label: `Move ${describeRefs(refs)}`, site: shifted(input).draft, selection: refs };
      return { next: idle, step };
    }
  };
  return state;
}
