import { scaledTo } from '../viewport';
import type { Command } from '../types';

/** Pixels of 1/96 inch, as browsers count them, to a metre that is drawn a hundred times smaller. */
const TRUE_SCALE = 96 / 0.0254 / 100;

/** One to a hundred about the middle of the screen: what a printed plan at that scale would show. */
export const trueScale: Command = {
  id: 'true-scale',
  keys: ['Shift+Home'],
  applies: () => true,
  run: (editor) => editor.setViewport(scaledTo(editor.state.viewport, TRUE_SCALE))
};
