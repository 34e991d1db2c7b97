import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { checkFile, type SourceFile } from './support/house';
import { MOST_LINES, ROOMS } from './support/house-rules';
import { importsOf } from './support/imports';

const root = fileURLToPath(new URL('..', import.meta.url));

function readSources(): SourceFile[] {
  return readdirSync(`${root}src`, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll('\\', '/'))
    .map((full) => ({ path: full.slice(full.lastIndexOf('/src/') + 1), text: readFileSync(full, 'utf8') }));
}

const check = (path: string, ...lines: string[]) => checkFile({ path, text: lines.join('\n') });

describe('the house', () => {
  const sources = readSources();

  test('is read from where it stands', () => {
    const paths = sources.map(({ path }) => path);
    expect(paths).toContain('src/service-worker.ts');
    expect(paths).toContain('src/tooling/setup.mjs');
  });

  test('keeps its rules in every file', () => {
    expect(sources.flatMap(checkFile)).toEqual([]);
  }, 60_000);

  test('has an entry in package.json for every room that others import', () => {
    const { imports } = JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as { imports: object };
    const named = Object.keys(imports).map((key) => key.slice(1, key.indexOf('/')));
    const inner = Object.keys(ROOMS).filter((room) => room !== 'routes' && room !== 'tooling');
    expect([...new Set(named)].sort()).toEqual(inner.sort());
  });
});

describe('reading imports', () => {
  const specifiers = (path: string, text: string) => importsOf(path, text).map(({ specifier }) => specifier);

  test.each([
    ['a static import', "import { a } from '#plan/a';"],
    ['an import for its effect', "import '#plan/a';"],
    ['a type import', "import type { A } from '#plan/a';"],
    ['a re-export', "export { a } from '#plan/a';"],
    ['a re-export of everything', "export * from '#plan/a';"],
    ['a dynamic import', "const a = await import('#plan/a');"],
    ['a dynamic import in backquotes', 'const a = await import(`#plan/a`);'],
    ['an import inside a type', "let a: import('#plan/a').A;"],
    ['an old-style import', "import a = require('#plan/a');"],
    ['a call of require', "const a = require('#plan/a');"],
    ['an address of a module', "new Worker(new URL('#plan/a', import.meta.url));"],
    ['a glob', "import.meta.glob('#plan/a');"],
    ['a list of globs', "import.meta.glob(['#plan/a']);"]
  ])('finds %s', (_, text) => {
    expect(specifiers('src/units/planted.ts', text)).toEqual(['#plan/a']);
  });

  test('finds imports in every part of a component', () => {
    const text = [
      '<script module lang="ts">import type { A } from "#plan/a"; export const a: A = 1;</script>',
      '<script lang="ts">import B from "./B.svelte"; let c: import("#plan/c").C;</script>',
      '{#await import("#plan/d") then d}<B {d} {c} />{/await}'
    ].join('\n');
    expect(specifiers('src/ui/Planted.svelte', text).sort()).toEqual([
      '#plan/a',
      '#plan/c',
      '#plan/d',
      './B.svelte'
    ]);
  });

  test('does not take comments and strings for imports', () => {
    const text = "// import a from '#plan/a';\nexport const text = \"import a from '#plan/a'\";";
    expect(specifiers('src/units/planted.ts', text)).toEqual([]);
  });
});

describe('a planted breach is found', () => {
  test.each([
    ['an edge that is not in the table', 'src/physics/a.ts', "import { a } from '#plan/a';"],
    ['a type edge that is not in the table', 'src/units/a.ts', "import type { A } from '#plan/a';"],
    ['an edge by a relative path', 'src/plan/shapes/a.ts', "import { a } from '../../editor/a';"],
    ['an edge by a dynamic import', 'src/editor/a.ts', "export const a = () => import('#analysis/a');"],
    ['a value where only types are free', 'src/canvas/a.ts', "import { a } from '#analysis/a';"],
    ['a value among types', 'src/canvas/a.ts', "import { type A, a } from '#analysis/a';"],
    ['a page below the page', 'src/app/a.ts', "import page from '../routes/+page.svelte';"],
    ['a file outside the house', 'src/plan/a.ts', "import a from '../../tests/a';"],
    ['a computed name', 'src/plan/a.ts', 'export const a = (name: string) => import(name);'],
    ['svelte below the canvas', 'src/editor/a.ts', "import { tick } from 'svelte';"],
    ['svelte in storage', 'src/storage/a.ts', "import { tick } from 'svelte';"],
    ['svelte in the canvas', 'src/canvas/a.ts', "import type { Attachment } from 'svelte/attachments';"],
    ['konva below the canvas', 'src/plan/a.ts', "import Konva from 'konva/lib/Core.js';"],
    ['konva above the canvas', 'src/ui/A.svelte', '<script>import Konva from "konva";</script>'],
    ['zod outside the plan', 'src/exchange/a.ts', "import * as z from 'zod';"],
    ['a package that nobody knows', 'src/ui/a.ts', "import a from 'lodash';"],
    ['Node in the product', 'src/plan/a.ts', "import { readFileSync } from 'node:fs';"],
    ['a rune module below the page', 'src/editor/a.svelte.ts', 'export const a = 1;'],
    ['a component below the page', 'src/canvas/A.svelte', '<p>a</p>'],
    ['window', 'src/physics/a.ts', 'export const a = window.innerWidth;'],
    ['document', 'src/editor/a.ts', "export const a = document.querySelector('a');"],
    ['document by a detour', 'src/analysis/a.ts', 'export const a = globalThis.document;'],
    ['an unknown room', 'src/helpers/a.ts', 'export const a = 1;'],
    ['an unknown file in src', 'src/helper.ts', 'export const a = 1;'],
    ['an import by the service worker', 'src/service-worker.ts', "import { a } from '#plan/a';"],
    ['a long file', 'src/units/a.ts', 'export {};\n'.repeat(MOST_LINES + 1)],
    ['a long style sheet', 'src/ui/a.css', 'a {\n}\n'.repeat(MOST_LINES)]
  ])('%s', (_, path, text) => {
    expect(check(path, text)).toHaveLength(1);
  });
});

describe('what is allowed passes', () => {
  test.each([
    ['an edge of the table', 'src/physics/a.ts', "import { a } from '#units/a';"],
    ['types of the results', 'src/canvas/a.ts', "import type { A } from '#analysis/a';"],
    ['types of the results one by one', 'src/canvas/a.ts', "import { type A } from '#analysis/a';"],
    ['data of the room', 'src/plan/a.ts', "import a from './catalogue/wires.json';"],
    ['a parameter called document', 'src/plan/a.ts', 'export const a = (document: object) => document;'],
    ['a member called document', 'src/plan/a.ts', 'export const a = (b: { document: 1 }) => b.document;'],
    ['a sample in the app', 'src/app/a.ts', "import a from '../../samples/a.kerfline.json?raw';"],
    ['the worker’s entry', 'src/workers/a.ts', "new Worker(new URL('./b.ts', import.meta.url));"],
    ['types that Kit writes', 'src/routes/+page.ts', "import type { PageLoad } from './$types';"],
    ['the style sheet', 'src/routes/+layout.svelte', "<script>import '../app.css';</script>"],
    ['a file of the greatest length', 'src/units/a.ts', 'export {};\n'.repeat(MOST_LINES)]
  ])('%s', (_, path, text) => {
    expect(check(path, text)).toEqual([]);
  });
});
