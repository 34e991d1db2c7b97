import { beforeEach, expect, test, vi } from 'vitest';
import { BIN_AGE, createSites } from '#app/sites';
import { demoSite } from '#plan/demo';
import { writeSite } from '#plan/read';
import { createTenancy } from '#storage/tenancy';
import type { Sites } from '#ui/sites';
import { MemoryStore } from '../storage/memory-store';

const NOW = Date.UTC(2031, 4, 6);
const ME = { owner: 'me', format: 1 };

let store: MemoryStore;
let sites: Sites;
const opened: string[] = [];

function keep(slot: string, begun: number, name: string) {
  store.hold({ slot, begun, savedAt: begun, name, text: writeSite({ ...demoSite(), name }) });
}

const listed = async () =>
  (await sites.list()).map(({ slot, name, deletedAt }) => [slot, name, deletedAt !== null] as const);

beforeEach(() => {
  vi.useFakeTimers({ now: NOW, toFake: ['Date'] });
  store = new MemoryStore();
  opened.length = 0;
  sites = createSites({
    store,
    writer: ME,
    tenancy: createTenancy({ locks: null, channel: null, onAsked: () => {}, onLost: () => {} }),
    here: () => 'open',
    site: () => demoSite(),
    flush: () => Promise.resolve(),
    open: (slot) => {
      opened.push(slot);
      return Promise.resolve();
    },
    openNew: ({ name }) => opened.push(name),
    change: () => undefined
  });
  keep('a', NOW - 9000, 'Older name');
  keep('a', NOW - 5000, 'Yard');
  keep('b', NOW - 7000, 'Gate');
});

test('each site is listed once, under its newest name, the newest first', async () => {
  expect(await listed()).toEqual([
    ['a', 'Yard', false],
    ['b', 'Gate', false]
  ]);
});

test('a new name holds also where the clock was ahead when the site was kept', async () => {
  keep('b', NOW + 9000, 'Of tomorrow');
  await sites.rename('b', 'South gate');
  expect((await listed())[0]).toEqual(['b', 'South gate', false]);
});

test('a new name is a new state: the one before it stays', async () => {
  await sites.rename('b', 'South gate');
  expect(store.states.filter(({ slot }) => slot === 'b').map(({ name }) => name)).toEqual([
    'Gate',
    'South gate'
  ]);
});

test('what is deleted lies in the bin until it is old, and then goes with all its states', async () => {
  await sites.remove('a');
  expect(await listed()).toContainEqual(['a', 'Yard', true]);
  vi.setSystemTime(NOW + BIN_AGE - 1000);
  expect(await listed()).toContainEqual(['a', 'Yard', true]);
  vi.setSystemTime(NOW + BIN_AGE + 1000);
  expect(await listed()).toEqual([['b', 'Gate', false]]);
  expect(store.states.some(({ slot }) => slot === 'a')).toBe(false);
});

test('what was taken out of the bin in time stays', async () => {
  await sites.remove('a');
  await sites.restore('a', false);
  vi.setSystemTime(NOW + 2 * BIN_AGE);
  expect(await listed()).toContainEqual(['a', 'Yard', false]);
});

test('an earlier state opens as a copy under a name of its own', async () => {
  await sites.openCopy('a', NOW - 9000);
  expect(opened).toEqual(['Older name (copy)']);
});

test('a state that cannot be read is no copy, and no error of another kind', async () => {
  store.texts.set(`a ${NOW - 9000}`, '{"format"');
  await expect(sites.openCopy('a', NOW - 9000)).rejects.toThrow(/\w{3,}/);
  expect(opened).toEqual([]);
});
