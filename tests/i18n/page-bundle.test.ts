/** What the page shows before anything else is loaded must have its words by then: those of the bundle 'page'. */
import { readFileSync, existsSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { expect, test } from 'vitest';
import { messages as page } from '#i18n/en/bundles/page';
import { messages as views } from '#i18n/en/bundles/views';

const STATIC = /(?:^|\n)\s*(?:import|export)\s(?!type\b)[^;'"]*?['"]([^'"]+)['"]/g;
const SAID = /\bt\(\s*(?:'([\w.-]+)'|`([\w.-]*)\$\{)|'([a-z][\w-]*(?:\.[\w-]+)+)'/g;

/** They ask for their words when they are first opened. */
const LOADS_ITS_OWN: ReadonlySet<string> = new Set(['src/ui/parts/Term.svelte']);

function resolved(specifier: string, from: string): string | null {
  const bare = specifier.startsWith('#')
    ? join('src', specifier.slice(1))
    : specifier.startsWith('.')
      ? posix.join(dirname(from), specifier)
      : null;
  if (bare === null) return null;
  return (
    [bare, `${bare}.ts`, `${bare}.svelte.ts`, `${bare}/index.ts`].find(
      (path) => /\.\w+$/.test(path) && existsSync(path)
    ) ?? null
  );
}

/** Everything that comes with the page, without what is imported when it is first looked at. */
function comesWith(start: string): ReadonlySet<string> {
  const found = new Set<string>();
  const visit = (path: string): void => {
    if (found.has(path)) return;
    found.add(path);
    for (const [, specifier] of readFileSync(path, 'utf8').matchAll(STATIC)) {
      const next = resolved(specifier!, path);
      if (next && /\.(ts|svelte)$/.test(next)) visit(next);
    }
  };
  visit(start);
  return found;
}

test('whatever comes with the page finds its words in the bundle that comes with it', () => {
  const files = [...comesWith('src/routes/+page.svelte')].filter(
    (path) => !path.startsWith('src/i18n/') && !LOADS_ITS_OWN.has(path)
  );
  expect(files.length).toBeGreaterThan(150);
  const missing = files.flatMap((path) =>
    [...readFileSync(path, 'utf8').matchAll(SAID)].flatMap(([, key, start, quoted]) => {
      const keys = start
        ? Object.keys(views).filter((each) => each.startsWith(start))
        : [key ?? quoted ?? ''];
      return keys.filter((each) => each in views && !(each in page)).map((each) => `${path}: ${each}`);
    })
  );
  expect([...new Set(missing)]).toEqual([]);
});
