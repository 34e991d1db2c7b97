/** Three switches apart from each other: the grid in sight, snapping to the grid, snapping to objects. */
import type { Command, Editor, SnapSettings } from '../types';

function flip(editor: Editor, key: 'showGrid' | 'grid' | 'objects'): void {
  const { snap } = editor.state;
  editor.setSnap({ ...snap, [key]: !snap[key] } satisfies SnapSettings);
}

export const toggleGrid: Command = {
  id: 'toggle-grid',
  keys: ['G'],
  applies: () => true,
  run: (editor) => flip(editor, 'showGrid')
};

export const toggleGridSnap: Command = {
  id: 'toggle-grid-snap',
  keys: ['Shift+G'],
  applies: () => true,
  run: (editor) => flip(editor, 'grid')
};

export const toggleObjectSnap: Command = {
  id: 'toggle-object-snap',
  keys: ['O'],
  applies: () => true,
  run: (editor) => flip(editor, 'objects')
};
