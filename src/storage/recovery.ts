/**
 * The newest state of a slot that can be read.
 *
 * What cannot be read is moved aside under a dated key before anything is written to its slot, so that no autosave
 * ever replaces it, and is handed back for its owner to download.
 */
import { isKeptState, keptStates, type KeptState, type SetAside, type StateStore } from './states';
import { refusalOf, type Refusal } from './refusal';

export interface Recovery<Document> {
  readonly found: { readonly document: Document; readonly state: KeptState } | null;
  readonly aside: readonly SetAside[];
  /** Set when the store itself could not be read. */
  readonly refusal: Refusal | null;
}

/** Returns the document, or the reason in words why the text is none. */
export type ReadText<Document> = (
  text: string
) => { readonly document: Document } | { readonly reason: string };

function readSafely<Document>(
  read: ReadText<Document>,
  text: string
): { readonly document: Document } | { readonly reason: string } {
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

/** A record whose own frame is damaged: it can be found again by whatever is left of its key. */
function keyOf(found: unknown): { slot: string; begun: number } | null {
  if (typeof found !== 'object' || found === null) return null;
  const { slot, begun } = found as { slot?: unknown; begun?: unknown };
  return typeof slot === 'string' && typeof begun === 'number' ? { slot, begun } : null;
}

export async function recover<Document>(
  store: StateStore,
  slot: string,
  read: ReadText<Document>,
  now: () => number
): Promise<Recovery<Document>> {
  const aside: SetAside[] = [];

  async function moveAside(text: string, reason: string, key: { slot: string; begun: number }) {
    const dated = `${new Date(now()).toISOString()} ${key.slot} ${key.begun}`;
    const kept = { key: dated, text, reason };
    await store.setAside(kept, key.slot, key.begun);
    aside.push(kept);
  }

  try {
    for (const found of await store.list()) {
      const key = keyOf(found);
      if (key?.slot === slot && !isKeptState(found)) await moveAside(asText(found), 'incomplete record', key);
    }
    for (const state of await keptStates(store)) {
      if (state.slot !== slot) continue;
      const result = readSafely(read, state.text);
      if ('document' in result) {
        return { found: { document: result.document, state }, aside, refusal: null };
      }
      await moveAside(state.text, result.reason, state);
    }
    return { found: null, aside, refusal: null };
  } catch (problem) {
    return { found: null, aside, refusal: refusalOf(problem) };
  }
}
