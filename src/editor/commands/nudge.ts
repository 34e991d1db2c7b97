import { saying } from '#i18n/saying';
import { moveThings } from '#plan/edits/index';
import type { Point } from '#plan/schema';
import { NUDGE } from '#units/plan-steps';
import { takeUnlocked } from '../locks';
import { sayRefs } from '../selection';
import type { Command, Editor } from '../types';
import { hasSelection } from './conditions';

const COARSE = 10;

const DIRECTIONS: readonly (readonly [
  name: 'left' | 'right' | 'up' | 'down',
  key: string,
  towards: Point
])[] = [
  ['left', 'ArrowLeft', [-1, 0]],
  ['right', 'ArrowRight', [1, 0]],
  ['up', 'ArrowUp', [0, 1]],
  ['down', 'ArrowDown', [0, -1]]
];

/**
 * Presses in a row on the same selection are one step to undo, whatever their directions and however far apart in time:
 * what is undone does not depend on how fast somebody can press. Anything else in between begins a new step.
 */
function nudge(editor: Editor, towards: Point, times: number): void {
  const { site } = editor.state;
  const selection = takeUnlocked(editor);
  const step = NUDGE[site.displayUnits] * times;
  editor.commit({
    label: saying('step.nudgeThings', { things: sayRefs(selection) }),
    site: moveThings(site, selection, [towards[0] * step, towards[1] * step]),
    merge: `nudge ${selection.map(({ kind, id }) => `${kind} ${id}`).join(', ')}`
  });
}

export const nudges: readonly Command[] = DIRECTIONS.flatMap(([name, key, towards]): Command[] => [
  {
    id: `nudge-${name}`,
    keys: [key],
    applies: hasSelection,
    run: (editor) => nudge(editor, towards, 1)
  },
  {
    id: `nudge-${name}-far`,
    keys: [`Shift+${key}`],
    applies: hasSelection,
    run: (editor) => nudge(editor, towards, COARSE)
  }
]);
