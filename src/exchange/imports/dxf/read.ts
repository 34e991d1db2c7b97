/** From a file's bytes to a drawing. Nothing in it is run, fetched or shown as anything but lines and names. */
import type { Job } from '../../job';
import { MOST, Unreadable, type Drawing } from './drawing';
import { expanded } from './expand';
import { NoGroups } from './groups';
import { contentOf } from './sections';

/** How the other kind of the format, packed in numbers, begins: behind a word that names who wrote it. */
const BINARY = /^[^\n]{1,40} Binary DXF\r\n/i;
/** How drawings begin that are no exchange format at all: a version, as six letters and digits. */
const SEALED = /^AC\d{4}(?!\r?\n)/;
const HEAD = 64;

/** UTF-8, or what drawings were written in before: the same for everything but the letters of names. */
function decoded(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

function textOf(bytes: Uint8Array): string {
  const head = String.fromCharCode(...bytes.subarray(0, HEAD));
  if (BINARY.test(head)) throw new Unreadable('binary');
  if (SEALED.test(head)) throw new Unreadable('sealed');
  if (head.includes('\u0000') || head.trim() === '') throw new Unreadable('none');
  const text = decoded(bytes);
  return text.includes('\n') ? text : text.replaceAll('\r', '\n');
}

/** A letter that an older drawing could not hold is written by its number. */
const spelled = (name: string): string =>
  name.replace(/\\U\+([0-9A-F]{4})/gi, (_, digits: string) => String.fromCharCode(parseInt(digits, 16)));

/**
 * At most `MOST.file` bytes. Rejects with `Unreadable` for what is no such drawing, is damaged or holds too much, and with
 * the signal's reason for a job that was ended.
 */
export async function readDxf(bytes: Uint8Array, job: Job): Promise<Drawing> {
  if (bytes.length > MOST.file) throw new Unreadable('tooMuch');
  try {
    const content = await contentOf(textOf(bytes), job);
    const { layers, paths } = await expanded(content, job);
    if (paths.length === 0) throw new Unreadable('empty');
    const leftOut = [...content.leftOut].map(([what, count]) => ({ what, count }));
    return {
      metresPerUnit: content.metresPerUnit,
      layers: layers.map((layer) => ({ ...layer, name: spelled(layer.name) })),
      paths,
      leftOut: leftOut.sort((a, b) => b.count - a.count)
    };
  } catch (problem) {
    if (problem instanceof NoGroups) throw new Unreadable(problem.kind);
    throw problem;
  }
}
