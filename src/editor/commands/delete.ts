import { removeThings } from '#plan/edits/index';
import { describeRefs } from '../selection';
import type { Command } from '../types';
import { hasSelection } from './conditions';

export const remove: Command = {
  id: 'delete',
  keys: ['Delete', 'Backspace'],
  applies: hasSelection,
  run(editor) {
    const { site, selection } = editor.state;
    editor.commit({
      label: `Delete ${describeRefs(selection)}`,
      site: removeThings(site, selection),
      selection: []
    });
  }
};
