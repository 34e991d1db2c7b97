/**
 * The newest state of a slot that can be read.
 *
 * What cannot be read is moved aside under a dated key before anything is written to its slot, so that no autosave
 * ever replaces it, and is handed back for its owner to download.
 */
import { t } from '#i18n/message';
import { isStateMark, newestFirst, slotOf, type SetAside, type StateMark, type StateStore } from './states';
import { refusalOf, type Refusal } from './refusal';

export interface Recovery<Document> {
  readonly found: { readonly document: Document; readonly state: StateMark } | null;
  readonly aside: readonly SetAside[];
  /** Set when the store itself could not be read. */
  readonly refusal: Refusal | null;
}

/** Returns the document, or the reason in words why the text is none. */
export type ReadText<Document> = (
  text: string
) => { readonly document: Document } | { readonly reason: string };

type Read<Document> = ReturnType<ReadText<Document>>;

export function readSafely<Document>(read: ReadText<Document>, text: unknown): Read<Document> {
  if (typeof text !== 'string') return { reason: t('read.noText') };
  try {
    return read(text);
  } catch (problem) {
    return { reason: refusalOf(problem).detail };
  }
}

const asText = (found: unknown): string => {
  try {
    return JSON.stringify(found) ?? String(found);
  } catch {
    return String(found);
  }
};

interface Key {
  readonly slot: string;
  readonly begun: number;
}

/** A record whose own frame is damaged: it can be found again by whatever is left of its key. */
function keyOf(found: unknown): Key | null {
  const slot = slotOf(found);
  if (slot === null) return null;
  const { begun } = found as { begun?: unknown };
  return typeof begun === 'number' ? { slot, begun } : null;
}

/** `mayMove`: false where another tab has the slot, whose store is then only read. */
export async function recover<Document>(
  store: StateStore,
  slot: string,
  read: ReadText<Document>,
  now: () => number,
  mayMove = true
): Promise<Recovery<Document>> {
  const aside: SetAside[] = [];

  async function moveAside(text: unknown, rest: unknown, reason: string, key: Key) {
    if (!mayMove) return;
    const dated = `${new Date(now()).toISOString()} ${key.slot} ${key.begun}`;
    const kept = { key: dated, text: typeof text === 'string' ? text : asText(text ?? rest), reason };
    await store.setAside(kept, key.slot, key.begun);
    aside.push(kept);
  }

  try {
    const found = await store.marks();
    for (const each of found) {
      const key = keyOf(each);
      if (key?.slot === slot && !isStateMark(each))
        await moveAside(await store.text(slot, key.begun), each, t('read.incomplete'), key);
    }
    for (const mark of found.filter(isStateMark).sort(newestFirst)) {
      if (mark.slot !== slot) continue;
      const text = await store.text(slot, mark.begun);
      const result = readSafely(read, text);
      if ('document' in result)
        return { found: { document: result.document, state: mark }, aside, refusal: null };
      await moveAside(text, mark, result.reason, mark);
    }
    return { found: null, aside, refusal: null };
  } catch (problem) {
    return { found: null, aside, refusal: refusalOf(problem) };
  }
}
