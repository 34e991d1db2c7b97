import type { Command, Editor } from '../types';

const FACTOR = 1.25;

function zoom(editor: Editor, factor: number): void {
  const { width, height } = editor.state.viewport;
  editor.zoom(factor, width / 2, height / 2);
}

export const zoomIn: Command = {
  id: 'zoom-in',
  keys: ['+', '='],
  applies: () => true,
  run: (editor) => zoom(editor, FACTOR)
};

export const zoomOut: Command = {
  id: 'zoom-out',
  keys: ['-', '_'],
  applies: () => true,
  run: (editor) => zoom(editor, 1 / FACTOR)
};
