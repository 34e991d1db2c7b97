/** Steel without a pointer: under what is selected, or in the middle of the view. */
import type { Point } from '#plan/schema';
import { FOOT } from '#units/constants';
import { boxCorners, type Box } from '../geometry/box';
import { boxOf } from '../things';
import { steelStep } from '../tools/steel';
import type { Command, EditorState } from '../types';

/** Metres by which a mat reaches beyond the loops that it lies under. */
const BEYOND = { metric: 1, imperial: 3 * FOOT } as const;
/** Half the side of a mat that lies under nothing. */
const HALF = { metric: 2, imperial: 6 * FOOT } as const;

function placeFor({ site, selection, viewport }: EditorState): Box {
  const loops = boxOf(site, selection.filter(({ kind }) => kind === 'loop')); // prettier-ignore
  const [x, y]: Point = viewport.centre;
  const middle = { left: x, right: x, bottom: y, top: y };
  const by = loops ? BEYOND[site.displayUnits] : HALF[site.displayUnits];
  const { left, right, bottom, top } = loops ?? middle;
  return { left: left - by, right: right + by, bottom: bottom - by, top: top + by };
}

export const insertSteel: Command = {
  id: 'insert-steel',
  keys: ['Shift+B'],
  applies: ({ busy }) => !busy,
  run(editor) {
    const { state } = editor;
    const step = steelStep(state.site, boxCorners(placeFor(state)));
    if (step) editor.commit(step);
  }
};
