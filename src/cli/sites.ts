/** Files into sites, or into sentences about what is wrong with them. */
import { readFileSync } from 'node:fs';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';

export interface OpenedSite {
  readonly file: string;
  readonly site: Site;
}

type Sites =
  | { readonly ok: true; readonly sites: readonly OpenedSite[] }
  | { readonly ok: false; readonly problems: readonly string[] };

export const printable = (text: string): string => text.replace(/\p{Cc}/gu, '?');

function whyNot(error: unknown): string {
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'ENOENT') return 'there is no such file';
  return code === 'EISDIR' ? 'is a folder' : 'cannot be read';
}

function open(file: string): Site | readonly string[] {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (error) {
    return [`${printable(file)}: ${whyNot(error)}`];
  }
  const reading = readSite(text.replace(/^\uFEFF/, ''));
  return reading.ok ? reading.site : reading.problems.map(({ message }) => `${printable(file)}: ${message}`);
}

/** All or none. */
export function openSites(files: readonly string[]): Sites {
  const opened = files.map((file) => ({ file, content: open(file) }));
  const problems = opened.flatMap(({ content }) => ('format' in content ? [] : content));
  if (problems.length > 0) return { ok: false, problems };
  return {
    ok: true,
    sites: opened.flatMap(({ file, content }) => ('format' in content ? [{ file, site: content }] : []))
  };
}
