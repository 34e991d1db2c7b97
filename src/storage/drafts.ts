/**
 * What somebody is filling in and has not handed to the document yet, kept where writing is done at once, so that a tab may
 * die at any moment. A draft is of one site's slot. Never throws.
 */
import { refusalOf, type RefusalKind } from './refusal';

const PREFIX = 'kerfline draft ';
/** Milliseconds: what nobody came back to in a quarter of a year is given up. */
const LONGEST = 90 * 24 * 3600 * 1000;

/** As much of the browser's storage of texts as is needed; asking for it may throw where site data is blocked. */
export type DraftPlace = () => Pick<Storage, 'length' | 'key' | 'getItem' | 'setItem' | 'removeItem'> | null;

export interface DraftStore {
  /** Undefined where there is none that can be read. */
  read(slot: string, name: string): unknown;
  /** Why it is not kept; null when it is. */
  keep(slot: string, name: string, draft: unknown): RefusalKind | null;
  drop(slot: string, name: string): void;
}

interface Kept {
  readonly at: number;
  readonly draft: unknown;
}

function parsed(text: string | null): Kept | null {
  try {
    const found = JSON.parse(text ?? 'null') as Partial<Kept> | null;
    return typeof found?.at === 'number' ? { at: found.at, draft: found.draft } : null;
  } catch {
    return null;
  }
}

/** `now`: milliseconds since 1970. */
export function createDraftStore(place: DraftPlace, now: () => number): DraftStore {
  const keyOf = (slot: string, name: string): string => `${PREFIX}${name} ${slot}`;

  function clear(): void {
    const storage = place();
    if (!storage) return;
    const keys = Array.from({ length: storage.length }, (_, at) => storage.key(at));
    for (const key of keys) {
      if (key?.startsWith(PREFIX) !== true) continue;
      const kept = parsed(storage.getItem(key));
      if (!kept || now() - kept.at > LONGEST) storage.removeItem(key);
    }
  }

  try {
    clear();
  } catch {
    // blocked: then there is nothing to clear either
  }

  return {
    read(slot, name) {
      try {
        return parsed(place()?.getItem(keyOf(slot, name)) ?? null)?.draft;
      } catch {
        return undefined;
      }
    },
    keep(slot, name, draft) {
      try {
        const storage = place();
        if (!storage) return 'forbidden';
        storage.setItem(keyOf(slot, name), JSON.stringify({ at: now(), draft } satisfies Kept));
        return null;
      } catch (problem) {
        return refusalOf(problem).kind;
      }
    },
    drop(slot, name) {
      try {
        place()?.removeItem(keyOf(slot, name));
      } catch {
        // blocked: nothing was kept
      }
    }
  };
}
