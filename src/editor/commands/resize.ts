/** Width and length of the selected loops by the step of a nudge, about their centres; a circle has its diameter. */
import { saying } from '#i18n/saying';
import { setShape } from '#plan/edits/index';
import { tidyLength } from '#plan/edits/tidy';
import type { Shape, Site } from '#plan/schema';
import { NUDGE } from '#units/plan-steps';
import { unlockedOf } from '../locks';
import { sayRefs } from '../selection';
import { loopOf } from '../things';
import type { Command, Editor, EditorState, Ref } from '../types';

type Side = 'width' | 'length';

const COARSE = 10;

const RESIZES: readonly (readonly [
  name: 'wider' | 'narrower' | 'longer' | 'shorter',
  key: string,
  side: Side,
  sign: 1 | -1
])[] = [
  ['wider', 'Alt+ArrowRight', 'width', 1],
  ['narrower', 'Alt+ArrowLeft', 'width', -1],
  ['longer', 'Alt+ArrowUp', 'length', 1],
  ['shorter', 'Alt+ArrowDown', 'length', -1]
];

/** The shape with that side longer; null for one that has no sides to speak of. */
function resized(shape: Shape, side: Side, by: number): Shape | null {
  if (shape.kind === 'polygon') return null;
  if (shape.kind === 'circle') return { ...shape, diameter: tidyLength(shape.diameter + by) };
  return { ...shape, [side]: tidyLength(shape[side] + by) };
}

const loopsIn = ({ site, selection }: EditorState): readonly Ref[] =>
  unlockedOf(site, selection).filter(
    ({ kind, id }) => kind === 'loop' && loopOf(site, id)?.shape.kind !== 'polygon'
  );

/** A loop that would become too small keeps its size. Presses in a row are one step. */
function resize(editor: Editor, side: Side, by: number): void {
  const { site } = editor.state;
  const refs = loopsIn(editor.state);
  const next = refs.reduce<Site>((result, { id }) => {
    const shape = loopOf(result, id)?.shape;
    const larger = shape && resized(shape, side, by);
    return larger ? setShape(result, id, larger) : result;
  }, site);
  editor.commit({
    label: saying('step.resizeThings', { things: sayRefs(refs) }),
    site: next,
    merge: `resize ${refs.map(({ id }) => id).join(', ')}`
  });
}

export const resizes: readonly Command[] = RESIZES.flatMap(([name, key, side, sign]): Command[] =>
  ([1, COARSE] as const).map((times): Command => ({
    id: times === 1 ? name : `${name}-far`,
    keys: [times === 1 ? key : key.replace('+', '+Shift+')],
    applies: (state) => !state.busy && loopsIn(state).length > 0,
    run: (editor) => resize(editor, side, sign * times * NUDGE[editor.state.site.displayUnits])
  }))
);
