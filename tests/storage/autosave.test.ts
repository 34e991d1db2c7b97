import { beforeEach, describe, expect, test } from 'vitest';
import { createAutosave, STATES_KEPT, type Autosave, type SaveState } from '#storage/autosave';
import { HandClock, MemoryStore, settle } from './memory-store';

interface Drawing {
  readonly text: string;
}

let store: MemoryStore;
let clock: HandClock;
let states: SaveState[];
let autosave: Autosave<Drawing>;

const ME = { owner: 'this tab', format: 1 };
const drawing = (text: string): Drawing => ({ text });
const lastState = () => states.at(-1);

function start(slot = 'a', newest: number | null = null) {
  return createAutosave<Drawing>({
    store,
    writer: ME,
    slot,
    newest,
    describe: ({ text }) => ({ name: 'Site', text }),
    now: clock.now,
    after: clock.after,
    onState: (state) => states.push(state)
  });
}

beforeEach(() => {
  store = new MemoryStore();
  clock = new HandClock();
  states = [];
  autosave = start();
});

describe('a store that does not answer', () => {
  test('is said not to keep the work, and to have kept it as soon as it has', async () => {
    let answer = () => {};
    store.silence = new Promise((resolve) => {
      answer = resolve;
    });
    autosave.changed(drawing('one'));
    await clock.pass(10);
    expect(lastState()).toEqual({ kind: 'saving' });
    await clock.pass(10);
    expect(lastState()).toEqual({ kind: 'not saved', why: { kind: 'silent', detail: '' } });
    // The page would leave it as its last words if it went away now.
    expect(autosave.unsaved()).toMatchObject([{ text: 'one' }]);
    answer();
    await clock.pass(0);
    expect(store.states).toMatchObject([{ text: 'one' }]);
    expect(lastState()).toEqual({ kind: 'saved' });
  });

  test('one that answers in time is not suspected afterwards', async () => {
    autosave.changed(drawing('one'));
    await clock.pass(60);
    expect(states.map(({ kind }) => kind)).toEqual(['saving', 'saved']);
  });
});

describe('keeping up with changes', () => {
  test('a change is kept within a second and said to be', async () => {
    autosave.changed(drawing('one'));
    expect(lastState()).toEqual({ kind: 'saving' });
    await clock.pass(1);
    expect(store.states).toMatchObject([{ slot: 'a', text: 'one', name: 'Site' }]);
    expect(lastState()).toEqual({ kind: 'saved' });
  });

  test('changes without a pause are kept every second all the same', async () => {
    for (let step = 0; step < 50; step++) {
      autosave.changed(drawing(`step ${step}`));
      await clock.pass(0.1);
    }
    expect(store.writes).toBeGreaterThanOrEqual(5);
    await clock.pass(1);
    expect(store.states.at(-1)?.text).toBe('step 49');
  });

  test('a flush keeps what waits at once', async () => {
    autosave.changed(drawing('leaving'));
    await autosave.flush();
    expect(store.states[0]?.text).toBe('leaving');
  });

  test('a change during a write is kept after it', async () => {
    autosave.changed(drawing('one'));
    const first = autosave.flush();
    autosave.changed(drawing('two'));
    await Promise.all([first, autosave.flush(), autosave.flush()]);
    await settle();
    expect(store.states.map(({ text }) => text)).toEqual(['two']);
    expect(lastState()).toEqual({ kind: 'saved' });
  });
});

describe('the states kept', () => {
  test('a young state is written over, an old one is followed by a new one', async () => {
    for (const text of ['one', 'two']) {
      autosave.changed(drawing(text));
      await clock.pass(1);
    }
    expect(store.states.map(({ text }) => text)).toEqual(['two']);
    await clock.pass(300);
    autosave.changed(drawing('three'));
    await clock.pass(1);
    expect(store.states.map(({ text }) => text)).toEqual(['two', 'three']);
  });

  test('no more than ten are kept, the newest and the first among them, and those of other slots stay', async () => {
    store.hold({ slot: 'other', begun: 1, savedAt: 1, name: 'Old', text: 'other' });
    const last = STATES_KEPT + 14;
    for (let step = 0; step <= last; step++) {
      autosave.changed(drawing(`step ${step}`));
      await clock.pass(300);
    }
    const own = store.states.filter(({ slot }) => slot === 'a').map(({ text }) => text);
    expect(own).toHaveLength(STATES_KEPT);
    expect(own[0]).toBe('step 0');
    expect(own.at(-1)).toBe(`step ${last}`);
    expect(store.states.filter(({ slot }) => slot === 'other')).toHaveLength(1);
  });

  test('opening something else begins a new state', async () => {
    autosave.changed(drawing('first site'));
    await autosave.flush();
    autosave.beginState();
    autosave.changed(drawing('second site'));
    await autosave.flush();
    expect(store.states.map(({ text }) => text)).toEqual(['first site', 'second site']);
  });
});

test('what was not yet written when something else is opened is kept too', async () => {
  autosave.changed(drawing('early work'));
  const first = autosave.flush();
  autosave.changed(drawing('first site'));
  autosave.beginState();
  autosave.changed(drawing('second site'));
  await first;
  await autosave.flush();
  expect(store.states.map(({ text }) => text)).toEqual(['first site', 'second site']);
});

test('another site goes to a slot of its own, with what the first one had not written yet', async () => {
  autosave.changed(drawing('first site'));
  autosave.beginSite('b', null);
  autosave.changed(drawing('second site'));
  expect(autosave.unsaved().map(({ slot, text }) => [slot, text])).toEqual([
    ['a', 'first site'],
    ['b', 'second site']
  ]);
  await autosave.flush();
  expect(store.states.map(({ slot, text }) => [slot, text])).toEqual([
    ['a', 'first site'],
    ['b', 'second site']
  ]);
  expect(autosave.unsaved()).toEqual([]);
});

describe('a slot that is another tab’s now', () => {
  const OTHER = { owner: 'another tab', format: 1 };

  test('is not written to, is not tried again, and what the other tab wrote stays', async () => {
    autosave.changed(drawing('mine'));
    await clock.pass(1);
    await store.claim('a', OTHER);
    await store.put({ slot: 'a', begun: 5, savedAt: clock.now() + 1, name: 'Site', text: 'theirs' }, OTHER);
    const before = store.states;
    autosave.changed(drawing('too late'));
    await clock.pass(1);
    expect(lastState()).toMatchObject({ kind: 'not saved', why: { kind: 'taken' } });
    const writes = store.writes;
    await clock.pass(120);
    expect(store.writes).toBe(writes);
    expect(store.states).toEqual(before);
    autosave.drop();
    expect(autosave.unsaved()).toEqual([]);
  });

  test('keeps what was left there unwritten beside it, and under it', async () => {
    autosave.changed(drawing('left behind'));
    autosave.beginSite('b', null);
    await store.claim('a', OTHER);
    await store.put({ slot: 'a', begun: 5, savedAt: clock.now() - 9, name: 'Site', text: 'theirs' }, OTHER);
    autosave.changed(drawing('elsewhere'));
    await autosave.flush();
    const own = store.states.filter(({ slot }) => slot === 'a');
    expect(own.map(({ text }) => text).sort()).toEqual(['left behind', 'theirs']);
    expect(own.sort((x, y) => y.savedAt - x.savedAt)[0]?.text).toBe('theirs');
    expect(lastState()).toEqual({ kind: 'saved' });
  });

  test('a write that it interrupts is kept under what the other tab wrote, also when the site comes back', async () => {
    let answer = () => {};
    store.silence = new Promise((resolve) => {
      answer = resolve;
    });
    autosave.changed(drawing('on its way'));
    const writing = autosave.flush();
    await settle();
    store.silence = null;
    await store.claim('a', OTHER);
    await store.put({ slot: 'a', begun: 5, savedAt: clock.now() + 1, name: 'Site', text: 'theirs' }, OTHER);
    autosave.drop();
    answer();
    await writing;
    await store.claim('a', ME);
    autosave.beginSite('a', clock.now() + 1);
    await clock.pass(60);
    await autosave.flush();
    const byAge = [...store.states].sort((x, y) => y.savedAt - x.savedAt);
    expect(byAge.map(({ text }) => text)).toEqual(['theirs', 'on its way']);
    expect(autosave.unsaved()).toEqual([]);
  });

  test('of a newer release is never written to by an older one', async () => {
    await store.claim('a', { owner: 'this tab', format: 2 });
    autosave.changed(drawing('older'));
    await clock.pass(60);
    expect(lastState()).toMatchObject({ kind: 'not saved', why: { kind: 'newer' } });
    expect(store.states).toEqual([]);
    await expect(store.claim('a', ME)).rejects.toThrow('newer');
  });
});

describe('a clock that was wrong and is set right', () => {
  const newest = () => [...store.states].sort(newestFirst).map(({ text }) => text)[0];
  const newestFirst = (x: { savedAt: number; begun: number }, y: { savedAt: number; begun: number }) =>
    y.savedAt - x.savedAt || y.begun - x.begun;

  test('does not make older what is saved after it, in the same visit', async () => {
    for (const text of ['one', 'two']) {
      autosave.changed(drawing(text));
      await clock.pass(100);
    }
    clock.seconds -= 40_000;
    autosave.changed(drawing('three'));
    await autosave.flush();
    expect(newest()).toBe('three');
    expect(store.states.map(({ text }) => text)).toEqual(['one', 'two', 'three']);
    // and states are begun at the usual pace again
    for (const text of ['four', 'five']) {
      clock.seconds += 10;
      autosave.changed(drawing(text));
      await autosave.flush();
    }
    expect(store.states.map(({ text }) => text)).toEqual(['one', 'two', 'five']);
    expect(newest()).toBe('five');
  });

  test('nor in a later one', async () => {
    const ahead = clock.now() + 4e7;
    store.hold({ slot: 'a', begun: ahead, savedAt: ahead, name: 'Site', text: 'of tomorrow' });
    autosave = start('a', ahead);
    autosave.changed(drawing('of today'));
    await autosave.flush();
    expect(newest()).toBe('of today');
    autosave.beginSite('b', ahead);
    store.hold({ slot: 'b', begun: ahead, savedAt: ahead, name: 'Site', text: 'b of tomorrow' });
    autosave.changed(drawing('b of today'));
    await autosave.flush();
    expect([...store.states].filter(({ slot }) => slot === 'b').sort(newestFirst)[0]?.text).toBe(
      'b of today'
    );
  });
});

test('a refused write of two sites is tried again for both', async () => {
  store.writeError = new DOMException('full', 'QuotaExceededError');
  autosave.changed(drawing('first site'));
  autosave.beginState();
  autosave.changed(drawing('second site'));
  await clock.pass(1);
  store.writeError = null;
  await clock.pass(15);
  expect(store.states.map(({ text }) => text)).toEqual(['first site', 'second site']);
});

describe('a store that refuses', () => {
  // The names that the three engines give a full disk, by way of their databases and their key-value stores.
  const full = [
    new DOMException('The quota has been exceeded.', 'QuotaExceededError'),
    Object.assign(new Error('reached'), { name: 'NS_ERROR_DOM_QUOTA_REACHED', code: 1014 }),
    Object.assign(new Error('quota'), { name: 'NS_ERROR_DOM_INDEXEDDB_QUOTA_ERR' }),
    Object.assign(new Error('no space'), { name: 'NS_ERROR_FILE_NO_DEVICE_SPACE' }),
    Object.assign(new Error('DOM Exception 22'), { name: 'QUOTA_EXCEEDED_ERR', code: 22 }),
    new DOMException('Attempt to store data failed because the disk is full', 'UnknownError')
  ];

  test.each(full.map((error) => [`${error.name}: ${error.message}`, error] as const))(
    '%s is said to be full, and nothing older is lost',
    async (_title, error) => {
      autosave.changed(drawing('kept'));
      await clock.pass(300);
      store.writeError = error;
      autosave.changed(drawing('refused'));
      await clock.pass(1);
      expect(lastState()).toMatchObject({ kind: 'not saved', why: { kind: 'full' } });
      expect(store.states.map(({ text }) => text)).toEqual(['kept']);
    }
  );

  test('the failure stays on show until something was kept, and the newest work is tried again by itself', async () => {
    store.writeError = new DOMException('no', 'QuotaExceededError');
    autosave.changed(drawing('one'));
    await clock.pass(1);
    autosave.changed(drawing('two'));
    await clock.pass(1);
    expect(states.filter(({ kind }) => kind === 'saving')).toHaveLength(1);
    store.writeError = null;
    await clock.pass(15);
    expect(store.states.map(({ text }) => text)).toEqual(['two']);
    expect(lastState()).toEqual({ kind: 'saved' });
  });

  test('a database that is forbidden is told from one that is full', async () => {
    store.writeError = new DOMException('blocked', 'SecurityError');
    autosave.changed(drawing('one'));
    await clock.pass(1);
    expect(lastState()).toMatchObject({ kind: 'not saved', why: { kind: 'forbidden' } });
  });

  test('a site that cannot be described is reported, not thrown', async () => {
    const broken = createAutosave<Drawing>({
      store,
      writer: ME,
      slot: 'b',
      newest: null,
      describe: () => {
        throw new Error('cannot be written down');
      },
      now: clock.now,
      after: clock.after,
      onState: (state) => states.push(state)
    });
    broken.changed(drawing('x'));
    await broken.flush();
    expect(lastState()).toMatchObject({ kind: 'not saved', why: { kind: 'failed' } });
  });

  test('states that cannot be trimmed are no reason for a warning', async () => {
    store.marks = () => Promise.reject(new Error('unreadable'));
    autosave.changed(drawing('one'));
    await autosave.flush();
    expect(lastState()).toEqual({ kind: 'saved' });
  });
});
