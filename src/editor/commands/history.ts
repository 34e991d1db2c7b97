import type { Command } from '../types';

export const undo: Command = {
  id: 'undo',
  keys: ['Control+Z'],
  applies: ({ undoLabel, busy }) => busy || undoLabel !== null,
  run: (editor) => editor.undo()
};

export const redo: Command = {
  id: 'redo',
  keys: ['Control+Shift+Z', 'Control+Y'],
  applies: ({ redoLabel, busy }) => !busy && redoLabel !== null,
  run: (editor) => editor.redo()
};
