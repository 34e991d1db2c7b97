import { saying } from '#i18n/saying';
import { centreInLanes } from '#plan/edits/index';
import { besideLanes, itemsOf, laneMeant } from '../../arranging';
import { laneAt } from '../../geometry/lanes';
import { takeUnlocked, unlockedOf } from '../../locks';
import { sayRefs } from '../../selection';
import type { Command } from '../../types';
import { hasSeveral } from '../conditions';

/** Whatever was drawn from a corner lies somewhere across its lane; a vehicle drives in the middle. */
export const centring: Command = {
  id: 'centre-in-lane',
  keys: [],
  applies: (state) =>
    hasSeveral(1)(state) && unlockedOf(state.site, state.selection).length > 0 && laneMeant(state) !== null,
  run: (editor) => {
    const { site, selection } = editor.state;
    const things = besideLanes(selection);
    editor.commit({
      label: saying('step.centreThings', { things: sayRefs(things) }),
      site: centreInLanes(site, itemsOf(site, things), (at) => laneAt(site.lanes, at)?.lane ?? null)
    });
    takeUnlocked(editor);
  }
};
