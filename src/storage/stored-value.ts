/** A small value that outlives the tab, such as the theme. Never throws: without storage it lives for this visit only. */

export interface TextStorage {
  getItem(key: string): string | null;
  setItem(key: string, text: string): void;
}

export interface StoredValue<T> {
  get(): T;
  set(value: T): void;
}

/**
 * `storage` is called at each use, as merely asking for it throws where site data is blocked; `read` makes a value of
 * whatever was stored, undefined included.
 */
export function createStoredValue<T>(
  key: string,
  read: (found: unknown) => T,
  storage: () => TextStorage | null
): StoredValue<T> {
  let current: T | undefined;

  function load(): T {
    try {
      const text = storage()?.getItem(key) ?? null;
      return read(text === null ? undefined : JSON.parse(text));
    } catch {
      return read(undefined);
    }
  }

  return {
    get: () => (current ??= load()),
    set(value) {
      current = value;
      try {
        storage()?.setItem(key, JSON.stringify(value));
      } catch {
        // Full or forbidden: the value holds for this visit.
      }
    }
  };
}
