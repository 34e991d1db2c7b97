import { beforeEach, describe, expect, test } from 'vitest';
import { createAutosave } from '#storage/autosave';
import { leaveLastWords, takeLastWords, type LastWordsPlace } from '#storage/last-words';
import type { KeptState } from '#storage/states';
import { HandClock, MemoryStore, settle } from './memory-store';

class Place {
  readonly texts = new Map<string, string>();
  get length() {
    return this.texts.size;
  }
  key = (at: number) => [...this.texts.keys()][at] ?? null;
  getItem = (key: string) => this.texts.get(key) ?? null;
  setItem = (key: string, text: string) => void this.texts.set(key, text);
  removeItem = (key: string) => void this.texts.delete(key);
}

let place: Place;
let store: MemoryStore;
const ME = { owner: 'the tab that went', format: 1 };
const there: LastWordsPlace = () => place;
const state = (over: Partial<KeptState> = {}): KeptState => ({
  slot: 'a',
  begun: 1_000,
  savedAt: 5_000,
  name: 'Site',
  text: 'newest',
  ...over
});

beforeEach(() => {
  place = new Place();
  store = new MemoryStore();
});

describe('what a page leaves behind', () => {
  test('is in the store when the next one opens, once', async () => {
    store.hold(state({ savedAt: 4_000, text: 'older' }));
    leaveLastWords(there, state(), ME);
    await takeLastWords(there, store);
    expect(store.states).toEqual([state()]);
    expect(place.texts.size).toBe(0);
  });

  test('gives way to as new a state of the same slot, and to none of another', async () => {
    store.hold(state({ text: 'written after all' }));
    store.hold(state({ slot: 'b', savedAt: 9_000, text: 'another tab' }));
    leaveLastWords(there, state(), ME);
    leaveLastWords(there, state({ slot: 'c', text: 'a third' }), ME);
    await takeLastWords(there, store);
    expect(store.states.map(({ text }) => text).sort()).toEqual([
      'a third',
      'another tab',
      'written after all'
    ]);
    expect(place.texts.size).toBe(0);
  });

  test('stays when the store refuses it', async () => {
    leaveLastWords(there, state(), ME);
    store.writeError = new Error('full');
    await takeLastWords(there, store);
    expect(place.texts.size).toBe(1);
    store.writeError = null;
    await takeLastWords(there, store);
    expect(store.states).toHaveLength(1);
  });

  test('of a site that a newer release has stays, and holds back no other', async () => {
    await store.claim('a', { owner: 'another tab', format: 2 });
    leaveLastWords(there, state(), ME);
    leaveLastWords(there, state({ slot: 'b', text: 'of b' }), ME);
    await takeLastWords(there, store);
    expect(store.states).toMatchObject([{ slot: 'b', text: 'of b' }]);
    expect([...place.texts.values()]).toEqual([expect.stringContaining('newest')]);
  });

  test('does no harm when it is damaged, too large, or may not be touched', async () => {
    place.texts.set('kerfline last a', '{"slot": "a", "beg');
    place.texts.set('kerfline settings', '{}');
    await takeLastWords(there, store);
    expect(store.states).toEqual([]);
    expect([...place.texts.keys()]).toEqual(['kerfline settings']);
    place.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    expect(() => {
      leaveLastWords(there, state(), ME);
    }).not.toThrow();
    const forbidden: LastWordsPlace = () => {
      throw new DOMException('insecure', 'SecurityError');
    };
    expect(() => {
      leaveLastWords(forbidden, state(), ME);
    }).not.toThrow();
    await takeLastWords(forbidden, store);
  });
});

test('what is left goes into a store that holds something unreadable', async () => {
  store.marks = () => Promise.resolve([null, 'torn', { slot: 'a' }]);
  leaveLastWords(there, state(), ME);
  await takeLastWords(there, store);
  expect(store.states).toEqual([state()]);
  expect(place.texts.size).toBe(0);
});

test('what is left for a site that another tab has gone on with since lies under its work', async () => {
  store.hold(state({ begun: 900, savedAt: 4_000, text: 'theirs' }));
  await store.claim('a', { owner: 'another tab', format: 1 });
  leaveLastWords(there, state(), ME);
  await takeLastWords(there, store);
  const [newest, older] = [...store.states].sort((x, y) => y.savedAt - x.savedAt);
  expect([newest?.text, older?.text]).toEqual(['theirs', 'newest']);
});

describe('what autosave has not written', () => {
  test('is the newest change until the store has confirmed it', async () => {
    const clock = new HandClock();
    let confirm = () => {};
    store.put = () =>
      new Promise((resolve) => {
        confirm = resolve;
      });
    const autosave = createAutosave<{ readonly text: string }>({
      store,
      writer: ME,
      slot: 'a',
      newest: null,
      describe: ({ text }) => ({ name: 'Site', text }),
      now: clock.now,
      after: clock.after,
      onState: () => {}
    });
    expect(autosave.unsaved()).toEqual([]);
    autosave.changed({ text: 'one' });
    expect(autosave.unsaved()).toMatchObject([{ slot: 'a', text: 'one' }]);
    const first = autosave.unsaved()[0]!.begun;
    void autosave.flush();
    await settle();
    expect(autosave.unsaved()).toMatchObject([{ text: 'one', begun: first }]);
    autosave.changed({ text: 'two' });
    expect(autosave.unsaved()).toMatchObject([{ text: 'two', begun: first }]);
    confirm();
    await settle();
    expect(autosave.unsaved()).toMatchObject([{ text: 'two' }]);
    void autosave.flush();
    await settle();
    confirm();
    await settle();
    expect(autosave.unsaved()).toEqual([]);
  });
});
