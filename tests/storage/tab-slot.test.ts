import { describe, expect, test } from 'vitest';
import { claimSlot, type Locks } from '#storage/tab-slot';

/** Locks of one browser, as its tabs share them; a tab that goes away lets its locks go. */
class SharedLocks {
  readonly #held = new Map<string, string>();

  of(tab: string): Locks {
    return {
      request: async (name, { signal }, held) => {
        while (this.#held.has(name)) {
          if (!signal) return held(null);
          if (signal.aborted) throw new DOMException('timed out', 'TimeoutError');
          await new Promise((resolve) => setTimeout(resolve, 5));
        }
        this.#held.set(name, tab);
        await held({ name });
      }
    };
  }

  close(tab: string) {
    for (const [name, owner] of this.#held) if (owner === tab) this.#held.delete(name);
  }
}

const names = () => {
  let count = 0;
  return () => `fresh ${++count}`;
};

describe('with locks', () => {
  test('the first tab opens the newest slot and writes to it', async () => {
    const locks = new SharedLocks();
    const claim = await claimSlot({ locks: locks.of('1'), remembered: null, newest: 's', fresh: names() });
    expect(claim).toEqual({ slot: 's', recoverFrom: 's' });
  });

  test('with nothing kept a tab takes a fresh slot', async () => {
    const locks = new SharedLocks();
    const claim = await claimSlot({ locks: locks.of('1'), remembered: null, newest: null, fresh: names() });
    expect(claim).toEqual({ slot: 'fresh 1', recoverFrom: null });
  });

  test('a second tab never writes to the slot of the first', async () => {
    const locks = new SharedLocks();
    const fresh = names();
    const first = await claimSlot({ locks: locks.of('1'), remembered: null, newest: 's', fresh });
    const second = await claimSlot({ locks: locks.of('2'), remembered: null, newest: 's', fresh });
    expect(second.slot).not.toBe(first.slot);
    expect(second.recoverFrom).toBeNull();
  });

  test('a duplicated tab goes on from the same site in a slot of its own', async () => {
    const locks = new SharedLocks();
    const fresh = names();
    await claimSlot({ locks: locks.of('1'), remembered: 's', newest: 's', fresh });
    const copy = await claimSlot({ locks: locks.of('2'), remembered: 's', newest: 's', fresh });
    expect(copy).toEqual({ slot: 'fresh 1', recoverFrom: 's' });
  });

  test('a reload gets its own slot back, even if the page before it lets go late', async () => {
    const locks = new SharedLocks();
    const fresh = names();
    await claimSlot({ locks: locks.of('before'), remembered: 's', newest: 't', fresh });
    setTimeout(() => {
      locks.close('before');
    }, 50);
    const after = await claimSlot({ locks: locks.of('after'), remembered: 's', newest: 't', fresh });
    expect(after).toEqual({ slot: 's', recoverFrom: 's' });
  });

  test('locks that are refused leave a slot of its own', async () => {
    const locks: Locks = { request: () => Promise.reject(new DOMException('no', 'SecurityError')) };
    const claim = await claimSlot({ locks, remembered: null, newest: 's', fresh: names() });
    expect(claim.slot).toBe('fresh 1');
  });
});

test('without locks every tab opens what was kept and writes elsewhere', async () => {
  const claim = await claimSlot({ locks: null, remembered: null, newest: 's', fresh: names() });
  expect(claim).toEqual({ slot: 'fresh 1', recoverFrom: 's' });
});
