import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { KeptWork } from '#app/kept-work.svelte.ts';
import { findStart } from '#app/start';
import { createEditor } from '#editor/create-editor';
import type { Editor } from '#editor/types';
import { demoSite } from '#plan/demo';
import { updateSite } from '#plan/edits/index';
import { writeSite } from '#plan/read';
import type { FileHost } from '#storage/files';
import { SilentError } from '#storage/refusal';
import type { KeptState } from '#storage/states';
import { createTenancy, type Tenancy } from '#storage/tenancy';
import { MemoryStore } from '../storage/memory-store';

const NOW = Date.UTC(2031, 4, 6);
const ME = { owner: 'me', format: 1 };
const OTHER = { owner: 'another tab', format: 1 };

let store: MemoryStore;
let tenancy: Tenancy;
let released: string[];
let tab: string | null;

function stateOf(slot: string, savedAt: number, name: string): KeptState {
  return { slot, begun: savedAt, savedAt, name, text: writeSite({ ...demoSite(), name }) };
}

interface Page {
  readonly kept: KeptWork;
  readonly editor: Editor;
  rename(name: string): void;
}

async function openPage(): Promise<Page> {
  const desk = { store, tenancy, writer: ME };
  const start = await findStart(desk, tab);
  const editor = createEditor(start.site);
  const tabSlot = { get: () => tab, set: (slot: string | null) => void (tab = slot) };
  const files = () => ({}) as FileHost;
  const takeLastWords = () => Promise.resolve();
  const kept = new KeptWork({ ...desk, start, files, tabSlot, takeLastWords }, editor, (open) => {
    open();
  });
  editor.subscribe(({ site }) => {
    kept.follow(site);
  });
  const rename = (name: string) => {
    editor.commit({ label: 'Name', site: updateSite(editor.state.site, { name }) });
  };
  return { kept, editor, rename };
}

/** Of what is shown. */
const nameIn = ({ editor }: Page) => editor.state.site.name;
const pass = (seconds: number) => vi.advanceTimersByTimeAsync(seconds * 1000);

beforeEach(() => {
  vi.useFakeTimers({ now: NOW });
  vi.stubGlobal('window', new EventTarget());
  store = new MemoryStore();
  released = [];
  tab = null;
  const plain = createTenancy({ locks: null, channel: null, onAsked: () => {}, onLost: () => {} });
  tenancy = {
    ...plain,
    release(slot) {
      released.push(slot);
      plain.release(slot);
    }
  };
  for (const [slot, age, name] of [
    ['a', 9000, 'Yard'],
    ['b', 8000, 'Gate'],
    ['c', 7000, 'Depot']
  ] as const)
    store.hold(stateOf(slot, NOW - age, name));
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** The store's answers to one site's texts wait until they are let through. */
function slow(slot: string): () => void {
  let letThrough = () => {};
  const wait = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  const text = store.text.bind(store);
  store.text = async (asked, begun) => {
    if (asked === slot) await wait;
    return text(asked, begun);
  };
  return letThrough;
}

test('a site that is slow to open does not push aside what was opened after it', async () => {
  const page = await openPage();
  const letThrough = slow('a');
  const opening = page.kept.open('a');
  await page.kept.open('b');
  expect(nameIn(page)).toBe('Gate');
  page.rename('North gate');
  letThrough();
  await opening;
  await pass(1);
  expect(nameIn(page)).toBe('North gate');
  expect(released).toContain('a');
  expect(released).not.toContain('b');
});

test('nor a new site that was begun meanwhile', async () => {
  const page = await openPage();
  const letThrough = slow('a');
  const opening = page.kept.open('a');
  await pass(0);
  page.kept.openNew({ ...demoSite(), name: 'New' });
  letThrough();
  await opening;
  expect(nameIn(page)).toBe('New');
});

test('one that is asked for twice opens and stays held', async () => {
  const page = await openPage();
  await Promise.all([page.kept.open('a'), page.kept.open('a')]);
  expect(nameIn(page)).toBe('Yard');
  expect(released).not.toContain('a');
});

/** The page has a site that another tab has taken from it; taking over takes a while. */
async function withLostSite(): Promise<{ page: Page; letGo: () => void; asked: () => number }> {
  const page = await openPage();
  page.kept.lost('c');
  tenancy.release('c');
  await store.claim('c', OTHER);
  await store.put(stateOf('c', NOW + 1, 'Theirs'), OTHER);
  let letGo = () => {};
  let asked = 0;
  const gone = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  const takeOver = tenancy.takeOver.bind(tenancy);
  tenancy.takeOver = async (slot) => {
    asked++;
    await gone;
    await takeOver(slot);
  };
  return { page, letGo, asked: () => asked };
}

test('a site that is taken over comes once, and what is done in it then stays', async () => {
  const { page, letGo, asked } = await withLostSite();
  const first = page.kept.takeOver();
  const second = page.kept.takeOver();
  letGo();
  await first;
  expect(nameIn(page)).toBe('Theirs');
  page.rename('Ours again');
  await second;
  await pass(10);
  expect(nameIn(page)).toBe('Ours again');
  expect(page.editor.state.undoLabel).not.toBeNull();
  expect(asked()).toBe(1);
});

test('whoever opens another site while one is taken over stays there', async () => {
  const { page, letGo } = await withLostSite();
  const taking = page.kept.takeOver();
  await page.kept.open('b');
  letGo();
  await taking;
  expect(nameIn(page)).toBe('Gate');
  expect([...(await tenancy.openSlots())]).toEqual(['b']);
});

test('work goes on under the newest state where the clock was ahead when that was kept', async () => {
  store.hold(stateOf('c', NOW + 4e8, 'Of tomorrow'));
  const page = await openPage();
  page.rename('Of today');
  await page.kept.flush();
  const again = await openPage();
  expect(nameIn(again)).toBe('Of today');
});

test('a site that could not be read opens by itself as soon as it can', async () => {
  tab = 'b';
  store.readError = store.writeError = new SilentError();
  const page = await openPage();
  expect(page.kept.late).toEqual({ kind: 'awaited' });
  // a reload would ask for it again
  expect(tab).toBe('b');
  await pass(30);
  expect(nameIn(page)).toBe(demoSite().name);
  store.readError = store.writeError = null;
  await pass(3);
  expect(nameIn(page)).toBe('Gate');
  expect(page.kept.late).toBeNull();
  expect(page.kept.tenure).toBe('own');
  expect(page.kept.recoveredFrom).toBe(NOW - 8000);
  page.rename('North gate');
  await pass(1);
  expect(store.states.filter(({ slot }) => slot === 'b')).toMatchObject([
    { name: 'Gate' },
    { name: 'North gate' }
  ]);
});

test('it is only offered where something has been done meanwhile', async () => {
  tab = 'b';
  store.readError = store.writeError = new SilentError();
  const page = await openPage();
  page.rename('Begun here');
  expect(tab).toBe(page.kept.slot);
  store.readError = store.writeError = null;
  await pass(15);
  expect(nameIn(page)).toBe('Begun here');
  expect(page.kept.late).toEqual({ kind: 'there', slot: 'b', name: 'Gate' });
  expect(store.states.filter(({ slot }) => slot === page.kept.slot)).toMatchObject([{ name: 'Begun here' }]);
  await page.kept.open('b');
  expect(nameIn(page)).toBe('Gate');
});

test('it does not come under a hand that has just begun', async () => {
  store.readError = store.writeError = new SilentError();
  const page = await openPage();
  const letThrough = slow('c');
  store.readError = store.writeError = null;
  await pass(3);
  page.rename('Begun here');
  letThrough();
  await pass(1);
  expect(nameIn(page)).toBe('Begun here');
  expect(page.kept.late).toMatchObject({ kind: 'there', name: 'Depot' });
  expect(released).toContain('c');
});

test('where nothing was kept, nothing more is said', async () => {
  store.readError = store.writeError = new SilentError();
  store.found = [];
  const page = await openPage();
  store.readError = store.writeError = null;
  await pass(3);
  expect(page.kept.late).toBeNull();
  expect(nameIn(page)).toBe(demoSite().name);
});
