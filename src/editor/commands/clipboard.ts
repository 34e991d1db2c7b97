/** Copies within the tab: a fragment is a site with nothing in it but what was copied. The page takes it further. */
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { extractThings, insertCopies, removeThings } from '#plan/edits/index';
import { add } from '#plan/geometry/points';
import type { Point, Site } from '#plan/schema';
import { boxCentre, movedBox, type Box } from '../geometry/box';
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

/** Of a thing's place, as text: two of a kind with the same one lie exactly on each other. A tenth of a millimetre counts. */
const placeText = ({ kind }: Ref, { left, bottom, right, top }: Box): string =>
  [kind, ...[left, bottom, right, top].map((value) => value.toFixed(4))].join(' ');

/**
 * The shift, with as many steps more as it takes until no copy lies exactly on a thing of its kind: that would look as if
 * nothing had happened.
 */
function clearOf(site: Site, copied: Site, refs: readonly Ref[], first: Point, step: Point): Point {
  const taken = new Set(
    allRefs(site).flatMap((ref) => {
      const box = boxOf(site, [ref]);
      return box ? [placeText(ref, box)] : [];
    })
  );
  const boxes = refs.flatMap((ref) => {
    const box = boxOf(copied, [ref]);
    return box ? [{ ref, box }] : [];
  });
  let by = first;
  // Every step leads to a place not looked at before, so one of them is free after as many as there are things.
  for (let left = taken.size; left > 0; left--) {
    if (!boxes.some(({ ref, box }) => taken.has(placeText(ref, movedBox(box, by))))) break;
    by = add(by, step);
  }
  return by;
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

/**
 * With the pointer over the plan the copies come there, else beside the origin, each time one step further; never exactly on
 * what lies there already.
 */
export const paste: Command = {
  id: 'paste',
  keys: ['Control+V'],
  applies: ({ busy }) => !busy,
  run(editor) {
    const { scratch, state } = editor;
    const { site: copied, refs } = scratch.clipboard ?? { site: state.site, refs: [] };
    const box = boxOf(copied, refs);
    if (!box) return put(editor, [0, 0]);
    const step = besideStep(box, state.site.displayUnits);
    if (scratch.pointer) {
      const [x, y] = boxCentre(box);
      const by: Point = [scratch.pointer[0] - x, scratch.pointer[1] - y];
      const grid = state.snap.gridStep;
      const there: Point = state.snap.grid ? [by[0] + toStep(by[0], grid), by[1] + toStep(by[1], grid)] : by;
      return put(editor, clearOf(state.site, copied, refs, there, step));
    }
    scratch.pastes += 1;
    const beside: Point = [step[0] * scratch.pastes, step[1] * scratch.pastes];
    put(editor, clearOf(state.site, copied, refs, beside, step));
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
