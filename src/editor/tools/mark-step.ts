/** A mark from the hand: shown as a draft, then left as one step. */
import { saying } from '#i18n/saying';
import { addMark, newMark } from '#plan/edits/index';
import { tidyPoint } from '#plan/edits/tidy';
import type { Mark, MarkKind, Point, Site } from '#plan/schema';
import type { Step } from '../types';

/** What a mark can hold beside its points. */
export type MarkFields = Partial<Pick<Mark, 'opening' | 'turn' | 'offset'>>;

/** Null when the site has no room for it, or may not hold it. */
export function markStep(
  site: Site,
  kind: MarkKind,
  points: readonly Point[],
  fields: MarkFields = {}
): Step | null {
  const mark: Mark = { ...newMark(site, kind, points.map(tidyPoint)), ...fields };
  const next = addMark(site, mark);
  if (next === site) return null;
  const step = {
    label: saying(`step.mark.${kind}`),
    site: next,
    selection: [{ kind: 'mark', id: mark.id }]
  } as const;
  // What a note says is typed after it was put down: both are one step.
  return kind === 'note' ? { ...step, merge: `note ${mark.id}` } : step;
}
