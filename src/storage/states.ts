/** What is kept in the browser: sites in slots, each with dated states. A slot is one site, whichever tab has it open. */
import type { FileHandle } from './files';

/** What a list needs to know of a state; its text is apart, as pictures make it large. */
export interface StateMark {
  readonly slot: string;
  /** When this state was begun, milliseconds since 1970; with the slot it names the state. */
  readonly begun: number;
  /** When it was last written, milliseconds since 1970. */
  readonly savedAt: number;
  readonly name: string;
  /** Characters of its text. */
  readonly size: number;
}

export interface KeptState extends Omit<StateMark, 'size'> {
  /** The site as its file would hold it. */
  readonly text: string;
  /** The same in pieces; long ones that did not change since the last state are the same strings. */
  readonly pieces?: readonly string[];
}

/** The file that a site was saved to or opened from last. */
export interface KeptFile {
  readonly name: string;
  /** Null where the browser gives none: then saving downloads again. */
  readonly handle: FileHandle | null;
  /** Of the text that the file was given. */
  readonly digest: string;
}

/** What belongs to a site and to none of its states. */
export interface SiteRecord {
  readonly slot: string;
  /** The tab that may write; null: nobody has claimed it yet. */
  readonly owner: string | null;
  /** The newest document version of the release that claimed it. */
  readonly format: number;
  /** Milliseconds since 1970; null unless it lies in the bin. */
  readonly deletedAt: number | null;
  readonly file: KeptFile | null;
  /** Since when there have been changes that are in no file, milliseconds since 1970. */
  readonly unfiledSince: number | null;
  /** The reminder about them was put away. */
  readonly isReminded: boolean;
}

/** Something that could not be read, kept under a dated key until its owner has looked at it. */
export interface SetAside {
  readonly key: string;
  readonly text: string;
  readonly reason: string;
}

/** Who writes: a tab, and what its release can read. */
export interface Writer {
  readonly owner: string;
  readonly format: number;
}

/**
 * Every method rejects when the browser refuses; each is done wholly or not at all. What a damaged store gives back need
 * not be what was put in, so that lists are unknown until they are looked at.
 */
export interface StateStore {
  /** Makes `writer` the only one who may write to the slot. Rejects with `NewerReleaseError`. */
  claim(slot: string, writer: Writer): Promise<void>;
  /** Rejects with `TakenOverError` when the slot belongs to somebody else, checked in the same transaction. */
  put(state: KeptState, writer: Writer): Promise<void>;
  /** Keeps work that lost its slot, as a state just older than the newest, so that nothing comes to lie under it. */
  putBeside(state: KeptState): Promise<void>;
  marks(): Promise<readonly unknown[]>;
  /** Undefined when there is none. */
  text(slot: string, begun: number): Promise<unknown>;
  remove(slot: string, begun: number): Promise<void>;
  /** Keeps `aside` and takes the state that it came from away. */
  setAside(aside: SetAside, slot: string, begun: number): Promise<void>;
  asides(): Promise<readonly unknown[]>;
  dropAside(key: string): Promise<void>;
  records(): Promise<readonly unknown[]>;
  /** Changes what is recorded of a site. Rejects with `TakenOverError` like `put` when there is a writer. */
  change(slot: string, writer: Writer | null, change: (record: SiteRecord) => SiteRecord): Promise<void>;
  /** A site with all its states, for good. */
  removeSite(slot: string): Promise<void>;
}

type Fields<T> = Partial<Record<keyof T, unknown>>;

export function isStateMark(found: unknown): found is StateMark {
  if (typeof found !== 'object' || found === null) return false;
  const { slot, begun, savedAt, name, size } = found as Fields<StateMark>;
  return (
    typeof slot === 'string' &&
    Number.isFinite(begun) &&
    Number.isFinite(savedAt) &&
    typeof name === 'string' &&
    Number.isFinite(size)
  );
}

export function isSetAside(found: unknown): found is SetAside {
  if (typeof found !== 'object' || found === null) return false;
  const { key, text, reason } = found as Fields<SetAside>;
  return typeof key === 'string' && typeof text === 'string' && typeof reason === 'string';
}

export const markOf = ({ slot, begun, savedAt, name, text }: KeptState): StateMark => ({
  slot,
  begun,
  savedAt,
  name,
  size: text.length
});

function fileOf(found: unknown): KeptFile | null {
  if (typeof found !== 'object' || found === null) return null;
  const { name, handle, digest } = found as Fields<KeptFile>;
  if (typeof name !== 'string' || typeof digest !== 'string') return null;
  const isHandle = typeof handle === 'object' && handle !== null && 'createWritable' in handle;
  return { name, digest, handle: isHandle ? (handle as FileHandle) : null };
}

const momentOf = (found: unknown): number | null =>
  typeof found === 'number' && Number.isFinite(found) ? found : null;

/** A record from whatever was stored; a field that does not fit is as if it had never been written. */
export function recordOf(slot: string, found: unknown): SiteRecord {
  const stored = (typeof found === 'object' && found !== null ? found : {}) as Fields<SiteRecord>;
  return {
    slot,
    owner: typeof stored.owner === 'string' ? stored.owner : null,
    format: momentOf(stored.format) ?? 0,
    deletedAt: momentOf(stored.deletedAt),
    file: fileOf(stored.file),
    unfiledSince: momentOf(stored.unfiledSince),
    isReminded: stored.isReminded === true
  };
}

export const slotOf = (found: unknown): string | null => {
  const slot = typeof found === 'object' && found !== null ? (found as { slot?: unknown }).slot : null;
  return typeof slot === 'string' ? slot : null;
};

export const newestFirst = (a: StateMark, b: StateMark): number => b.savedAt - a.savedAt || b.begun - a.begun;

/** The readable states of all sites that are not in the bin, newest first. */
export async function keptMarks(store: StateStore): Promise<readonly StateMark[]> {
  const [marks, records] = await Promise.all([store.marks(), store.records()]);
  const deleted = new Set(
    records.flatMap((found) => {
      const slot = slotOf(found);
      return slot !== null && recordOf(slot, found).deletedAt !== null ? [slot] : [];
    })
  );
  return marks
    .filter(isStateMark)
    .filter(({ slot }) => !deleted.has(slot))
    .sort(newestFirst);
}
