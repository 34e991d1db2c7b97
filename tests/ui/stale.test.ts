import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const css = readFileSync(new URL('../../src/app.css', import.meta.url), 'utf8');

test('what marks old figures is not inherited: it comes and goes at every move of a hand, over tables of any length', () => {
  const rule = /@keyframes grow-stale \{\s*to \{([^}]*)\}/.exec(css)?.[1] ?? '';
  const properties = [...rule.matchAll(/([\w-]+):/g)].map(([, name]) => name!);
  expect(properties).not.toEqual([]);
  // of those that CSS does not hand down to what stands inside
  for (const name of properties) expect(name).toMatch(/^(outline|background|border|box-shadow|opacity)/);
});
