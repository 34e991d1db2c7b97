/** Pull boxes and cabinets without a pointer: in the middle of the view, beside what is there already. */
import type { Point } from '#plan/schema';
import { toStep } from '../snapping/snap';
import { markStep } from '../tools/mark-step';
import type { PlacedMark } from '../tools/place-mark';
import type { Command, EditorState } from '../types';

/** Metres between two that would lie on each other. */
const APART = 1;

function placeFor({ site, viewport, snap }: EditorState): Point {
  const [x, y] = viewport.centre;
  let at: Point = [x + toStep(x, snap.gridStep), y + toStep(y, snap.gridStep)];
  const isTaken = ([a, b]: Point): boolean =>
    site.marks.some(
      ({ points }) => points.length === 1 && Math.hypot(points[0]![0] - a, points[0]![1] - b) < APART / 2
    );
  while (isTaken(at)) at = [at[0] + APART, at[1]];
  return at;
}

const insert = (kind: Exclude<PlacedMark, 'note'>, key: string): Command => ({
  id: `insert-${kind}`,
  keys: [key],
  applies: ({ busy }) => !busy,
  run(editor) {
    const step = markStep(editor.state.site, kind, [placeFor(editor.state)]);
    if (step) editor.commit(step);
  }
});

export const insertMarks: readonly Command[] = [insert('pull-box', 'Shift+J'), insert('cabinet', 'Shift+K')];
