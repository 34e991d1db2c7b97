import { saying } from '#i18n/saying';
import { alignThings, type Alignment } from '#plan/edits/index';
import { itemsOf } from '../../arranging';
import { takeUnlocked, unlockedOf } from '../../locks';
import { sayRefs } from '../../selection';
import type { Command, Editor, EditorState } from '../../types';
import { hasSeveral } from '../conditions';

const KEYS: Readonly<Record<Alignment, readonly string[]>> = {
  left: ['Control+Shift+ArrowLeft'],
  centre: [],
  right: ['Control+Shift+ArrowRight'],
  top: ['Control+Shift+ArrowUp'],
  middle: [],
  bottom: ['Control+Shift+ArrowDown']
};

const canAlign = (state: EditorState): boolean =>
  hasSeveral(2)(state) && unlockedOf(state.site, state.selection).length > 0;

function align(editor: Editor, how: Alignment): void {
  const { site, selection } = editor.state;
  editor.commit({
    label: saying('step.alignThings', { things: sayRefs(selection) }),
    site: alignThings(site, itemsOf(site, selection), how)
  });
  takeUnlocked(editor);
}

export const aligning: readonly Command[] = (
  ['left', 'centre', 'right', 'top', 'middle', 'bottom'] as const
).map((how) => ({
  id: `align-${how}` as const,
  keys: KEYS[how],
  applies: canAlign,
  run: (editor) => {
    align(editor, how);
  }
}));
