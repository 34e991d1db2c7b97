/** Copies within the tab: a fragment is a site with nothing in it but what was copied. The page takes it further. */
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { extractThings, insertCopies, removeThings } from '#plan/edits/index';
import type { Point } from '#plan/schema';
import { boxCentre } from '../geometry/box';
import { takeUnlocked } from '../locks';
import { allRefs, sayRefs } from '../selection';
import { toStep } from '../snapping/snap';
import { boxOf } from '../things';
import type { Command, Editor, Ref } from '../types';
import { besideStep } from './beside';
import { hasSelection } from './conditions';

function take({ state, scratch }: Editor, refs: readonly Ref[]): void {
  const site = extractThings(state.site, refs);
  scratch.clipboard = { site, refs: allRefs(site), standing: state.site.marks };
  scratch.pastes = 0;
}

function put(editor: Editor, by: Point): void {
  const { state, scratch } = editor;
  if (!scratch.clipboard) return editor.say(t('notice.pasteEmpty'));
  const { site: copied, standing } = scratch.clipboard;
  const { site, things } = insertCopies(state.site, copied, by, standing);
  if (site === state.site) return editor.say(t('notice.pasteFull'));
  const label = saying('step.pasteThings', { things: sayRefs(things) });
  editor.commit({ label, site, selection: things });
}

export const copy: Command = {
  id: 'copy',
  keys: ['Control+C'],
  applies: hasSelection,
  run: (editor) => {
    take(editor, editor.state.selection);
  }
};

/** What is locked stays, and is not copied either: cut and paste must not make two of it. */
export const cut: Command = {
  id: 'cut',
  keys: ['Control+X'],
  applies: hasSelection,
  run(editor) {
    const refs = takeUnlocked(editor);
    if (refs.length === 0) return;
    take(editor, refs);
    editor.commit({
      label: saying('step.cutThings', { things: sayRefs(refs) }),
      site: removeThings(editor.state.site, refs),
      selection: []
    });
  }
};

/** With the pointer over the plan the copies come there, else beside the origin, each time one step further. */
export const paste: Command = {
  id: 'paste',
  keys: ['Control+V'],
  applies: ({ busy }) => !busy,
  run(editor) {
    const { scratch, state } = editor;
    const box = scratch.clipboard && boxOf(scratch.clipboard.site, scratch.clipboard.refs);
    if (!box) return put(editor, [0, 0]);
    if (scratch.pointer) {
      const [x, y] = boxCentre(box);
      const by: Point = [scratch.pointer[0] - x, scratch.pointer[1] - y];
      const step = state.snap.gridStep;
      return put(editor, state.snap.grid ? [by[0] + toStep(by[0], step), by[1] + toStep(by[1], step)] : by);
    }
    scratch.pastes += 1;
    const [x, y] = besideStep(box, state.site.displayUnits);
    put(editor, [x * scratch.pastes, y * scratch.pastes]);
  }
};

export const pasteInPlace: Command = {
  id: 'paste-in-place',
  keys: ['Control+Shift+V'],
  applies: ({ busy }) => !busy,
  run: (editor) => {
    put(editor, [0, 0]);
  }
};
