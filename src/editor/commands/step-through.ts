/** From thing to thing in the order of reading, for those who have no pointer or see no drawing. */
import { isHidden } from '#plan/layers';
import { outlineOf } from '../outline';
import { sameRef } from '../selection';
import type { Command, Editor, EditorState, Ref } from '../types';

const isIdle = ({ busy, tool }: EditorState): boolean => !busy && tool === 'select';

/** What can be seen, as the outline lists it. */
const inOrder = ({ site }: EditorState): Ref[] =>
  outlineOf(site)
    .map(({ ref }) => ref)
    .filter((ref) => !isHidden(site, ref));

/** From the last of the selection on, round and round. */
function stepThrough(editor: Editor, by: 1 | -1): void {
  const refs = inOrder(editor.state);
  const current = editor.state.selection.at(-1);
  const at = current ? refs.findIndex((ref) => sameRef(ref, current)) : -1;
  const next = at === -1 ? (by === 1 ? 0 : refs.length - 1) : (at + by + refs.length) % refs.length;
  const ref = refs[next];
  if (ref) editor.select([ref]);
}

export const selectNext: Command = {
  id: 'select-next',
  keys: ['PageDown'],
  applies: isIdle,
  run: (editor) => stepThrough(editor, 1)
};

export const selectPrevious: Command = {
  id: 'select-previous',
  keys: ['PageUp'],
  applies: isIdle,
  run: (editor) => stepThrough(editor, -1)
};

export const selectFirst: Command = {
  id: 'select-first',
  keys: ['Enter'],
  applies: (state) => isIdle(state) && state.selection.length === 0,
  run: (editor) => stepThrough(editor, 1)
};
