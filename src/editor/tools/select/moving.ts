import { saying } from '#i18n/saying';
import { moveThings } from '#plan/edits/index';
import type { Point } from '#plan/schema';
import { shiftBy, shiftSizes } from '../../entry/placing';
import { opensEntry } from '../../entry/typing';
import { boxCorners, movedBox } from '../../geometry/box';
import { unlockedOf } from '../../locks';
import type { Scene } from '../../scene';
import { sayRefs } from '../../selection';
import { clearances } from '../../snapping/clearances';
import { createSnapper } from '../../snapping/snapper';
import { boxOf } from '../../things';
import type { Overlay, Ref } from '../../types';
import { joinedText, lengthText } from '../../wording';
import type { Outcome, ToolPointer, ToolState } from '../tool';
import { idle } from './idle';

/**
 * Always from the plan as it was when the gesture began, so that rounding cannot add up. What is locked stays where it is
 * and stays selected.
 */
export function moving(start: ToolPointer, refs: readonly Ref[], scene: Scene): ToolState {
  const { site } = scene;
  const free = unlockedOf(site, refs);
  const box = boxOf(site, free);
  const snapper = createSnapper(scene, free);
  const hasLoops = free.some(({ kind }) => kind === 'loop');

  /** How far things go, and what they snap to along the axes that nobody typed. */
  function shift(input: ToolPointer) {
    const dx = input.at[0] - start.at[0];
    const dy = input.at[1] - start.at[1];
    const level = Math.abs(dx) >= Math.abs(dy);
    const axes = input.shift ? ([level, !level] as const) : ([true, true] as const);
    const { across, up, offset } = input.typed;
    const wanted = shiftBy([axes[0] ? dx : 0, axes[1] ? dy : 0], input.typed);
    const loose = [
      axes[0] && across === undefined && !offset,
      axes[1] && up === undefined && !offset
    ] as const;
    const snap = snapper.box(movedBox(box!, wanted), input, loose);
    return { by: [wanted[0] + snap.by[0], wanted[1] + snap.by[1]] satisfies Point, snap };
  }

  const draftFor = (input: ToolPointer) => moveThings(site, free, shift(input).by);

  function shown(input: ToolPointer): Omit<Outcome, 'next'> {
    const { by, snap } = shift(input);
    const text = joinedText(lengthText(site, Math.hypot(by[0], by[1])), snap.text);
    const room = hasLoops ? clearances(scene, boxCorners(movedBox(box!, by)), free, snap.guides) : [];
    const overlay: Partial<Overlay> = {
      guides: [...snap.guides, ...room],
      label: { at: input.at, text },
      cursor: 'move'
    };
    const entry = { of: 'moving', fields: shiftSizes(by), takesPlace: true };
    return { draft: moveThings(site, free, by), overlay, entry, selection: refs };
  }

  const finished = (input: ToolPointer): Outcome => {
    const label = saying('step.moveThings', { things: sayRefs(free) });
    return { next: idle, step: { label, site: draftFor(input), selection: refs } };
  };

  /** `last`: where the pointer was when it was last heard of. */
  function from(last: ToolPointer): ToolState {
    const state: ToolState = {
      name: 'moving',
      busy: true,
      on(input): Outcome | null {
        if (input.type === 'move') return { next: from(input), ...shown(input) };
        if (input.type === 'up') return finished(input);
        if (input.type !== 'key') return null;
        if (input.key === 'Enter') return finished(last);
        return opensEntry(input.key) ? { next: state, ...shown(last) } : null;
      }
    };
    return state;
  }
  return from(start);
}
