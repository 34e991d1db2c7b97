import type { Command } from '../types';

export const cancel: Command = {
  id: 'cancel',
  keys: ['Escape'],
  applies: ({ busy, tool, selection }) => busy || tool !== 'select' || selection.length > 0,
  run: (editor) => editor.cancel()
};
