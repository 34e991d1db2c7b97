import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { mirrorThings, type Axis } from '#plan/edits/index';
import { bearing } from '#plan/geometry/points';
import { laneMeant } from '../../arranging';
import { boxCentre } from '../../geometry/box';
import { stationOf } from '../../geometry/lanes';
import { takeUnlocked } from '../../locks';
import { sayRefs } from '../../selection';
import { boxOf } from '../../things';
import type { Command, Editor, EditorState, Ref } from '../../types';
import { hasSeveral } from '../conditions';

type Across = 'x' | 'y' | 'lane';

/** Upright or level through the middle of the things, or the middle of their lane where they are. */
function axisOf(state: EditorState, refs: readonly Ref[], across: Across): Axis | null {
  const box = boxOf(state.site, refs);
  if (!box) return null;
  const through = boxCentre(box);
  if (across !== 'lane') return { through, angle: across === 'x' ? 90 : 0 };
  const lane = laneMeant(state);
  const station = lane && stationOf(lane, through);
  return station && { through: station.at, angle: bearing([0, 0], station.ahead) };
}

function mirror(editor: Editor, across: Across): void {
  const refs = takeUnlocked(editor);
  const axis = axisOf(editor.state, refs, across);
  if (!axis) return;
  if (refs.some(({ kind }) => kind === 'underlay')) editor.say(t('notice.noMirror'));
  editor.commit({
    label: saying('step.mirrorThings', { things: sayRefs(refs) }),
    site: mirrorThings(editor.state.site, refs, axis)
  });
}

export const mirroring: readonly Command[] = (['x', 'y', 'lane'] as const).map((across) => ({
  id: `mirror-${across}` as const,
  keys: [],
  applies: (state) => hasSeveral(1)(state) && (across !== 'lane' || laneMeant(state) !== null),
  run: (editor) => {
    mirror(editor, across);
  }
}));
