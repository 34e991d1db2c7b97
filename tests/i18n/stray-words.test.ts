import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { strayWordsIn, strayWordsInComponent } from '../support/stray-words';

const ROOMS = ['units', 'plan', 'analysis', 'editor', 'storage', 'workers', 'canvas', 'ui', 'app'];

/** Nobody reads them: names in storage, and codes that travel between rooms or stand in a report. */
const CODES: ReadonlySet<string> = new Set(['Kerfline']);

const files = ROOMS.flatMap((room) =>
  readdirSync(`src/${room}`, { recursive: true, encoding: 'utf8' }).map((name) => `src/${room}/${name}`)
);

describe('whatever people read is a message', () => {
  it('in modules and in components', () => {
    const found = files.flatMap((file) => {
      const read = file.endsWith('.svelte')
        ? strayWordsInComponent
        : file.endsWith('.ts')
          ? strayWordsIn
          : null;
      const words = read?.(readFileSync(file, 'utf8')) ?? [];
      return words.filter(({ text }) => !CODES.has(text)).map(({ line, text }) => `${file}:${line}: ${text}`);
    });
    expect(found).toEqual([]);
  });
});
