import { saying } from '#i18n/saying';
import { extractThings, insertCopies } from '#plan/edits/index';
import { subtract } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { boxCentre } from '../geometry/box';
import { sayRefs, sameSelection } from '../selection';
import { boxOf } from '../things';
import type { Command, Editor } from '../types';
import { besideStep } from './beside';
import { hasSelection } from './conditions';

/** As far as the last copies were put from their originals, if those copies are still what is selected. */
function repeated({ state, scratch }: Editor): Point | null {
  const { copied } = scratch;
  if (!copied || !sameSelection(copied.to, state.selection)) return null;
  const from = boxOf(state.site, copied.from);
  const to = boxOf(state.site, copied.to);
  if (!from || !to) return null;
  const by = subtract(boxCentre(to), boxCentre(from));
  return Math.hypot(by[0], by[1]) < 1e-6 ? null : by;
}

export const duplicate: Command = {
  id: 'duplicate',
  keys: ['Control+D'],
  applies: hasSelection,
  run(editor) {
    const { site, selection } = editor.state;
    const box = boxOf(site, selection);
    if (!box) return;
    const by = repeated(editor) ?? besideStep(box, site.displayUnits);
    const { site: next, things } = insertCopies(site, extractThings(site, selection), by, site.marks);
    editor.commit({
      label: saying('step.duplicateThings', { things: sayRefs(selection) }),
      site: next,
      selection: things
    });
    editor.scratch.copied = { from: selection, to: editor.state.selection };
  }
};
