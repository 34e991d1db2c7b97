/** One value for several things at once: all that can take it do, and the rest is counted. */
import { changesLocked, unlockedOf } from '#editor/locks';
import type { Ref } from '#editor/types';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Bench } from '../bench';
import { commitField, type About } from './commit';

export interface SeveralChange<Value> {
  readonly refs: readonly Ref[];
  readonly value: Value;
  readonly valueOf: (site: Site, ref: Ref) => Value;
  readonly edit: (site: Site, ref: Ref) => Site;
  /** False for what can be set of a locked thing too, such as how a picture is seen. */
  readonly isKeptByLock?: boolean;
}

/** What came of it: the site, and how many things do not have the value now. */
export function changedSeveral<Value>(
  site: Site,
  { refs, value, valueOf, edit, isKeptByLock = true }: SeveralChange<Value>
): { readonly site: Site; readonly without: number } {
  const open = isKeptByLock ? unlockedOf(site, refs) : refs;
  const next = open.reduce<Site>((result, ref) => {
    const changed = edit(result, ref);
    return changesLocked(result, changed) ? result : changed;
  }, site);
  return { site: next, without: refs.filter((ref) => !Object.is(valueOf(next, ref), value)).length };
}

/** Returns why the value cannot be taken if nothing took it; says so if only some did. */
export function changeSeveral<Value>(
  bench: Bench,
  about: About,
  change: SeveralChange<Value>,
  isStep = false
): string | undefined {
  const { without } = changedSeveral(bench.state.site, change);
  const taken = commitField(bench, about, (site) => changedSeveral(site, change).site, isStep);
  const all = change.refs.length;
  if (!taken) return without === 0 ? undefined : t('field.impossible');
  if (without > 0) bench.editor.say(t('notice.notAll', { count: without, all }));
  return undefined;
}
