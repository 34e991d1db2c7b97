import { changesLocked } from '#editor/locks';
import { withinSentence } from '#i18n/locale';
import { keysOf, t } from '#i18n/message';
import { saying, type Saying } from '#i18n/saying';
import type { Site } from '#plan/schema';
import type { Bench } from '../bench';

/** What an entry is about, for the name of its undo step: "change turns of Stop line left". */
export interface About {
  readonly field: string;
  readonly subject: string;
}

/** "Lead-in length" inside a sentence; symbols, short codes and German nouns keep their capitals. */
const inSentence = (label: string): string =>
  /^\p{Lu}(?!\p{Lu})/u.test(label) ? withinSentence(label.charAt(0)) + label.slice(1) : label;

/** A field's label is a message of its own; one with something filled in stays as it was said. */
function fieldInSentence(label: string): Saying {
  const [key] = keysOf(label);
  return () => inSentence(key === undefined ? label : t(key));
}

/** What the undo step of a change is called. */
export const changeOf = ({ field, subject }: About): Saying =>
  saying('step.change', { field: fieldInSentence(field), subject });

/**
 * Makes one undo step of a field's new value; arrow keys in a row on the same field stay one step. False when the
 * document may not hold the value: then nothing has changed.
 */
export function commitField(bench: Bench, about: About, edit: (site: Site) => Site, isStep = false): boolean {
  const before = bench.state.site;
  const site = edit(before);
  if (site === before) return false;
  if (changesLocked(before, site)) {
    bench.editor.say(t('notice.locked'));
    return false;
  }
  const label = changeOf(about);
  bench.editor.commit({ label, site, ...(isStep ? { merge: label() } : {}) });
  return true;
}
