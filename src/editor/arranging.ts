/** What is selected, as arranging sees it; and the two arrangements that somebody types figures for. */
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { repeatAlongLane, setGaps, type Item, type Repeated, type Row } from '#plan/edits/index';
import { isLocked } from '#plan/layers';
import type { Lane, Point, Site } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { boxCentre } from './geometry/box';
import { laneAt } from './geometry/lanes';
import { unlockedOf } from './locks';
import { sayRefs } from './selection';
import { boxOf, laneOf, loopOf, pointsOf, probeOf } from './things';
import type { Editor, EditorState, Ref } from './types';

/** The middle of a thing: of a loop and a vehicle their own, else that of its box. */
function anchorOf(site: Site, ref: Ref): Point | null {
  const loop = ref.kind === 'loop' ? loopOf(site, ref.id) : undefined;
  if (loop) return centreOf(loop.shape);
  const probe = ref.kind === 'probe' ? probeOf(site, ref.id) : undefined;
  if (probe) return probe.at;
  const box = boxOf(site, [ref]);
  return box && boxCentre(box);
}

export const itemsOf = (site: Site, refs: readonly Ref[]): Item[] =>
  refs.flatMap((ref): Item[] => {
    const anchor = anchorOf(site, ref);
    const outline = pointsOf(site, ref);
    return anchor && outline.length > 0
      ? [{ thing: ref, outline, anchor, isFixed: isLocked(site, ref) }]
      : [];
  });

/** All but lanes: what can lie along one. */
export const besideLanes = (refs: readonly Ref[]): readonly Ref[] =>
  refs.filter(({ kind }) => kind !== 'lane');

/** The lane that is meant: one that is selected, else the one that the first of the things lies in. */
export function laneMeant({ site, selection }: EditorState): Lane | null {
  const chosen = selection.find(({ kind }) => kind === 'lane');
  if (chosen) return laneOf(site, chosen.id) ?? null;
  for (const ref of selection) {
    const anchor = anchorOf(site, ref);
    const found = anchor && laneAt(site.lanes, anchor);
    if (found) return found.lane;
  }
  return null;
}

/** What is selected with this gap between each and the next, metres; false if nothing changes. */
export function setGap(editor: Editor, row: Row, gap: number): boolean {
  const { site, selection } = editor.state;
  const refs = typeof row === 'string' ? selection : besideLanes(selection);
  const next = setGaps(site, itemsOf(site, refs), row, gap);
  if (next === site) return false;
  const label = saying('step.gapThings', { things: sayRefs(unlockedOf(site, refs)) });
  editor.commit({ label, site: next });
  return true;
}

/** `count` copies of what is selected along a lane, `pitch` metres from one to the next. */
export function repeatSelection(editor: Editor, lane: Lane, count: number, pitch: number): Repeated {
  const { site, selection } = editor.state;
  const things = besideLanes(selection);
  const repeated = repeatAlongLane(site, { things, lane, count, pitch, anchorOf });
  if (repeated.made > 0) {
    const label = saying('step.repeatThings', { things: sayRefs(things) });
    editor.commit({ label, site: repeated.site, selection: [...things, ...repeated.things] });
  }
  if (repeated.made < count) editor.say(t('notice.repeated', { count: repeated.made, wanted: count }));
  return repeated;
}
