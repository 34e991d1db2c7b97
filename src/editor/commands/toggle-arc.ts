/** Straight on or in arcs, also in the middle of a lane: what is in hand is drawn again at once. */
import { planToScreen } from '../viewport';
import type { Command } from '../types';

export const toggleArc: Command = {
  id: 'toggle-arc',
  keys: ['/'],
  applies: ({ tool }) => tool === 'lane',
  run(editor) {
    const { drawing, viewport } = editor.state;
    editor.setDrawing({ isArc: !drawing.isArc });
    const at = editor.scratch.pointer;
    if (!at) return;
    const [x, y] = planToScreen(viewport, at);
    const held = { shift: false, alt: false, control: false, button: 0, pointer: 'mouse' } as const;
    editor.pointer({ type: 'move', x, y, ...held });
  }
};
