/** Arrangements that want figures: the page asks for them. */
import { besideLanes } from '../../arranging';
import type { Command } from '../../types';
import { hasSeveral } from '../conditions';

export const typedArrangements: readonly Command[] = [
  {
    id: 'set-gap',
    keys: [],
    applies: hasSeveral(2),
    run: (editor) => {
      editor.ask('gap');
    }
  },
  {
    id: 'repeat-along-lane',
    keys: ['Shift+L'],
    applies: (state) =>
      hasSeveral(1)(state) && state.site.lanes.length > 0 && besideLanes(state.selection).length > 0,
    run: (editor) => {
      editor.ask('repeat');
    }
  }
];
