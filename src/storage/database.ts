/** The states in the browser's database. */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { KeptState, SetAside, StateStore } from './states';

interface Tables extends DBSchema {
  states: { key: [string, number]; value: KeptState };
  aside: { key: string; value: SetAside };
}

const NAME = 'kerfline';
const VERSION = 1;

/** Opens the database at its first use, and again after the browser has closed it. */
export function createDatabaseStore(): StateStore {
  let opening: Promise<IDBPDatabase<Tables>> | null = null;

  function database(): Promise<IDBPDatabase<Tables>> {
    opening ??= openDB<Tables>(NAME, VERSION, {
      upgrade(fresh) {
        fresh.createObjectStore('states', { keyPath: ['slot', 'begun'] });
        fresh.createObjectStore('aside', { keyPath: 'key' });
      },
      blocking(_current, _blocked, event) {
        // A newer release in another tab waits for this connection; the next use opens again or fails in words.
        (event.target as IDBDatabase).close();
        opening = null;
      },
      terminated() {
        opening = null;
      }
    }).catch((problem: unknown) => {
      opening = null;
      throw problem;
    });
    return opening;
  }

  return {
    async put(state) {
      const change = (await database()).transaction('states', 'readwrite');
      const written = change.store.put(state);
      // Committed at once and not when the page gets round to it: a page that is going away never does.
      change.commit();
      await Promise.all([written, change.done]);
    },
    async list() {
      return (await database()).getAll('states');
    },
    async remove(slot, begun) {
      await (await database()).delete('states', [slot, begun]);
    },
    async setAside(aside, slot, begun) {
      const change = (await database()).transaction(['states', 'aside'], 'readwrite');
      await Promise.all([
        change.objectStore('aside').put(aside),
        change.objectStore('states').delete([slot, begun]),
        change.done
      ]);
    }
  };
}
