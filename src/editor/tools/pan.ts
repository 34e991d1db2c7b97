import { pannedBy } from '../viewport';
import type { Viewport } from '../types';
import type { Outcome, ToolPointer, ToolState } from './tool';

function panning(start: ToolPointer, view: Viewport): ToolState {
  const state: ToolState = {
    name: 'panning',
    busy: true,
    on(input): Outcome | null {
      if (input.type === 'up') return { next: panTool, overlay: { cursor: 'grab' } };
      if (input.type !== 'move') return null;
      const dx = input.screen[0] - start.screen[0];
      const dy = input.screen[1] - start.screen[1];
      return { next: state, viewport: pannedBy(view, dx, dy), overlay: { cursor: 'grabbing' } };
    }
  };
  return state;
}

export const panTool: ToolState = {
  name: 'pan: ready',
  busy: false,
  on(input, { viewport }): Outcome | null {
    if (input.type === 'down') return { next: panning(input, viewport), overlay: { cursor: 'grabbing' } };
    return input.type === 'move' ? { next: panTool, overlay: { cursor: 'grab' } } : null;
  }
};
