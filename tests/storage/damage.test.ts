import { describe, expect, test } from 'vitest';
import { demoSite } from '#plan/demo';
import { readSite, writeSite } from '#plan/read';
import { createAutosave } from '#storage/autosave';
import { recover, type ReadText } from '#storage/recovery';
import type { Site } from '#plan/schema';
import { HandClock, MemoryStore } from './memory-store';

type Loose = Record<string, unknown> & {
  loops: (Record<string, unknown> & { shape: Record<string, unknown>; slot: Record<string, unknown> })[];
  lanes: Record<string, unknown>[];
  circuits: Record<string, unknown>[];
};

const read: ReadText<Site> = (text) => {
  const reading = readSite(text);
  return reading.ok
    ? { document: reading.site }
    : { reason: reading.problems.map(({ message }) => message).join(' ') };
};

const good = writeSite(demoSite());

const changed = (change: (document: Loose) => unknown) => () => {
  const document = JSON.parse(good) as Loose;
  change(document);
  return JSON.stringify(document);
};
const first = (document: Loose) => document.loops[0]!;

const DAMAGES: Readonly<Record<string, () => string>> = {
  'nothing at all': () => '',
  'only blanks': () => '   \n',
  'cut in the middle': () => good.slice(0, good.length >> 1),
  'cut before the last brace': () => good.trimEnd().slice(0, -1),
  'a stretch of noughts': () => `${good.slice(0, 200)}${'\u0000'.repeat(64)}${good.slice(264)}`,
  'two documents in a row': () => good + good,
  'a byte order torn': () => `\ufffd\ufffd${good}`,
  'a list': () => '[]',
  'a number': () => '7',
  null: () => 'null',
  'a page of markup': () => '<!doctype html><title>Sign in</title>',
  'another format': changed((document) => (document['format'] = 'something-else')),
  'no version': changed((document) => delete document['version']),
  'a version that is a word': changed((document) => (document['version'] = 'one')),
  'a version of nought': changed((document) => (document['version'] = 0)),
  'a name that is a number': changed((document) => (document['name'] = 5)),
  'loops that are a word': changed((document) => Object.assign(document, { loops: 'four' })),
  'a loop that is null': changed((document) => Object.assign(document.loops, { 0: null })),
  'not a number': () => good.replace(/"turns": \d+/, '"turns": NaN'),
  'a negative size': changed((document) => (first(document).shape['width'] = -2)),
  'a huge number': changed((document) => (first(document).shape['width'] = 1e300)),
  'beyond all numbers': () => good.replace(/"turns": \d+/, '"turns": 1e999'),
  'half a turn': changed((document) => (first(document)['turns'] = 2.5)),
  'two loops of one id': changed((document) => (document.loops[1]!['id'] = first(document)['id'])),
  'a circuit of a loop that is not there': changed(
    (document) => (document.circuits[0]!['strings'] = [[{ loop: 'L99', reversed: false }]])
  ),
  'a shape that nobody knows': changed((document) => (first(document).shape['kind'] = 'hexagon')),
  'a wire that nobody knows': changed((document) => (first(document)['wire'] = 'string')),
  'a lane without a centreline': changed((document) => delete document.lanes[0]!['centreline']),
  'a lane of one point': changed((document) => (document.lanes[0]!['centreline'] = [[0, 0]])),
  'a point of one number': changed((document) => (document.lanes[0]!['centreline'] = [[0], [1, 1]])),
  'a key into the prototype': () => good.replace('{', '{"__proto__": {"isAdmin": true},'),
  'a slot that is a list': changed((document) => Object.assign(first(document), { slot: [] })),
  'fifty megabytes of nonsense': () => `{"format": "kerfline-site", "name": "${'x'.repeat(50_000_000)}`
};

test('there are at least thirty kinds', () => {
  expect(Object.keys(DAMAGES).length).toBeGreaterThanOrEqual(30);
});

describe.each(Object.entries(DAMAGES))('kept work that has become %s', (_kind, damage) => {
  test('is put aside to the byte with a reason in words; the state before it opens; nothing is written over it', async () => {
    const store = new MemoryStore();
    const clock = new HandClock();
    const writer = { owner: 'me', format: 1 };
    const text = damage();
    store.hold({ slot: 'a', begun: 10, savedAt: 10, name: 'Site', text: good });
    store.hold({ slot: 'a', begun: 20, savedAt: 20, name: 'Site', text });
    const { found, aside, refusal } = await recover(store, 'a', read, clock.now);
    expect(refusal).toBeNull();
    expect(found && writeSite(found.document)).toBe(good);
    expect(aside).toHaveLength(1);
    // Compared by hand: a difference of fifty megabytes is nothing to print.
    expect(aside[0]!.text === text).toBe(true);
    expect(aside[0]!.reason).toMatch(/[a-z]{3,}/i);
    expect(aside[0]!.reason).not.toMatch(/undefined|\[object/);

    const autosave = createAutosave<Site>({
      store,
      writer,
      slot: 'a',
      newest: null,
      describe: (site) => ({ name: site.name, text: writeSite(site) }),
      now: clock.now,
      after: clock.after,
      onState: () => undefined
    });
    autosave.changed({ ...demoSite(), name: 'After the damage' });
    await autosave.flush();
    expect(store.aside).toHaveLength(1);
    expect(store.states.map(({ name }) => name)).toEqual(['Site', 'After the damage']);
  });
});

describe.each([
  ['nothing', undefined],
  ['null', null],
  ['a word', 'torn'],
  ['fields of the wrong kind', { slot: 'a', begun: 'then', savedAt: [], name: 4 }],
  ['no numbers', { slot: 'a', begun: NaN, savedAt: NaN, name: 'x', size: NaN }],
  ['a record of another kind', { key: 'aside', text: 'x', reason: 'y' }]
])('a store that gives back %s among its states', (_kind, damaged) => {
  test('still opens the rest', async () => {
    const store = new MemoryStore();
    store.hold({ slot: 'a', begun: 10, savedAt: 10, name: 'Site', text: good });
    store.found.push(damaged);
    store.sites.set('a', damaged);
    const { found } = await recover(store, 'a', read, () => 0);
    expect(found).not.toBeNull();
    await store.change('a', null, (record) => ({ ...record, isReminded: true }));
    expect(store.record('a')).toMatchObject({ owner: null, file: null, isReminded: true });
  });
});
