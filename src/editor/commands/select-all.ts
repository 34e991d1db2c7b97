import { isLocked } from '#plan/layers';
import { seenRefs } from '../selection';
import type { Command } from '../types';

/** All that can be seen and changed. */
export const selectAll: Command = {
  id: 'select-all',
  keys: ['Control+A'],
  applies: ({ busy }) => !busy,
  run(editor) {
    const { site } = editor.state;
    editor.select(seenRefs(site).filter((ref) => !isLocked(site, ref)));
  }
};
