/** A drag of what may not move: it stays, and the text beside the pointer says why. */
import type { Outcome, ToolState } from '../tool';
import { idle } from './idle';

export function staying(why: string): ToolState {
  const state: ToolState = {
    name: 'staying',
    busy: true,
    on(input): Outcome | null {
      if (input.type === 'up') return { next: idle };
      if (input.type !== 'move') return null;
      return { next: state, overlay: { label: { at: input.at, text: why }, cursor: 'not-allowed' } };
    }
  };
  return state;
}
