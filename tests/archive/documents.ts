import { readFileSync } from 'node:fs';

export const archived = (name: string): string =>
  readFileSync(new URL(`./${name}.kerfline.json`, import.meta.url), 'utf8');
