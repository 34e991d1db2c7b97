import { readFileSync, readdirSync } from 'node:fs';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';

const folder = new URL('../../samples/', import.meta.url);

function sampleAt(name: string): { readonly name: string; readonly text: string; readonly site: Site } {
  const text = readFileSync(new URL(name, folder), 'utf8');
  const reading = readSite(text);
  if (!reading.ok) throw new Error(`${name}: ${reading.problems.map(({ message }) => message).join('\n')}`);
  return { name, text, site: reading.site };
}

/** Every sample, read; throws when one has a problem. */
export const samples = readdirSync(folder)
  .filter((name) => name.endsWith('.kerfline.json'))
  .sort()
  .map(sampleAt);
