import { beforeEach, describe, expect, test } from 'vitest';
import { recover, type ReadText } from '#storage/recovery';
import { MemoryStore } from './memory-store';

const NOW = Date.UTC(2031, 4, 6, 14, 32);

let store: MemoryStore;

const read: ReadText<string> = (text) =>
  text.startsWith('good') ? { document: text } : { reason: `not a site: ${text.slice(0, 20)}` };

function put(slot: string, begun: number, text: string) {
  store.hold({ slot, begun, savedAt: begun, name: 'Site', text });
}

const run = (slot = 'a', reader = read) => recover(store, slot, reader, () => NOW);

beforeEach(() => {
  store = new MemoryStore();
});

describe('the newest readable state', () => {
  test('is found, of the right slot only', async () => {
    put('a', 10, 'good old');
    put('a', 20, 'good new');
    put('b', 30, 'good other');
    const { found, aside } = await run();
    expect(found?.document).toBe('good new');
    expect(aside).toEqual([]);
    expect(store.states).toHaveLength(3);
  });

  test('is none in an empty store', async () => {
    expect(await run()).toEqual({ found: null, aside: [], refusal: null });
  });
});

describe('what cannot be read', () => {
  test('is moved aside under a dated key with its text, and the state before it opens', async () => {
    put('a', 10, 'good old');
    put('a', 20, 'b{roken');
    const { found, aside } = await run();
    expect(found?.document).toBe('good old');
    expect(aside).toEqual([
      { key: '2031-05-06T14:32:00.000Z a 20', text: 'b{roken', reason: 'not a site: b{roken' }
    ]);
    expect(store.aside).toEqual(aside);
    expect(store.states.map(({ begun }) => begun)).toEqual([10]);
  });

  test('is not taken away when it cannot be kept aside', async () => {
    put('a', 20, 'b{roken');
    store.writeError = new DOMException('full', 'QuotaExceededError');
    const { found, refusal } = await run();
    expect(found).toBeNull();
    expect(refusal?.kind).toBe('full');
    expect(store.states).toHaveLength(1);
  });

  test('may be the record itself', async () => {
    put('a', 10, 'good old');
    const damaged = { slot: 'a', begun: 20, savedAt: 'yesterday', name: 'Site' };
    store.found.push(damaged, null, 'nonsense', { slot: 5 });
    const { found, aside } = await run();
    expect(found?.document).toBe('good old');
    expect(aside.map(({ text }) => JSON.parse(text) as unknown)).toEqual([damaged]);
  });

  test('may be a record that has lost its text, or a text that has lost its record', async () => {
    put('a', 10, 'good old');
    put('a', 20, 'good lost');
    store.texts.delete('a 20');
    store.found.push({ slot: 'a', begun: 30 });
    store.texts.set('a 30', 'good but nameless');
    const { found, aside } = await run();
    expect(found?.document).toBe('good old');
    expect(aside.map(({ text }) => text)).toEqual([
      'good but nameless',
      expect.stringContaining('"begun":20')
    ]);
  });

  test('is left where it is when the slot is another tab’s', async () => {
    put('a', 10, 'good old');
    put('a', 20, 'b{roken');
    const { found, aside } = await recover(store, 'a', read, () => NOW, false);
    expect(found?.document).toBe('good old');
    expect(aside).toEqual([]);
    expect(store.states).toHaveLength(2);
  });

  test('may make the reader throw', async () => {
    put('a', 10, 'good');
    const { aside } = await run('a', () => {
      throw new Error('reader broke');
    });
    expect(aside[0]?.reason).toContain('reader broke');
  });

  test('of another slot is left to its own tab', async () => {
    put('b', 10, 'b{roken');
    expect((await run()).aside).toEqual([]);
    expect(store.states).toHaveLength(1);
  });
});

test('a store that cannot be read is reported, not thrown', async () => {
  store.readError = new DOMException('blocked', 'SecurityError');
  expect(await run()).toMatchObject({ found: null, refusal: { kind: 'forbidden' } });
});
