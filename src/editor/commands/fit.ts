import type { Command } from '../types';

export const fitAll: Command = {
  id: 'fit-all',
  keys: ['F', 'Home'],
  applies: () => true,
  run: (editor) => editor.fit('all')
};

export const fitSelection: Command = {
  id: 'fit-selection',
  keys: ['Shift+F'],
  applies: ({ selection }) => selection.length > 0,
  run: (editor) => editor.fit('selection')
};
