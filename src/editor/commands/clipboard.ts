/** Copies within the tab: a fragment is a site with nothing in it but what was copied. */
import { extractThings, insertCopies, removeThings } from '#plan/edits/index';
import type { Point } from '#plan/schema';
import { boxCentre } from '../geometry/box';
import { allRefs, describeRefs } from '../selection';
import { toStep } from '../snapping/snap';
import { boxOf } from '../things';
import type { Command, Editor } from '../types';
import { besideStep } from './beside';
import { hasSelection } from './conditions';

function take({ state, scratch }: Editor): void {
  const site = extractThings(state.site, state.selection);
  scratch.clipboard = { site, refs: allRefs(site), standing: state.site.marks };
  scratch.pastes = 0;
}

function put(editor: Editor, by: Point): void {
  const { state, scratch } = editor;
  if (!scratch.clipboard) return;
  const { site: copied, standing } = scratch.clipboard;
  const { site, things } = insertCopies(state.site, copied, by, standing);
  editor.commit({ label: `Paste ${describeRefs(things)}`, site, selection: things });
}

export const copy: Command = {
  id: 'copy',
  keys: ['Control+C'],
  applies: hasSelection,
  run: take
};

export const cut: Command = {
  id: 'cut',
  keys: ['Control+X'],
  applies: hasSelection,
  run(editor) {
    take(editor);
    const { site, selection } = editor.state;
    editor.commit({
      label: `Cut ${describeRefs(selection)}`,
      site: removeThings(site, selection),
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
    if (!box) return;
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
  run: (editor) => put(editor, [0, 0])
};
