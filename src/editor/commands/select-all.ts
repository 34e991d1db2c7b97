import { allRefs } from '../selection';
import type { Command } from '../types';

export const selectAll: Command = {
  id: 'select-all',
  keys: ['Control+A'],
  applies: ({ busy }) => !busy,
  run: (editor) => editor.select(allRefs(editor.state.site))
};
