import { rotateThings } from '#plan/edits/index';
import { describeRefs } from '../selection';
import { pivotOf } from '../things';
import type { Command, Editor } from '../types';
import { hasSelection } from './conditions';

function rotate(editor: Editor, degrees: number): void {
  const { site, selection } = editor.state;
  const pivot = pivotOf(site, selection);
  if (!pivot) return;
  editor.commit({
    label: `Rotate ${describeRefs(selection)}`,
    site: rotateThings(site, selection, degrees, pivot)
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
