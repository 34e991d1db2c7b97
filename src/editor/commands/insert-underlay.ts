/** A picture under the plan. Which one is a question that only the page can ask. */
import type { Command } from '../types';

export const insertUnderlay: Command = {
  id: 'insert-underlay',
  keys: ['Shift+I'],
  applies: ({ busy, isReadOnly }) => !busy && !isReadOnly,
  run: (editor) => editor.ask('picture')
};
