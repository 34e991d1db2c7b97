import type { Words } from '#i18n/saying';
import type { Site } from '#plan/schema';
import type { Bench } from '../bench';

/** Makes one named undo step of the edit; false when it changes nothing. */
export function commitEdit(bench: Bench, label: Words, edit: (site: Site) => Site): boolean {
  const before = bench.state.site;
  const site = edit(before);
  if (site === before) return false;
  bench.editor.commit({ label, site });
  return true;
}
