/** Undo and redo by snapshots: sites are immutable and share what did not change, so a snapshot costs a pointer. */
import { told, type Words } from '#i18n/saying';
import type { Site } from '#plan/schema';
import type { Ref } from './types';

export interface Moment {
  readonly site: Site;
  readonly selection: readonly Ref[];
}

interface Entry {
  readonly label: Words;
  readonly before: Moment;
  readonly after: Moment;
  readonly merge: string | undefined;
}

export interface History {
  readonly past: readonly Entry[];
  readonly future: readonly Entry[];
}

export const DEPTH = 200;

export const NO_HISTORY: History = { past: [], future: [] };

/** Steps that merge and end where the first of them began are no step at all. */
export function recorded(history: History, entry: Entry): History {
  const last = history.past.at(-1);
  const continues =
    entry.merge !== undefined &&
    history.future.length === 0 &&
    last?.merge === entry.merge &&
    last.after.site === entry.before.site;
  const next = continues ? { ...entry, before: last.before } : entry;
  const kept = continues ? history.past.slice(0, -1) : history.past;
  if (next.before.site === next.after.site) return { past: kept, future: [] };
  return { past: [...kept, next].slice(-DEPTH), future: [] };
}

/** A step with the same merge key will not join what is on top now. */
export function sealed(history: History): History {
  const last = history.past.at(-1);
  if (last?.merge === undefined) return history;
  return { ...history, past: [...history.past.slice(0, -1), { ...last, merge: undefined }] };
}

export function undone(history: History): { history: History; moment: Moment } | null {
  const last = history.past.at(-1);
  if (last === undefined) return null;
  const past = history.past.slice(0, -1);
  return { history: { past, future: [...history.future, last] }, moment: last.before };
}

export function redone(history: History): { history: History; moment: Moment } | null {
  const next = history.future.at(-1);
  if (next === undefined) return null;
  return {
    history: { past: [...history.past, next], future: history.future.slice(0, -1) },
    moment: next.after
  };
}

const nameOf = (entry: Entry | undefined): string | null => (entry ? told(entry.label) : null);

/** In the language that is spoken now. */
export const undoLabel = (history: History): string | null => nameOf(history.past.at(-1));
export const redoLabel = (history: History): string | null => nameOf(history.future.at(-1));
/** Names of the steps that can be undone, the latest first. */
export const undoLabels = ({ past }: History): readonly string[] =>
  past.map(({ label }) => told(label)).reverse();
