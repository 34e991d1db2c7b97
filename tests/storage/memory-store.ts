import { NewerReleaseError, TakenOverError } from '#storage/refusal';
import {
  isStateMark,
  markOf,
  newestFirst,
  recordOf,
  type KeptState,
  type SetAside,
  type SiteRecord,
  type StateStore,
  type Writer
} from '#storage/states';

const key = (slot: string, begun: number) => `${slot} ${begun}`;

/** A store in memory that can be told to fail, and that holds damaged records as a browser might give them back. */
export class MemoryStore implements StateStore {
  found: unknown[] = [];
  readonly texts = new Map<string, unknown>();
  readonly sites = new Map<string, unknown>();
  aside: unknown[] = [];
  /** Thrown by every write while set. */
  writeError: Error | null = null;
  readError: Error | null = null;
  writes = 0;
  /** What every write waits for while set: a browser that is slow, or says nothing. */
  silence: Promise<void> | null = null;

  /** What is kept, with its texts. */
  get states(): KeptState[] {
    return this.found.filter(isStateMark).map(({ slot, begun, savedAt, name }) => ({
      slot,
      begun,
      savedAt,
      name,
      text: this.texts.get(key(slot, begun)) as string
    }));
  }

  /** Without regard to whose the slot is. */
  hold(state: KeptState): void {
    this.#take(state.slot, state.begun);
    this.found.push(markOf(state));
    this.texts.set(key(state.slot, state.begun), state.text);
  }

  record(slot: string): SiteRecord {
    return recordOf(slot, this.sites.get(slot));
  }

  claim(slot: string, writer: Writer): Promise<void> {
    return this.#write(() => {
      if (this.record(slot).format > writer.format) throw new NewerReleaseError('newer');
      this.sites.set(slot, { ...this.record(slot), ...writer });
    });
  }

  put(state: KeptState, writer: Writer): Promise<void> {
    return this.#write(() => {
      this.#mayWrite(state.slot, writer);
      this.hold(state);
      this.sites.set(state.slot, { ...this.record(state.slot), ...writer, deletedAt: null });
    });
  }

  putBeside(state: KeptState): Promise<void> {
    return this.#write(() => {
      const [newest] = this.found
        .filter(isStateMark)
        .filter(({ slot }) => slot === state.slot)
        .sort(newestFirst);
      const savedAt = newest ? Math.min(state.savedAt, newest.savedAt - 1) : state.savedAt;
      this.hold({ ...state, savedAt, begun: savedAt });
    });
  }

  marks(): Promise<readonly unknown[]> {
    return this.#read(() => [...this.found]);
  }

  text(slot: string, begun: number): Promise<unknown> {
    return this.#read(() => this.texts.get(key(slot, begun)));
  }

  remove(slot: string, begun: number): Promise<void> {
    return this.#write(() => {
      this.#take(slot, begun);
    });
  }

  setAside(aside: SetAside, slot: string, begun: number): Promise<void> {
    return this.#write(() => {
      this.aside.push(aside);
      this.#take(slot, begun);
    });
  }

  asides(): Promise<readonly unknown[]> {
    return this.#read(() => this.aside);
  }

  dropAside(dropped: string): Promise<void> {
    return this.#write(() => {
      this.aside = this.aside.filter((each) => (each as SetAside).key !== dropped);
    });
  }

  records(): Promise<readonly unknown[]> {
    return this.#read(() => [...this.sites.values()]);
  }

  change(slot: string, writer: Writer | null, change: (record: SiteRecord) => SiteRecord): Promise<void> {
    return this.#write(() => {
      if (writer) this.#mayWrite(slot, writer);
      this.sites.set(slot, change(this.record(slot)));
    });
  }

  removeSite(slot: string): Promise<void> {
    return this.#write(() => {
      for (const state of this.states) if (state.slot === slot) this.#take(slot, state.begun);
      this.sites.delete(slot);
    });
  }

  #mayWrite(slot: string, { owner, format }: Writer): void {
    const record = this.record(slot);
    if (record.format > format) throw new NewerReleaseError('newer');
    if (record.owner !== null && record.owner !== owner) throw new TakenOverError('taken');
  }

  #take(slot: string, begun: number) {
    this.texts.delete(key(slot, begun));
    this.found = this.found.filter((found) => {
      const record = found as { slot?: unknown; begun?: unknown } | null;
      return record?.slot !== slot || record.begun !== begun;
    });
  }

  #read<T>(look: () => T): Promise<T> {
    return this.readError === null ? Promise.resolve(look()) : Promise.reject(this.readError);
  }

  #write(change: () => void): Promise<void> {
    this.writes++;
    if (this.silence !== null) return this.silence.then(() => this.#done(change));
    return this.#done(change);
  }

  #done(change: () => void): Promise<void> {
    if (this.writeError !== null) return Promise.reject(this.writeError);
    try {
      change();
      return Promise.resolve();
    } catch (problem) {
      return Promise.reject(problem instanceof Error ? problem : new Error(String(problem)));
    }
  }
}

/** A clock and timers that a test moves by hand, seconds. */
export class HandClock {
  seconds = 1_000_000;
  #timers: { readonly at: number; readonly callback: () => void }[] = [];

  readonly now = () => this.seconds * 1000;

  readonly after = (delay: number, callback: () => void) => {
    const timer = { at: this.seconds + delay, callback };
    this.#timers.push(timer);
    return () => {
      this.#timers = this.#timers.filter((each) => each !== timer);
    };
  };

  async pass(seconds: number): Promise<void> {
    const end = this.seconds + seconds;
    for (;;) {
      const due = this.#timers.filter(({ at }) => at <= end).sort((a, b) => a.at - b.at)[0];
      if (!due) break;
      this.seconds = Math.max(this.seconds, due.at);
      this.#timers = this.#timers.filter((each) => each !== due);
      due.callback();
      await settle();
    }
    this.seconds = end;
    await settle();
  }
}

/** Lets everything run that waits on promises alone. */
export const settle = () => new Promise((resolve) => setImmediate(resolve));
