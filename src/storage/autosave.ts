/**
 * Keeps the open site in a slot, at most `DELAY` after any change.
 *
 * A state is written over while it is younger than `STATE_AGE`, then a new one is begun, so that the last `STATES_KEPT`
 * of them reach back minutes, not seconds. The document itself is never lost by a failure here: it stays in memory,
 * the failure is reported, and the write is tried again.
 */
import { isKeptState, newestFirst, type StateStore } from './states';
import { refusalOf, type Refusal } from './refusal';

/** Seconds. */
const DELAY = 0.6;
const RETRY_DELAY = 10;
const STATE_AGE = 120;
export const STATES_KEPT = 10;

export type SaveState =
  { readonly kind: 'saved' } | { readonly kind: 'saving' } | { readonly kind: 'not saved'; readonly why: Refusal };

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
  /** The next change begins a new state: what was kept before stays as it is. */
  beginState(): void;
  close(): void;
}

export function createAutosave<Document extends object>(
  options: AutosaveOptions<Document>
): Autosave<Document> {
  const { store, slot, onState } = options;
  let waiting: Document | null = null;
  let begun: number | null = null;
  let lastBegun = 0;
  let reported: SaveState['kind'] | null = null;
  let cancelTimer: (() => void) | null = null;
  let writing: Promise<void> | null = null;

  function schedule(delay: number) {
    cancelTimer ??= options.after(delay, () => {
      cancelTimer = null;
      void flush();
    });
  }

  function stateToWrite(): number {
    const now = options.now();
    // Never the same moment twice: that would write over the state before.
    if (begun === null || now - begun > STATE_AGE * 1000) begun = lastBegun = Math.max(now, lastBegun + 1);
    return begun;
  }

  function report(state: SaveState) {
    // A failure stays on the screen until something was saved.
    if (state.kind === 'saving' && (reported === 'saving' || reported === 'not saved')) return;
    reported = state.kind;
    onState(state);
  }

  function stopTimer() {
    cancelTimer?.();
    cancelTimer = null;
  }

  async function trim() {
    const states = (await store.list()).filter(isKeptState).filter((state) => state.slot === slot);
    for (const old of states.sort(newestFirst).slice(STATES_KEPT)) await store.remove(slot, old.begun);
  }

  async function write(document: Document) {
    try {
      const state = stateToWrite();
      await store.put({ slot, begun: state, savedAt: options.now(), ...options.describe(document) });
    } catch (problem) {
      waiting ??= document;
      report({ kind: 'not saved', why: refusalOf(problem) });
      schedule(RETRY_DELAY);
      return;
    }
    if (waiting === null || reported === 'not saved') report({ kind: 'saved' });
    if (waiting !== null) report({ kind: 'saving' });
    // The work is safe; a state too many is not worth a warning.
    await trim().catch(() => undefined);
  }

  async function flush(): Promise<void> {
    while (writing) await writing;
    const document = waiting;
    if (document === null) return;
    waiting = null;
    stopTimer();
    report({ kind: 'saving' });
    writing = write(document);
    await writing;
    writing = null;
  }

  return {
    changed(document) {
      waiting = document;
      report({ kind: 'saving' });
      if (reported === 'not saved') stopTimer();
      schedule(DELAY);
    },
    flush,
    beginState() {
      begun = null;
    },
    close: stopTimer
  };
}
