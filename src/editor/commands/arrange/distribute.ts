import { saying } from '#i18n/saying';
import { distributeThings, type Row } from '#plan/edits/index';
import { besideLanes, itemsOf, laneMeant } from '../../arranging';
import { sayRefs } from '../../selection';
import type { Command, EditorState, Ref } from '../../types';
import { hasSeveral } from '../conditions';

interface Meant {
  readonly refs: readonly Ref[];
  readonly row: Row;
}

/** Along a lane the lane itself is no part of the row. */
function meant(state: EditorState, along: 'x' | 'y' | 'lane'): Meant | null {
  const lane = along === 'lane' ? laneMeant(state) : null;
  if (along === 'lane') return lane && { refs: besideLanes(state.selection), row: lane };
  return { refs: state.selection, row: along };
}

const distribute = (along: 'x' | 'y' | 'lane'): Command => ({
  id: `distribute-${along}`,
  keys: [],
  applies(state) {
    const found = hasSeveral(3)(state) ? meant(state, along) : null;
    return found !== null && found.refs.length >= 3;
  },
  run(editor) {
    const { site } = editor.state;
    const found = meant(editor.state, along);
    if (!found) return;
    editor.commit({
      label: saying('step.distributeThings', { things: sayRefs(found.refs) }),
      site: distributeThings(site, itemsOf(site, found.refs), found.row)
    });
  }
});

export const distributing: readonly Command[] = [distribute('x'), distribute('y'), distribute('lane')];
