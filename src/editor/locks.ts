/** What a hand may change: what is locked stays, and a site that another tab has stays whole. */
import { t } from '#i18n/message';
import { isLocked } from '#plan/layers';
import type { Site } from '#plan/schema';
import type { Scene } from './scene';
import type { Editor, Ref } from './types';

/** The same list if nothing in it is locked. */
export function unlockedOf(site: Site, refs: readonly Ref[]): readonly Ref[] {
  const free = refs.filter((ref) => !isLocked(site, ref));
  return free.length === refs.length ? refs : free;
}

/** Why none of these things can be changed, in words; null if one of them can. */
export function whyStill({ site, isReadOnly }: Scene, refs: readonly Ref[]): string | null {
  if (isReadOnly) return t('entry.readOnly');
  return refs.length > 0 && unlockedOf(site, refs).length === 0 ? t('entry.locked') : null;
}

/**
 * What of the selection a command may change. What stays is spoken of; with nothing left the command has nothing to do,
 * and the text says so.
 */
export function takeUnlocked(editor: Editor): readonly Ref[] {
  const { site, selection } = editor.state;
  const free = unlockedOf(site, selection);
  if (free.length === selection.length) return free;
  editor.say(
    free.length === 0 ? t('notice.locked') : t('notice.lockedKept', { count: selection.length - free.length })
  );
  return free;
}
