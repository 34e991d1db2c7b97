/** Every change of the traffic is one undo step; arrow keys in a row on one field stay one. */
import { t } from '#i18n/message';
import type { Words } from '#i18n/saying';
import type { Site } from '#plan/schema';
import type { Bench } from '../../../bench';
import { commitField } from '../../../details/commit';

/** Why the value cannot be taken, if so. */
export const commitTraffic = (
  bench: Bench,
  field: string,
  subject: string,
  edit: (site: Site) => Site,
  isStep = false
): string | undefined =>
  commitField(bench, { field, subject }, edit, isStep) ? undefined : t('field.impossible');

/** A step that is not about a field's value; nothing happens where nothing changes. */
export function commitStep(bench: Bench, label: Words, edit: (site: Site) => Site): void {
  const before = bench.state.site;
  const site = edit(before);
  if (site !== before) bench.editor.commit({ label, site });
}
