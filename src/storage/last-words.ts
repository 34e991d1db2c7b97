/**
 * What a page says when it goes away. A write that the store has not confirmed by then may never happen, so the newest
 * state is also left where writing is done at once; whoever opens the page next hands it to the store.
 */
import { refusalOf } from './refusal';
import { isStateMark, markOf, type KeptState, type StateStore, type Writer } from './states';

const PREFIX = 'kerfline last ';

/** As much of the browser's storage of texts as is needed; asking for it may throw where site data is blocked. */
export type LastWordsPlace = () => Pick<
  Storage,
  'length' | 'key' | 'getItem' | 'setItem' | 'removeItem'
> | null;

/** Too large or forbidden: then there is only what the store still manages to write. */
export function leaveLastWords(place: LastWordsPlace, state: KeptState, writer: Writer): void {
  try {
    const { slot, begun, savedAt, name, text } = state;
    place()?.setItem(PREFIX + slot, JSON.stringify({ slot, begun, savedAt, name, text, writer }));
  } catch {
    // see above
  }
}

const isWriter = (found: unknown): found is Writer => {
  const { owner, format } = (found ?? {}) as Partial<Record<keyof Writer, unknown>>;
  return typeof owner === 'string' && typeof format === 'number';
};

function read(text: string | null): { readonly state: KeptState; readonly writer: Writer } | null {
  try {
    const { writer, ...state } = JSON.parse(text ?? 'null') as KeptState & { readonly writer: unknown };
    if (typeof state.text !== 'string' || !isStateMark(markOf(state)) || !isWriter(writer)) return null;
    return { state, writer };
  } catch {
    return null;
  }
}

/** Where another tab has gone on since, the words are kept beside its work and never over it. */
async function hand(store: StateStore, state: KeptState, writer: Writer): Promise<void> {
  try {
    await store.put(state, writer);
  } catch (problem) {
    if (refusalOf(problem).kind !== 'taken') throw problem;
    await store.putBeside(state);
  }
}

/**
 * Brings what was left for any slot into the store, except where the store has as new a state of that slot. Never
 * rejects; what the store refuses stays where it is.
 */
export async function takeLastWords(place: LastWordsPlace, store: StateStore): Promise<void> {
  try {
    const storage = place();
    if (!storage) return;
    const keys = Array.from({ length: storage.length }, (_, at) => storage.key(at)).filter(
      (key) => key?.startsWith(PREFIX) === true
    );
    if (keys.length === 0) return;
    const kept = (await store.marks()).filter(isStateMark);
    const isNews = ({ slot, savedAt }: KeptState) =>
      !kept.some((mark) => mark.slot === slot && mark.savedAt >= savedAt);
    for (const key of keys) {
      try {
        const words = read(storage.getItem(key!));
        if (words && isNews(words.state)) await hand(store, words.state, words.writer);
        storage.removeItem(key!);
      } catch {
        // One that is refused, of a site that a newer release has, does not hold back the others.
      }
    }
  } catch {
    // The store will say so itself.
  }
}
