import { saying } from '#i18n/saying';
import { rotateThings } from '#plan/edits/index';
import { takeUnlocked } from '../locks';
import { sayRefs } from '../selection';
import { pivotOf } from '../things';
import type { Command, Editor } from '../types';
import { hasSelection } from './conditions';

function rotate(editor: Editor, degrees: number): void {
  const { site } = editor.state;
  const refs = takeUnlocked(editor);
  const pivot = pivotOf(site, refs);
  if (!pivot) return;
  editor.commit({
    label: saying('step.rotateThings', { things: sayRefs(refs) }),
    site: rotateThings(site, refs, degrees, pivot)
  });
}

export const rotateLeft: Command = {
  id: 'rotate-left',
  keys: ['T'],
  applies: hasSelection,
  run: (editor) => rotate(editor, 90)
};

export const rotateRight: Command = {
  id: 'rotate-right',
  keys: ['Shift+T'],
  applies: hasSelection,
  run: (editor) => rotate(editor, -90)
};
