import { beforeEach, expect, test } from 'vitest';
import { FileRecord } from '#app/file-record.svelte.ts';
import { SiteFiles } from '#app/site-files.svelte.ts';
import { createEditor } from '#editor/create-editor';
import { demoSite } from '#plan/demo';
import { updateSite } from '#plan/edits/index';
import { readSite } from '#plan/read';
import type { FileHandle, FileHost } from '#storage/files';
import { MemoryStore, settle } from '../storage/memory-store';

/** A file on a slow disk: each step of a write waits until it is let on. */
class Disk {
  text = '';
  #steps: (() => void)[] = [];
  readonly handle: FileHandle = {
    name: 'yard.kerfline.json',
    getFile: () =>
      Promise.resolve({ name: 'yard.kerfline.json', size: 1, text: () => Promise.resolve(this.text) }),
    createWritable: () => {
      let draft = '';
      return Promise.resolve({
        write: (text: string) => {
          draft = text;
          return this.#step();
        },
        close: async () => {
          await this.#step();
          this.text = draft;
          // the browser tells the page of it a little later
          await this.#step();
        },
        abort: () => Promise.resolve()
      });
    }
  };

  #step() {
    return new Promise<void>((resolve) => {
      this.#steps.push(resolve);
    });
  }

  async turn(steps = Infinity): Promise<void> {
    for (let step = 0; step < steps && this.#steps.length > 0; step++) {
      this.#steps.shift()!();
      await settle();
    }
  }
}

const nameIn = (text: string) => {
  const reading = readSite(text);
  return reading.ok ? reading.site.name : null;
};

let disk: Disk;
let pickers: ((handle: FileHandle) => void)[];
let downloads: string[];

function setUp() {
  const editor = createEditor(updateSite(demoSite(), { name: 'First' }));
  const record = new FileRecord(new MemoryStore(), { owner: 'me', format: 1 });
  record.begin({ slot: 'a', file: null, unfiledSince: null, isReminded: false }, editor.state.site);
  const host: FileHost = {
    pickToOpen: null,
    // as browsers do: a second picker is refused while one is open
    pickToSave: () =>
      pickers.length > 0
        ? Promise.reject(new DOMException('already active', 'NotAllowedError'))
        : new Promise((resolve) => pickers.push(resolve)),
    chooseByField: () => Promise.resolve(null),
    download: (_text, name) => downloads.push(name)
  };
  const files = new SiteFiles(() => host, editor, record, {
    get site() {
      return editor.state.site;
    },
    slot: 'a',
    tenure: 'own',
    openNew: () => {},
    openToRead: () => {}
  });
  return { files, editor, record };
}

beforeEach(() => {
  disk = new Disk();
  pickers = [];
  downloads = [];
});

test('saving twice in a row asks for a file once', async () => {
  const { files, record } = setUp();
  const both = [files.save(false), files.save(false)];
  await settle();
  expect(pickers).toHaveLength(1);
  pickers.pop()!(disk.handle);
  await settle();
  await disk.turn();
  await Promise.all(both);
  expect(downloads).toEqual([]);
  expect(record.handle).toBe(disk.handle);
  expect(nameIn(disk.text)).toBe('First');
});

test('what is saved while a save is under way comes after it, and is no change by somebody else', async () => {
  const { files, editor } = setUp();
  const first = files.save(false);
  await settle();
  pickers.pop()!(disk.handle);
  await settle();
  await disk.turn();
  await first;
  editor.commit({ label: 'Name', site: updateSite(editor.state.site, { name: 'Second' }) });
  const second = files.save(false);
  await settle();
  await disk.turn(2);
  expect(nameIn(disk.text)).toBe('Second');
  editor.commit({ label: 'Name', site: updateSite(editor.state.site, { name: 'Third' }) });
  const third = files.save(false);
  for (let turn = 0; turn < 9; turn++) {
    await settle();
    await disk.turn();
  }
  await Promise.all([second, third]);
  expect(files.changedFile).toBeNull();
  expect(nameIn(disk.text)).toBe('Third');
});
