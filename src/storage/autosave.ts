/**
 * Keeps the open site in its slot, at most `DELAY` after any change.
 *
 * A state is written over while it is younger than `STATE_AGE`, then a new one is begun; `thinning.ts` says which of them
 * stay. The document itself is never lost by a failure here: it stays in memory, the failure is reported, and the write
 * is tried again, unless the slot now belongs to another tab or a newer release.
 */
import { isStateMark, newestFirst, type KeptState, type StateStore, type Writer } from './states';
import { isFinal, refusalOf, type Refusal } from './refusal';
import { statesToDrop } from './thinning';

/** Seconds. */
const DELAY = 0.6;
const RETRY_DELAY = 10;
/** A write that the store has not confirmed by then is said not to be kept, until it is. */
const PATIENCE = 15;
const STATE_AGE = 60;
export const STATES_KEPT = 10;

export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'not saved'; readonly why: Refusal };

export interface AutosaveOptions<Document> {
  readonly store: StateStore;
  readonly writer: Writer;
  readonly slot: string;
  /** When the newest state of the slot was saved, milliseconds since 1970; null when there is none. */
  readonly newest: number | null;
  readonly describe: (document: Document) => Pick<KeptState, 'name' | 'text' | 'pieces'>;
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
  /** The newest state of each site that may not have reached the store yet. */
  unsaved(): readonly KeptState[];
  /** The next change begins a new state: what was kept before stays as it is. */
  beginState(): void;
  /** The next change is one of what is opened now; `newest` as in the options. */
  beginSite(slot: string, newest: number | null): void;
  /** Nothing that waits will be written: the slot is another tab's. */
  drop(): void;
  close(): void;
}

/** One row of the store; a document that waits knows the row it belongs to. */
interface Row {
  readonly slot: string;
  begun: number | null;
  /** When it was begun by this tab's clock, milliseconds since 1970. */
  since: number;
  /** Its site was closed here, or taken away, before all of it was written. */
  isLeft: boolean;
}

const rowIn = (slot: string): Row => ({ slot, begun: null, since: 0, isLeft: false });

interface Waiting<Document> {
  readonly document: Document;
  readonly row: Row;
}

export function createAutosave<Document extends object>(
  options: AutosaveOptions<Document>
): Autosave<Document> {
  const { store, writer, onState } = options;
  let waiting: readonly Waiting<Document>[] = [];
  let row = rowIn(options.slot);
  let lastBegun = 0;
  /** By slot, when its newest state was saved: no later one counts as older, though a clock be set back. */
  const lastSaved = new Map<string, number>();
  know(options.slot, options.newest);
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

  function know(slot: string, newest: number | null) {
    if (newest !== null) lastSaved.set(slot, Math.max(newest, lastSaved.get(slot) ?? newest));
  }

  function begunOf(target: Row): number {
    const now = options.now();
    const age = now - target.since;
    if (target.begun === null || age > STATE_AGE * 1000 || age < 0) {
      // Never the same moment twice: that would write over the state before.
      target.begun = lastBegun = Math.max(now, lastBegun + 1);
      target.since = now;
    }
    return target.begun;
  }

  function stateOf(document: Document, target: Row): KeptState {
    const { slot } = target;
    const savedAt = Math.max(options.now(), (lastSaved.get(slot) ?? 0) + 1);
    lastSaved.set(slot, savedAt);
    return { slot, begun: begunOf(target), savedAt, ...options.describe(document) };
  }

  async function trim(slot: string) {
    const marks = (await store.marks()).filter(isStateMark).filter((mark) => mark.slot === slot);
    const ordered = marks.sort(newestFirst);
    const moments = ordered.map(({ savedAt }) => savedAt / 1000);
    for (const at of statesToDrop(moments, STATES_KEPT, options.now() / 1000))
      await store.remove(slot, ordered[at]!.begun);
  }

  /** A document of the same row that came in meanwhile is newer. */
  function putBack(unsaved: readonly Waiting<Document>[]) {
    waiting = [...unsaved.filter((old) => !waiting.some((each) => each.row === old.row)), ...waiting];
  }

  /** Work on a site that was left before it was written is kept beside what has been made of the site since. */
  async function put(state: KeptState, target: Row) {
    if (target.isLeft && target.slot === row.slot) return store.putBeside(state);
    try {
      await store.put(state, writer);
    } catch (problem) {
      if (!target.isLeft || refusalOf(problem).kind !== 'taken') throw problem;
      await store.putBeside(state);
    }
  }

  async function write(documents: readonly Waiting<Document>[]) {
    for (const [at, { document, row: target }] of documents.entries()) {
      try {
        await put(stateOf(document, target), target);
      } catch (problem) {
        const why = refusalOf(problem);
        putBack(documents.slice(at));
        report({ kind: 'not saved', why });
        if (!isFinal(why)) schedule(RETRY_DELAY);
        return;
      }
    }
    if (waiting.length === 0 || reported === 'not saved') report({ kind: 'saved' });
    if (waiting.length > 0) report({ kind: 'saving' });
    // The work is safe; a state too many is not worth a warning.
    for (const slot of new Set(documents.map((each) => each.row.slot)))
      await trim(slot).catch(() => undefined);
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
    const stopWaiting = options.after(PATIENCE, () => {
      report({ kind: 'not saved', why: { kind: 'silent', detail: '' } });
    });
    await writing;
    stopWaiting();
    writing = null;
    inWriting = [];
  }

  /** What is written or waits belongs to an earlier visit to its site from now on. */
  function leave() {
    for (const each of [...inWriting, ...waiting]) each.row.isLeft = true;
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
      const newest = new Map([...inWriting, ...waiting].map((each) => [each.row.slot, each]));
      return [...newest.values()].map(({ document, row: target }) => stateOf(document, target));
    },
    beginState() {
      row = rowIn(row.slot);
    },
    beginSite(slot, newest) {
      leave();
      know(slot, newest);
      row = rowIn(slot);
    },
    drop() {
      stopTimer();
      leave();
      waiting = waiting.filter((each) => each.row.slot !== row.slot);
      reported = null;
      onState({ kind: 'saved' });
    },
    close: stopTimer
  };
}
