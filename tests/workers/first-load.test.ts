/** What the first readout waits for: all that the worker's entry reaches without a dynamic import. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const STATIC = /^(?:import|export)\s(?!type\b)[^;]*?from\s+'([^']+)'/gm;
const ONLY_TYPES = /^(?:import|export)\s*\{(?:\s*type\s[^,}]+,?)+\s*\}/;

/** The file in `src` that an import means; the package's name for anything else. */
function meant(from: string, specifier: string): string {
  if (!/^[#.]/.test(specifier)) return specifier;
  const path = specifier.startsWith('#')
    ? join('src', specifier.slice(1))
    : normalize(join(dirname(from), specifier));
  return existsSync(`${root}${path}.ts`) ? `${path}.ts` : path;
}

function reached(entry: string): ReadonlySet<string> {
  const found = new Set([entry]);
  for (const file of found) {
    if (!file.endsWith('.ts')) continue;
    const text = readFileSync(`${root}${file}`, 'utf8');
    for (const [statement, specifier] of text.matchAll(STATIC))
      if (!ONLY_TYPES.test(statement)) found.add(meant(file, specifier!));
  }
  return found;
}

describe('the first load of the worker', () => {
  const first = reached('src/workers/calc.worker.ts');

  it('has what a first readout is made with', () => {
    expect([...first]).toEqual(
      expect.arrayContaining(['comlink', 'src/analysis/assessor.ts', 'src/physics/inductance/loop.ts'])
    );
  });

  it('has neither the schema’s library nor what answers questions', () => {
    expect(
      [...first].filter((path) => /^zod|plan\/edits\/index|analysis\/(questions|later)/.test(path))
    ).toEqual([]);
  });
});
