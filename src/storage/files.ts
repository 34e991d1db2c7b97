/** Opening and saving files: by the browser's own picker where there is one, else by a file field and a download. */

/** As much of the File System Access handle as is needed. */
export interface FileHandle {
  readonly name: string;
  getFile(): Promise<FileContent>;
  createWritable(): Promise<{
    write(text: string): Promise<void>;
    close(): Promise<void>;
    abort(): Promise<void>;
  }>;
  /** A handle that was kept over a reload has to be allowed again, which only a person's click may ask for. */
  queryPermission?(options: { readonly mode: 'readwrite' }): Promise<string>;
  requestPermission?(options: { readonly mode: 'readwrite' }): Promise<string>;
}

export interface FileContent {
  readonly name: string;
  readonly size: number;
  text(): Promise<string>;
}

/** What the page can do with files; a picker that the browser does not have is null. */
export interface FileHost {
  readonly pickToOpen: (() => Promise<FileHandle>) | null;
  readonly pickToSave: ((suggestedName: string) => Promise<FileHandle>) | null;
  /** Null when the person chose none. */
  chooseByField(): Promise<FileContent | null>;
  download(text: string, name: string): void;
}

/** Far above the largest site that the schema admits; a slip of the mouse onto a film must not fill the memory. */
export const LARGEST_FILE = 33_000_000;

export type Opened =
  | {
      readonly kind: 'opened';
      readonly name: string;
      readonly text: string;
      readonly handle: FileHandle | null;
    }
  | { readonly kind: 'too large'; readonly name: string; readonly size: number }
  | { readonly kind: 'cancelled' };

export type Saved =
  | { readonly kind: 'saved'; readonly name: string; readonly handle: FileHandle }
  | { readonly kind: 'downloaded'; readonly name: string }
  /** Somebody else has written to the file: nothing was. */
  | { readonly kind: 'changed elsewhere'; readonly name: string }
  | { readonly kind: 'cancelled' };

const isCancel = (problem: unknown) =>
  typeof problem === 'object' && problem !== null && 'name' in problem && problem.name === 'AbortError';

export async function readContent(content: FileContent, handle: FileHandle | null = null): Promise<Opened> {
  const { name, size } = content;
  if (size > LARGEST_FILE) return { kind: 'too large', name, size };
  return { kind: 'opened', name, text: await content.text(), handle };
}

/**
 * What was picked, null when the person gave up. Only a picker tells that so: the same error from a file means that the
 * browser broke off reading or writing it.
 */
async function picked(picking: Promise<FileHandle>): Promise<FileHandle | null> {
  try {
    return await picking;
  } catch (problem) {
    if (isCancel(problem)) return null;
    throw problem;
  }
}

/** Rejects only when a chosen file cannot be read. */
export async function openFile(host: FileHost): Promise<Opened> {
  if (host.pickToOpen) {
    try {
      const handle = await picked(host.pickToOpen());
      return handle ? await readContent(await handle.getFile(), handle) : { kind: 'cancelled' };
    } catch {
      // The file field may still reach it.
    }
  }
  const content = await host.chooseByField();
  return content ? readContent(content) : { kind: 'cancelled' };
}

const MODE = { mode: 'readwrite' } as const;

async function mayWrite(handle: FileHandle): Promise<boolean> {
  if (!handle.queryPermission || (await handle.queryPermission(MODE)) === 'granted') return true;
  return (await handle.requestPermission?.(MODE)) === 'granted';
}

/** A file that is not there any more, or cannot be read, has nothing that could be lost. */
async function isAsLeft(handle: FileHandle, isOurs: (text: string) => boolean): Promise<boolean> {
  try {
    return isOurs(await (await handle.getFile()).text());
  } catch {
    return true;
  }
}

async function writeTo(handle: FileHandle, text: string): Promise<Saved> {
  const writable = await handle.createWritable();
  try {
    await writable.write(text);
    await writable.close();
  } catch (problem) {
    await writable.abort().catch(() => undefined);
    throw problem;
  }
  return { kind: 'saved', name: handle.name, handle };
}

/**
 * Saves to `handle`, else to a file that the person picks, else as a download. Any failure but a cancelled picker ends
 * in a download: policies and frames forbid pickers that are there.
 * @param isOurs whether what stands in the file of `handle` may be written over
 */
export async function saveFile(
  host: FileHost,
  text: string,
  suggestedName: string,
  handle: FileHandle | null,
  isOurs: (text: string) => boolean = () => true
): Promise<Saved> {
  try {
    if (handle && (await mayWrite(handle))) {
      if (!(await isAsLeft(handle, isOurs))) return { kind: 'changed elsewhere', name: handle.name };
      return await writeTo(handle, text);
    }
    if (host.pickToSave) {
      const chosen = await picked(host.pickToSave(suggestedName));
      return chosen ? await writeTo(chosen, text) : { kind: 'cancelled' };
    }
  } catch {
    // Forbidden, full or broken off: the download does not depend on it.
  }
  host.download(text, suggestedName);
  return { kind: 'downloaded', name: suggestedName };
}

/** A file name that every system accepts, from what a person called the site. */
export function fileNameFor(siteName: string): string {
  const plain = siteName
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain || 'site'}.kerfline.json`;
}
