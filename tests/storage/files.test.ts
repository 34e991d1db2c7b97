import { describe, expect, test } from 'vitest';
import {
  fileNameFor,
  LARGEST_FILE,
  openFile,
  saveFile,
  type FileContent,
  type FileHandle,
  type FileHost
} from '#storage/files';

const content = (text: string, size = text.length): FileContent => ({
  name: 'lane.kerfline.json',
  size,
  text: () => Promise.resolve(text)
});

class Disk {
  written: string | null = null;
  aborted = false;
  failOn: 'open' | 'write' | 'close' | null = null;
  readonly handle: FileHandle = {
    name: 'lane.kerfline.json',
    getFile: () => Promise.resolve(content('from disk')),
    createWritable: () => {
      if (this.failOn === 'open') return Promise.reject(new DOMException('no', 'NotAllowedError'));
      let draft = '';
      return Promise.resolve({
        write: (text: string) => {
          if (this.failOn === 'write') return Promise.reject(new DOMException('full', 'QuotaExceededError'));
          draft = text;
          return Promise.resolve();
        },
        close: () => {
          // as a browser does that will not have this file on the disk
          if (this.failOn === 'close') return Promise.reject(new DOMException('blocked', 'AbortError'));
          this.written = draft;
          return Promise.resolve();
        },
        abort: () => {
          this.aborted = true;
          return Promise.resolve();
        }
      });
    }
  };
}

function makeHost(overrides: Partial<FileHost> = {}) {
  const downloads: { text: string; name: string }[] = [];
  const host: FileHost = {
    pickToOpen: null,
    pickToSave: null,
    chooseByField: () => Promise.resolve(content('from field')),
    download: (text, name) => downloads.push({ text, name }),
    ...overrides
  };
  return { host, downloads };
}

const refuse = (name: string) => () => Promise.reject(new DOMException('refused', name));

describe('opening', () => {
  test('uses the picker and remembers the file', async () => {
    const disk = new Disk();
    const { host } = makeHost({ pickToOpen: () => Promise.resolve(disk.handle) });
    expect(await openFile(host)).toMatchObject({ kind: 'opened', text: 'from disk', handle: disk.handle });
  });

  test('falls back to a file field where the picker is missing or forbidden', async () => {
    for (const pickToOpen of [null, refuse('SecurityError')]) {
      const { host } = makeHost({ pickToOpen });
      expect(await openFile(host)).toMatchObject({ kind: 'opened', text: 'from field', handle: null });
    }
  });

  test('a cancelled picker asks no second time', async () => {
    const { host } = makeHost({ pickToOpen: refuse('AbortError') });
    expect(await openFile(host)).toEqual({ kind: 'cancelled' });
    expect(await openFile(makeHost({ chooseByField: () => Promise.resolve(null) }).host)).toEqual({
      kind: 'cancelled'
    });
  });

  test('a file that the browser breaks off reading is no cancelled picker', async () => {
    const broken = { ...new Disk().handle, getFile: refuse('AbortError') };
    const { host } = makeHost({ pickToOpen: () => Promise.resolve(broken) });
    expect(await openFile(host)).toMatchObject({ kind: 'opened', text: 'from field' });
  });

  test('a film is not read into memory', async () => {
    const { host } = makeHost({ chooseByField: () => Promise.resolve(content('x', LARGEST_FILE + 1)) });
    expect(await openFile(host)).toMatchObject({ kind: 'too large', size: LARGEST_FILE + 1 });
  });
});

describe('saving', () => {
  test('writes to the file that was opened', async () => {
    const disk = new Disk();
    const { host, downloads } = makeHost();
    expect(await saveFile(host, 'text', 'n', disk.handle)).toMatchObject({
      kind: 'saved',
      handle: disk.handle
    });
    expect(disk.written).toBe('text');
    expect(downloads).toEqual([]);
  });

  test('a file that somebody else has written to is left as it is, and said', async () => {
    const disk = new Disk();
    const { host, downloads } = makeHost();
    const isOurs = (text: string) => text !== 'from disk';
    expect(await saveFile(host, 'text', 'n', disk.handle, isOurs)).toEqual({
      kind: 'changed elsewhere',
      name: 'lane.kerfline.json'
    });
    expect(disk.written).toBeNull();
    expect(downloads).toEqual([]);
    expect((await saveFile(host, 'text', 'n', disk.handle, (text) => text === 'from disk')).kind).toBe(
      'saved'
    );
    expect(disk.written).toBe('text');
  });

  test('a file that is gone is written anew', async () => {
    const disk = new Disk();
    const gone = { ...disk.handle, getFile: () => Promise.reject(new DOMException('gone', 'NotFoundError')) };
    expect((await saveFile(makeHost().host, 'text', 'n', gone, () => false)).kind).toBe('saved');
    expect(disk.written).toBe('text');
  });

  test('asks for a file where there is a picker', async () => {
    const disk = new Disk();
    const { host } = makeHost({ pickToSave: () => Promise.resolve(disk.handle) });
    await saveFile(host, 'text', 'n', null);
    expect(disk.written).toBe('text');
  });

  test.each(['SecurityError', 'NotAllowedError', 'TypeError'])(
    'a picker that fails with %s ends in a download',
    async (name) => {
      const { host, downloads } = makeHost({ pickToSave: refuse(name) });
      expect(await saveFile(host, 'text', 'n.json', null)).toEqual({ kind: 'downloaded', name: 'n.json' });
      expect(downloads).toEqual([{ text: 'text', name: 'n.json' }]);
    }
  );

  test('a cancelled picker saves nothing', async () => {
    const { host, downloads } = makeHost({ pickToSave: refuse('AbortError') });
    expect(await saveFile(host, 'text', 'n', null)).toEqual({ kind: 'cancelled' });
    expect(downloads).toEqual([]);
  });

  test('a file that cannot be written keeps its old content and a download is made', async () => {
    for (const failOn of ['open', 'write', 'close'] as const) {
      const disk = new Disk();
      disk.failOn = failOn;
      const { host, downloads } = makeHost();
      expect((await saveFile(host, 'text', 'n', disk.handle)).kind).toBe('downloaded');
      expect(disk.written).toBeNull();
      expect(disk.aborted).toBe(failOn !== 'open');
      expect(downloads).toHaveLength(1);
    }
  });

  test('a picked file that the browser breaks off writing is no cancelled picker', async () => {
    const disk = new Disk();
    disk.failOn = 'close';
    const { host, downloads } = makeHost({ pickToSave: () => Promise.resolve(disk.handle) });
    expect((await saveFile(host, 'text', 'n', null)).kind).toBe('downloaded');
    expect(downloads).toHaveLength(1);
  });
});

test.each([
  ['Mill Lane car park, exit', 'Mill-Lane-car-park-exit.kerfline.json'],
  ['../../etc: <a|b>?*', 'etc-a-b.kerfline.json'],
  ['Überführung № 3', 'Überführung-3.kerfline.json'],
  ['***', 'site.kerfline.json']
])('%s is kept as %s', (name, file) => {
  expect(fileNameFor(name)).toBe(file);
});
