import { isHidden } from '#plan/layers';
import type { Site } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { laneAt } from '../geometry/lanes';
import { laneOf, loopOf } from '../things';
import type { Command, EditorState, Ref } from '../types';

/** Lanes that are selected, or that a selected loop lies in. */
function lanesMeant({ site, selection }: EditorState): ReadonlySet<string> {
  const ids = selection.flatMap(({ kind, id }) => {
    if (kind === 'lane') return laneOf(site, id) ? [id] : [];
    const loop = kind === 'loop' ? loopOf(site, id) : undefined;
    const found = loop && laneAt(site.lanes, centreOf(loop.shape));
    return found ? [found.lane.id] : [];
  });
  return new Set(ids);
}

/** Loops whose middle lies in one of the lanes and that can be seen. */
function loopsIn(site: Site, lanes: ReadonlySet<string>): Ref[] {
  return site.loops
    .filter(({ shape }) => lanes.has(laneAt(site.lanes, centreOf(shape))?.lane.id ?? ''))
    .map(({ id }): Ref => ({ kind: 'loop', id }))
    .filter((ref) => !isHidden(site, ref));
}

export const selectLaneLoops: Command = {
  id: 'select-lane-loops',
  keys: ['Shift+S'],
  applies: (state) => !state.busy && loopsIn(state.site, lanesMeant(state)).length > 0,
  run(editor) {
    editor.select(loopsIn(editor.state.site, lanesMeant(editor.state)));
  }
};
