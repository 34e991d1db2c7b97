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

/** A picture has a lock of its own kind: how strongly it shows may change while it lies fast. */
const LISTS = [
  ['lanes', 'lane'],
  ['marks', 'mark'],
  ['loops', 'loop'],
  ['steel', 'steel'],
  ['paths', 'path'],
  ['probes', 'probe']
] as const;

/** All that a lock keeps: a tail's length follows the drawing, whoever moved what it leads to. */
function keptByLock(thing: object): string {
  const free = { locked: undefined, hidden: undefined };
  const { tail } = thing as { readonly tail?: object };
  return JSON.stringify({ ...thing, ...free, tail: tail && { ...tail, length: undefined } });
}

/** Whether an edit would change something that is locked before and after it; deleting is no change. */
export function changesLocked(before: Site, after: Site): boolean {
  return LISTS.some(([list, kind]) => {
    if (before[list] === after[list]) return false;
    const was = new Map(
      before[list].map((thing, index) => ['id' in thing ? thing.id : String(index), thing])
    );
    return after[list].some((thing, index) => {
      const id = 'id' in thing ? thing.id : String(index);
      const old = was.get(id);
      if (old === undefined || old === thing) return false;
      const ref: Ref = { kind, id };
      return isLocked(before, ref) && isLocked(after, ref) && keptByLock(old) !== keptByLock(thing);
    });
  });
}
