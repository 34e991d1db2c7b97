/** What autosave keeps: dated states of a site, in slots. A slot belongs to one tab at a time. */

export interface KeptState {
  readonly slot: string;
  /** When this state was begun, milliseconds since 1970; with the slot it names the state. */
  readonly begun: number;
  /** When it was last written, milliseconds since 1970. */
  readonly savedAt: number;
  readonly name: string;
  /** The site as its file would hold it. */
  readonly text: string;
}

/** Something that could not be read, kept under a dated key until its owner has looked at it. */
export interface SetAside {
  readonly key: string;
  readonly text: string;
  readonly reason: string;
}

/** Every method rejects when the browser refuses; nothing is ever half written. */
export interface StateStore {
  put(state: KeptState): Promise<void>;
  /** Everything kept, as found: what a damaged store gives back need not be a `KeptState`. */
  list(): Promise<readonly unknown[]>;
  remove(slot: string, begun: number): Promise<void>;
  /** Keeps `aside` and takes the state it came from away, both or neither. */
  setAside(aside: SetAside, slot: string, begun: number): Promise<void>;
}

export function isKeptState(found: unknown): found is KeptState {
  if (typeof found !== 'object' || found === null) return false;
  const { slot, begun, savedAt, name, text } = found as Partial<Record<keyof KeptState, unknown>>;
  return (
    typeof slot === 'string' &&
    typeof begun === 'number' &&
    typeof savedAt === 'number' &&
    typeof name === 'string' &&
    typeof text === 'string'
  );
}

export const newestFirst = (a: KeptState, b: KeptState): number => b.savedAt - a.savedAt || b.begun - a.begun;

/** The readable states, newest first. */
export async function keptStates(store: StateStore): Promise<readonly KeptState[]> {
  return (await store.list()).filter(isKeptState).sort(newestFirst);
}
