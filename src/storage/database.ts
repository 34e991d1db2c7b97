/** What is kept, in the browser's database. */
import { openDB, type IDBPDatabase, type IDBPTransaction } from 'idb';
import {
  isStateMark,
  markOf,
  newestFirst,
  recordOf,
  type KeptState,
  type StateStore,
  type Writer
} from './states';
import { NewerReleaseError, SilentError, TakenOverError } from './refusal';
import { storedText, textFrom } from './stored-text';
import { createPatience } from './patience';
import { makeTables, NAME, VERSION, type Tables } from './tables';

type Change = IDBPTransaction<Tables, ('states' | 'texts' | 'sites' | 'aside')[], 'readwrite'>;

const textToStore = ({ text, pieces }: KeptState): string | Blob => storedText(pieces ?? [text]);

/** Of one site: before its first state and after its last. */
const allOf = (slot: string) => IDBKeyRange.bound([slot], [slot, []]);

function mayWrite(slot: string, found: unknown, { owner, format }: Writer): void {
  const record = recordOf(slot, found);
  if (record.format > format) throw new NewerReleaseError('A newer release has this site.');
  if (record.owner !== null && record.owner !== owner) throw new TakenOverError('Another tab has this site.');
}

/** Milliseconds after which a database that says nothing is asked once more. */
const ASK_AGAIN = 10_000;

/** Opens the database at its first use, and again after the browser has closed it. */
export function createDatabaseStore(): StateStore {
  let opening: Promise<IDBPDatabase<Tables>> | null = null;
  /** When it was asked for last, milliseconds of the page's own clock. */
  let askedAt = 0;
  /** The last wait for it was in vain. */
  let isSilent = false;
  const patient = createPatience();
  /** Older tables are being made over, which takes as long as it takes. */
  let isMakingOver = false;

  function open(): Promise<IDBPDatabase<Tables>> {
    askedAt = performance.now();
    return openDB<Tables>(NAME, VERSION, {
      upgrade(fresh, from, _to, transaction) {
        isMakingOver = true;
        makeTables(fresh, from, transaction).catch(() => {
          // All of it or nothing: the older tables stay as they were, and the opening fails.
          transaction.abort();
        });
      },
      blocking(_current, _blocked, event) {
        // A newer release in another tab waits for this connection; the next use opens again or fails in words.
        (event.target as IDBDatabase).close();
        opening = null;
      },
      terminated() {
        opening = null;
      }
    })
      .catch((problem: unknown) => {
        opening = null;
        throw problem;
      })
      .finally(() => {
        isMakingOver = false;
      });
  }

  async function database(): Promise<IDBPDatabase<Tables>> {
    if (opening === null) opening = open();
    // What the browser has forgotten is never answered, what it is asked again may be: whichever comes first serves.
    else if (isSilent && performance.now() - askedAt > ASK_AGAIN) opening = Promise.race([opening, open()]);
    try {
      const opened = await patient(opening, () => isMakingOver);
      isSilent = false;
      return opened;
    } catch (problem) {
      isSilent = problem instanceof SilentError;
      throw problem;
    }
  }

  /** All of `work` or nothing: what it throws undoes what it has already asked for. */
  async function change(work: (tables: Change) => Promise<void>): Promise<void> {
    const change = (await database()).transaction(['states', 'texts', 'sites', 'aside'], 'readwrite');
    const done = change.done.then(
      () => null,
      (problem: unknown) => ({ problem })
    );
    try {
      await work(change);
      // Committed at once and not when the page gets round to it: a page that is going away never does.
      change.commit();
    } catch (problem) {
      try {
        change.abort();
      } catch {
        // It has ended by itself.
      }
      await done;
      throw problem;
    }
    const failure = await done;
    if (failure) throw failure.problem;
  }

  return {
    claim: (slot, { owner, format }) =>
      change(async (tables) => {
        const sites = tables.objectStore('sites');
        const record = recordOf(slot, await sites.get(slot));
        if (record.format > format) throw new NewerReleaseError('A newer release has this site.');
        await sites.put({ ...record, owner, format });
      }),
    put: (state, writer) =>
      change(async (tables) => {
        const sites = tables.objectStore('sites');
        const found = await sites.get(state.slot);
        mayWrite(state.slot, found, writer);
        const record = recordOf(state.slot, found);
        await Promise.all([
          tables.objectStore('states').put(markOf(state)),
          tables.objectStore('texts').put(textToStore(state), [state.slot, state.begun]),
          // Work that goes on is not in the bin.
          sites.put({ ...record, ...writer, deletedAt: null })
        ]);
      }),
    putBeside: (state) =>
      change(async (tables) => {
        const marks = (await tables.objectStore('states').getAll(allOf(state.slot))).filter(isStateMark);
        const [newest] = marks.sort(newestFirst);
        const savedAt = newest ? Math.min(state.savedAt, newest.savedAt - 1) : state.savedAt;
        let begun = savedAt;
        while (marks.some((mark) => mark.begun === begun)) begun--;
        await Promise.all([
          tables.objectStore('states').add(markOf({ ...state, begun, savedAt })),
          tables.objectStore('texts').put(textToStore(state), [state.slot, begun])
        ]);
      }),
    marks: async () => (await database()).getAll('states'),
    text: async (slot, begun) => textFrom(await (await database()).get('texts', [slot, begun])),
    remove: (slot, begun) =>
      change(async (tables) => {
        await Promise.all([
          tables.objectStore('states').delete([slot, begun]),
          tables.objectStore('texts').delete([slot, begun])
        ]);
      }),
    setAside: (aside, slot, begun) =>
      change(async (tables) => {
        await Promise.all([
          tables.objectStore('aside').put(aside),
          tables.objectStore('states').delete([slot, begun]),
          tables.objectStore('texts').delete([slot, begun])
        ]);
      }),
    asides: async () => (await database()).getAll('aside'),
    dropAside: async (key) => (await database()).delete('aside', key),
    records: async () => (await database()).getAll('sites'),
    change: (slot, writer, changed) =>
      change(async (tables) => {
        const sites = tables.objectStore('sites');
        const found = await sites.get(slot);
        if (writer) mayWrite(slot, found, writer);
        await sites.put(changed(recordOf(slot, found)));
      }),
    removeSite: (slot) =>
      change(async (tables) => {
        await Promise.all([
          tables.objectStore('states').delete(allOf(slot)),
          tables.objectStore('texts').delete(allOf(slot)),
          tables.objectStore('sites').delete(slot)
        ]);
      })
  };
}
