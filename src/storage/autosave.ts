/**
 * Keeps the open site in a slot, at most `DELAY` after any change.
 *
 * A state is written over while it is younger than `STATE_AGE`, then a new one is begun, so that the last `STATES_KEPT`
 * of them reach back minutes, not seconds. The document itself is never lost by a failure here: it stays in memory,
 * the failure is reported, and the write is tried again.
 */
import { isKeptState, newestFirst, type KeptState, type StateStore } from './states';
import { refusalOf, type Refusal } from './refusal';

/** Seconds. */
const DELAY = 0.6;
const RETRY_DELAY = 10;
const STATE_AGE = 120;
export const STATES_KEPT = 10;

export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'not saved'; readonly why: Refusal };

export interface AutosaveOptions<Document> {
  readonly store: StateStore;
  readonly slot: string;
  readonly describe: (document: Document) => { readonly name: string; readonly text: string };
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Calls back after `delay` seconds; the result cancels. */
  readonly after: (delay: number, callback: () => void) => () => void;
  readonly onState: (state: SaveState) => void;
}

export interface Autosave<Document> {
  changed(document: Document): void;
  /** Writes what waits, now. Never rejects: what went wrong is reported as the state. */
  flush(): Promise<void>;
  /** The newest state that may not have reached the store yet; null if all of it has. */
  unsaved(): KeptState | null;
  /** The next change begins a new state: what was kept before stays as it is. */
  beginState(): void;
  close(): void;
}

/** One row of the store; a document that waits knows the row it belongs to. */
interface Row {
  begun: number | null;
}

interface Waiting<Document> {
  readonly document: Document;
  readonly row: Row;
}

export function createAutosave<Document extends object>(
  options: AutosaveOptions<Document>
): Autosave<Document> {
  const { store, slot, onState } = options;
  let waiting: readonly Waiting<Document>[] = [];
  let row: Row = { begun: null };
  let lastBegun = 0;
  let reported: SaveState['kind'] | null = null;
  let cancelTimer: (() => void) | null = null;
  let writing: Promise<void> | null = null;
  let inWriting: readonly Waiting<Document>[] = [];

  function schedule(delay: number) {
    cancelTimer ??= options.after(delay, () => {
      cancelTimer = null;
      void flush();
    });
  }

  function stopTimer() {
    cancelTimer?.();
    cancelTimer = null;
  }

  function report(state: SaveState) {
    // A failure stays on the screen until something was saved.
    if (state.kind === 'saving' && (reported === 'saving' || reported === 'not saved')) return;
    reported = state.kind;
    onState(state);
  }

  function begunOf(target: Row): number {
    const now = options.now();
    // Never the same moment twice: that would write over the state before.
    if (target.begun === null || now - target.begun > STATE_AGE * 1000) {
      target.begun = lastBegun = Math.max(now, lastBegun + 1);
    }
    return target.begun;
  }

  const stateOf = (document: Document, target: Row): KeptState => ({
    slot,
    begun: begunOf(target),
    savedAt: options.now(),
    ...options.describe(document)
  });

  async function trim() {
    const states = (await store.list()).filter(isKeptState).filter((state) => state.slot === slot);
    for (const old of states.sort(newestFirst).slice(STATES_KEPT)) await store.remove(slot, old.begun);
  }

  /** A document of the same row that came in meanwhile is newer. */
  function putBack(unsaved: readonly Waiting<Document>[]) {
    waiting = [...unsaved.filter((old) => !waiting.some((each) => each.row === old.row)), ...waiting];
  }

  async function write(documents: readonly Waiting<Document>[]) {
    for (const [at, { document, row: target }] of documents.entries()) {
      try {
        await store.put(stateOf(document, target));
      } catch (problem) {
        putBack(documents.slice(at));
        report({ kind: 'not saved', why: refusalOf(problem) });
        schedule(RETRY_DELAY);
        return;
      }
    }
    if (waiting.length === 0 || reported === 'not saved') report({ kind: 'saved' });
    if (waiting.length > 0) report({ kind: 'saving' });
    // The work is safe; a state too many is not worth a warning.
    await trim().catch(() => undefined);
  }

  async function flush(): Promise<void> {
    while (writing) await writing;
    if (waiting.length === 0) return;
    const documents = waiting;
    waiting = [];
    stopTimer();
    report({ kind: 'saving' });
    inWriting = documents;
    writing = write(documents);
    await writing;
    writing = null;
    inWriting = [];
  }

  return {
    changed(document) {
      waiting = [...waiting.filter((each) => each.row !== row), { document, row }];
      report({ kind: 'saving' });
      if (reported === 'not saved') stopTimer();
      schedule(DELAY);
    },
    flush,
    unsaved() {
      const newest = waiting.at(-1) ?? inWriting.at(-1);
      return newest ? stateOf(newest.document, newest.row) : null;
    },
    beginState() {
      row = { begun: null };
    },
    close: stopTimer
  };
}
