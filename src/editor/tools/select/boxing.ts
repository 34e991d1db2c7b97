import { boxAround } from '../../geometry/box';
import { pickInBox } from '../../picking';
import { united } from '../../selection';
import type { Outcome, ToolPointer, ToolState } from '../tool';
import { idle } from './idle';

/** To the right the box takes what is wholly inside, to the left also what it touches. */
export function boxing(start: ToolPointer): ToolState {
  const state: ToolState = {
    name: 'boxing',
    busy: true,
    on(input, { site, selection }): Outcome | null {
      if (input.type !== 'move' && input.type !== 'up') return null;
      const touching = input.at[0] < start.at[0];
      if (input.type === 'move')
        return { next: state, overlay: { box: { from: start.at, to: input.at, touching } } };
      const found = pickInBox(site, boxAround([start.at, input.at])!, touching);
      return { next: idle, selection: start.shift ? united(selection, found) : found };
    }
  };
  return state;
}
