/** Lock and hide what is selected, and undo that for everything. */
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { setHandling, setLayer, showAll, unlockAll } from '#plan/edits/index';
import { isHidden, isLocked, layerOf } from '#plan/layers';
import type { Site } from '#plan/schema';
import { sayRefs } from '../selection';
import type { Command, Editor, Ref } from '../types';
import { hasSeveral } from './conditions';

/** The site with these things free, their layers too where it is they that hold them. */
export function released(site: Site, refs: readonly Ref[], how: 'locked' | 'hidden'): Site {
  const isHeld = how === 'locked' ? isLocked : isHidden;
  const own = setHandling(site, refs, how, false);
  return refs.reduce((result, ref) => {
    const layer = isHeld(result, ref) ? layerOf(result, ref) : null;
    return layer ? setLayer(result, layer, how, false) : result;
  }, own);
}

function toggleLock(editor: Editor): void {
  const { site, selection } = editor.state;
  const things = sayRefs(selection);
  const areLocked = selection.every((ref) => isLocked(site, ref));
  editor.commit(
    areLocked
      ? { label: saying('step.unlockThings', { things }), site: released(site, selection, 'locked') }
      : { label: saying('step.lockThings', { things }), site: setHandling(site, selection, 'locked', true) }
  );
}

/** What is out of sight is not held on to, or the next key would change what nobody sees. */
function hide(editor: Editor): void {
  const { site, selection } = editor.state;
  const label = saying('step.hideThings', { things: sayRefs(selection) });
  editor.commit({ label, site: setHandling(site, selection, 'hidden', true), selection: [] });
  if (!editor.state.isReadOnly) editor.say(t('notice.hidden', { count: selection.length }));
}

export const handling: readonly Command[] = [
  { id: 'lock', keys: ['Control+L'], applies: hasSeveral(1), run: toggleLock },
  {
    id: 'unlock-all',
    keys: ['Control+Shift+L'],
    applies: ({ site, busy, isReadOnly }) => !busy && !isReadOnly && unlockAll(site) !== site,
    run: (editor) => {
      editor.commit({ label: saying('step.unlockAll'), site: unlockAll(editor.state.site) });
    }
  },
  { id: 'hide', keys: ['Shift+H'], applies: hasSeveral(1), run: hide },
  {
    id: 'show-all',
    keys: ['Shift+V'],
    applies: ({ site, busy, isReadOnly }) => !busy && !isReadOnly && showAll(site) !== site,
    run: (editor) => {
      editor.commit({ label: saying('step.showAll'), site: showAll(editor.state.site) });
    }
  }
];
