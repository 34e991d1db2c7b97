import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Desk } from '#app/enter-slot';
import { awaitKept, findStart } from '#app/start';
import { demoSite } from '#plan/demo';
import { writeSite } from '#plan/read';
import { SilentError } from '#storage/refusal';
import { createTenancy } from '#storage/tenancy';
import { MemoryStore } from '../storage/memory-store';

let store: MemoryStore;
let desk: Desk;

function keep(slot: string, savedAt: number, name: string) {
  store.hold({ slot, begun: savedAt, savedAt, name, text: writeSite({ ...demoSite(), name }) });
}

beforeEach(() => {
  store = new MemoryStore();
  const tenancy = createTenancy({ locks: null, channel: null, onAsked: () => {}, onLost: () => {} });
  desk = { store, tenancy, writer: { owner: 'me', format: 1 } };
  keep('a', 1000, 'Yard');
  keep('b', 2000, 'Gate');
});
afterEach(() => {
  vi.useRealTimers();
});

test('the page opens on the site that its tab had, else on the newest', async () => {
  expect((await findStart(desk, 'a')).site.name).toBe('Yard');
  expect((await findStart(desk, null)).site.name).toBe('Gate');
});

test('a store that cannot be read is no empty one', async () => {
  store.readError = new SilentError();
  const start = await findStart(desk, 'a');
  expect(start.site.name).toBe(demoSite().name);
  expect(start.unread).toMatchObject({ why: { kind: 'silent' }, remembered: 'a' });
  expect((await findStart(desk, null)).unread).toMatchObject({ why: { kind: 'silent' }, remembered: null });
  store.readError = null;
  store.found = [];
  expect((await findStart(desk, 'a')).unread).toBeNull();
});

test('the slot of a site whose text could not be read is left alone', async () => {
  store.text = () => Promise.reject(new Error('cannot read'));
  const start = await findStart(desk, null);
  expect(start.slot).not.toBe('b');
  expect(start.unread?.why.kind).toBe('failed');
  expect(store.states).toHaveLength(2);
});

test('what is kept is waited for, and is then the site of the tab, else the newest', async () => {
  vi.useFakeTimers();
  store.readError = new SilentError();
  const taken: number[] = [];
  const takeIn = () => Promise.resolve(void taken.push(Date.now()));
  const found = Promise.all([
    awaitKept(store, 'a', 'own', takeIn),
    awaitKept(store, 'gone', 'own', takeIn),
    awaitKept(store, null, 'b', takeIn)
  ]);
  let isThere = false;
  void found.then(() => (isThere = true));
  await vi.advanceTimersByTimeAsync(60_000);
  expect(isThere).toBe(false);
  store.readError = null;
  await vi.advanceTimersByTimeAsync(3000);
  expect(await found).toEqual([
    { slot: 'a', name: 'Yard' },
    { slot: 'b', name: 'Gate' },
    { slot: 'a', name: 'Yard' }
  ]);
  expect(taken.length).toBeGreaterThan(3);
});
