/** The database's tables, and how older ones become them. */
import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import { isStateMark, markOf, newestFirst, type KeptState } from './states';

export interface Tables extends DBSchema {
  states: { key: [string, number]; value: object };
  texts: { key: [string, number]; value: unknown };
  sites: { key: string; value: object };
  aside: { key: string; value: object };
}

export const NAME = 'kerfline';
export const VERSION = 2;

type Upgrade = IDBPTransaction<Tables, StoreNames<Tables>[], 'versionchange'>;

const withText = (found: unknown): KeptState | null => {
  const { text, ...rest } = found as KeptState;
  if (typeof text !== 'string') return null;
  return isStateMark({ ...rest, size: text.length }) ? { ...rest, text } : null;
};

/**
 * Once a slot was a tab, and held one site after another. Each becomes a site of its own, told by its name: one that was
 * renamed then stands in the list twice, but nothing is thinned out as an older state of something else.
 */
async function splitTabs(upgrade: Upgrade): Promise<void> {
  const states = upgrade.objectStore('states');
  const texts = upgrade.objectStore('texts');
  const found = (await states.getAll()).flatMap((each) => withText(each) ?? []);
  const newest = new Map<string, string>();
  const byAge = found.map((state) => ({ state, mark: markOf(state) }));
  for (const { mark } of byAge.sort((a, b) => newestFirst(a.mark, b.mark)))
    if (!newest.has(mark.slot)) newest.set(mark.slot, mark.name);
  for (const { state, mark } of byAge) {
    const isOther = newest.get(mark.slot) !== mark.name;
    const slot = isOther ? `${mark.slot} ${mark.name}` : mark.slot;
    if (isOther) await states.delete([mark.slot, mark.begun]);
    await states.put({ ...mark, slot });
    await texts.put(state.text, [slot, mark.begun]);
  }
}

export async function makeTables(
  database: IDBPDatabase<Tables>,
  from: number,
  upgrade: Upgrade
): Promise<void> {
  if (from < 1) {
    database.createObjectStore('states', { keyPath: ['slot', 'begun'] });
    database.createObjectStore('aside', { keyPath: 'key' });
  }
  if (from < 2) {
    database.createObjectStore('texts');
    database.createObjectStore('sites', { keyPath: 'slot' });
    if (from === 1) await splitTabs(upgrade);
  }
}
