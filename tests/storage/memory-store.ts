import type { KeptState, SetAside, StateStore } from '#storage/states';

/** A store in memory that can be told to fail, and that holds damaged records as a browser might give them back. */
export class MemoryStore implements StateStore {
  records: unknown[] = [];
  aside: SetAside[] = [];
  /** Thrown by every write while set. */
  writeError: Error | null = null;
  readError: Error | null = null;
  writes = 0;

  get states(): KeptState[] {
    return this.records as KeptState[];
  }

  put(state: KeptState): Promise<void> {
    return this.#write(() => {
      this.#take(state.slot, state.begun);
      this.records.push(state);
    });
  }

  list(): Promise<readonly unknown[]> {
    return this.readError === null ? Promise.resolve([...this.records]) : Promise.reject(this.readError);
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

  #take(slot: string, begun: number) {
    this.records = this.records.filter((found) => {
      const record = found as { slot?: unknown; begun?: unknown } | null;
      return record?.slot !== slot || record.begun !== begun;
    });
  }

  #write(change: () => void): Promise<void> {
    this.writes++;
    if (this.writeError !== null) return Promise.reject(this.writeError);
    change();
    return Promise.resolve();
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
