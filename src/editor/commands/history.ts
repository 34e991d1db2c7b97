import type { Command } from '../types';

export const undo: Command = {
  id: 'undo',
  label: 'Undo',
  keys: ['Control+Z'],
  applies: ({ undoLabel, busy }) => busy || undoLabel !== null,
  run: (editor) => editor.undo()
};

export const redo: Command = {
  id: 'redo',
  label: 'Redo',
  keys: ['Control+Shift+Z', 'Control+Y'],
  applies: ({ redoLabel, busy }) => !busy && redoLabel !== null,
  run: (editor) => editor.redo()
};
