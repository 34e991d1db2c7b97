import { describe, expect, test, vi } from 'vitest';
import { createTenancy, type Channel, type Locks } from '#storage/tenancy';
import { settle } from './memory-store';

interface Held {
  readonly tab: string;
  readonly steal: () => void;
}

/** The locks and the messages of one browser, as its tabs share them; a tab that goes away lets its locks go. */
class Browser {
  readonly #held = new Map<string, Held>();
  readonly #ears = new Map<string, Set<(event: { readonly data: unknown }) => void>>();
  readonly frozen = new Set<string>();

  locks(tab: string): Locks {
    return {
      query: () => Promise.resolve({ held: [...this.#held.keys()].map((name) => ({ name })) }),
      request: async (name, { signal, ifAvailable, steal }, use) => {
        if (steal) this.#held.get(name)?.steal();
        while (this.#held.has(name)) {
          if (ifAvailable) return use(null);
          if (signal?.aborted) throw new DOMException('timed out', 'TimeoutError');
          await new Promise((resolve) => setTimeout(resolve, 2));
        }
        const stolen = new Promise<never>((_, reject) => {
          this.#held.set(name, {
            tab,
            steal: () => {
              this.#held.delete(name);
              reject(new DOMException('stolen', 'AbortError'));
            }
          });
        });
        await Promise.race([Promise.resolve(use({ name })), stolen]);
        this.#held.delete(name);
        return undefined;
      }
    };
  }

  channel(tab: string): Channel {
    const ears = new Set<(event: { readonly data: unknown }) => void>();
    this.#ears.set(tab, ears);
    return {
      addEventListener: (_type, listener) => void ears.add(listener),
      postMessage: (data) => {
        for (const [other, listeners] of this.#ears)
          if (other !== tab && !this.frozen.has(other)) for (const each of listeners) each({ data });
      }
    };
  }

  crash(tab: string) {
    this.#ears.delete(tab);
    for (const [name, { tab: owner }] of this.#held) if (owner === tab) this.#held.delete(name);
  }

  tab(name: string, { hasLocks = true, hasChannel = true } = {}) {
    const lost: string[] = [];
    const asked: string[] = [];
    const tenancy = createTenancy({
      locks: hasLocks ? this.locks(name) : null,
      channel: hasChannel ? this.channel(name) : null,
      onAsked: (slot) => {
        asked.push(slot);
        setTimeout(() => {
          tenancy.release(slot);
        }, 20);
      },
      onLost: (slot) => lost.push(slot)
    });
    return { tenancy, lost, asked };
  }
}

for (const hasLocks of [true, false]) {
  describe(hasLocks ? 'with locks' : 'without locks', () => {
    const options = { hasLocks };

    test('a slot belongs to one tab, and to another when it was let go', async () => {
      const browser = new Browser();
      const [first, second] = [browser.tab('1', options), browser.tab('2', options)];
      expect(await first.tenancy.hold('a')).toBe(true);
      expect(await second.tenancy.hold('a')).toBe(false);
      expect(await second.tenancy.hold('b')).toBe(true);
      first.tenancy.release('a');
      await settle();
      expect(await second.tenancy.hold('a')).toBe(true);
    });

    test('a tab that is asked lets go when it is ready, and the other one has it then', async () => {
      const browser = new Browser();
      const [first, second] = [browser.tab('1', options), browser.tab('2', options)];
      await first.tenancy.hold('a');
      await second.tenancy.takeOver('a');
      expect(first.asked).toEqual(['a']);
      expect(await first.tenancy.hold('a')).toBe(false);
    });

    test('a crashed tab keeps nothing', async () => {
      const browser = new Browser();
      const [first, second] = [browser.tab('1', options), browser.tab('2', options)];
      await first.tenancy.hold('a');
      browser.crash('1');
      expect(await second.tenancy.hold('a')).toBe(true);
    });
  });
}

test('a frozen tab loses the slot after a patience, and hears of it', async () => {
  vi.spyOn(AbortSignal, 'timeout').mockImplementation(() => {
    const short = new AbortController();
    setTimeout(() => {
      short.abort();
    }, 30);
    return short.signal;
  });
  const browser = new Browser();
  const [first, second] = [browser.tab('1'), browser.tab('2')];
  await first.tenancy.hold('a');
  browser.frozen.add('1');
  await second.tenancy.takeOver('a');
  await settle();
  expect(first.lost).toEqual(['a']);
  expect(first.asked).toEqual([]);
  // The wait that ended without an answer was no loss.
  expect(second.lost).toEqual([]);
  expect(await first.tenancy.hold('a')).toBe(false);
  vi.restoreAllMocks();
});

test('a page that reloads waits for the one before it, but not for one that lives', async () => {
  const browser = new Browser();
  const before = browser.tab('before');
  await before.tenancy.hold('a');
  const started = Date.now();
  // A duplicated tab: the first one answers.
  expect(await browser.tab('duplicate').tenancy.hold('a', true)).toBe(false);
  expect(Date.now() - started).toBeLessThan(2000);
  // A reload: the page before it says nothing any more and is gone a moment later.
  browser.frozen.add('before');
  setTimeout(() => {
    browser.crash('before');
  }, 50);
  expect(await browser.tab('after').tenancy.hold('a', true)).toBe(true);
});

test('what is open anywhere can be told', async () => {
  const browser = new Browser();
  const [first, second] = [browser.tab('1'), browser.tab('2')];
  await first.tenancy.hold('a');
  await second.tenancy.hold('b');
  expect([...(await first.tenancy.openSlots())].sort()).toEqual(['a', 'b']);
});

test('locks that are refused leave the slot to others, and no error', async () => {
  const locks: Locks = {
    request: () => Promise.reject(new DOMException('no', 'SecurityError')),
    query: () => Promise.reject(new DOMException('no', 'SecurityError'))
  };
  const tenancy = createTenancy({ locks, channel: null, onAsked: () => {}, onLost: () => {} });
  expect(await tenancy.hold('a')).toBe(false);
  expect((await tenancy.openSlots()).size).toBe(0);
});
