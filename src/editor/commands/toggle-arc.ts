import type { Command } from '../types';

/** Straight on or in arcs, also in the middle of a lane. */
export const toggleArc: Command = {
  id: 'toggle-arc',
  keys: ['/'],
  applies: ({ tool }) => tool === 'lane',
  run: (editor) => editor.setDrawing({ isArc: !editor.state.drawing.isArc })
};
