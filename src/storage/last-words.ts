/**
 * What a page says when it goes away. A write that the store has not confirmed by then may never happen, so the newest
 * state is also left where writing is done at once; whoever opens the page next hands it to the store.
 */
import { isKeptState, type KeptState, type StateStore } from './states';

const PREFIX = 'kerfline last ';

/** As much of the browser's storage of texts as is needed; asking for it may throw where site data is blocked. */
export type LastWordsPlace = () => Pick<
  Storage,
  'length' | 'key' | 'getItem' | 'setItem' | 'removeItem'
> | null;

/** Too large or forbidden: then there is only what the store still manages to write. */
export function leaveLastWords(place: LastWordsPlace, state: KeptState): void {
  try {
    place()?.setItem(PREFIX + state.slot, JSON.stringify(state));
  } catch {
    // see above
  }
}

const read = (text: string | null): KeptState | null => {
  try {
    const found: unknown = JSON.parse(text ?? 'null');
    return isKeptState(found) ? found : null;
  } catch {
    return null;
  }
};

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
    const kept = (await store.list()).filter(isKeptState);
    for (const key of keys) {
      const state = read(storage.getItem(key!));
      const isNews = (each: KeptState) =>
        !kept.some(({ slot, savedAt }) => slot === each.slot && savedAt >= each.savedAt);
      if (state && isNews(state)) await store.put(state);
      storage.removeItem(key!);
    }
  } catch {
    // The store will say so itself.
  }
}
