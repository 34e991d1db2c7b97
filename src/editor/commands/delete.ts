import { saying } from '#i18n/saying';
import { removeThings } from '#plan/edits/index';
import { takeUnlocked } from '../locks';
import { sayRefs, includesRef } from '../selection';
import type { Command } from '../types';
import { hasSelection } from './conditions';

export const remove: Command = {
  id: 'delete',
  keys: ['Delete', 'Backspace'],
  applies: hasSelection,
  run(editor) {
    const { site, selection } = editor.state;
    const refs = takeUnlocked(editor);
    // A vehicle is known by its place in the list, which changes when one before it goes.
    const left = selection.filter((ref) => ref.kind !== 'probe' && !includesRef(refs, ref));
    editor.commit({
      label: saying('step.deleteThings', { things: sayRefs(refs) }),
      site: removeThings(site, refs),
      selection: left
    });
  }
};
