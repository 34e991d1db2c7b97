import { posix } from 'node:path';
import { Linter } from 'eslint';
import ts from 'typescript-eslint';
import { MOST_LINES, PAGE_GLOBALS, ROOMS, ROOT_FILES, type Room } from './house-rules';
import { importsOf, type Import } from './imports';

/** A file of the tree, by its path from the package's root with forward slashes. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

const CODE = /\.(ts|js|mjs|svelte)$/;
const COUNTED = /\.(ts|js|mjs|svelte|css)$/;
const COMPONENT = /\.svelte(\.ts)?$/;

function matches(name: string, patterns: readonly string[]): boolean {
  return patterns.some((pattern) =>
    pattern.endsWith('*') ? name.startsWith(pattern.slice(0, -1)) : name === pattern
  );
}

/** Where an import leads: a path from the package's root, or undefined for a package. */
function pathOf(specifier: string, from: string): string | undefined {
  const bare = specifier.replace(/\?.*$/, '');
  if (bare.startsWith('#')) return `src/${bare.slice(1)}`;
  if (bare.startsWith('/')) return bare.slice(1);
  if (bare.startsWith('.')) return posix.join(posix.dirname(from), bare);
  return undefined;
}

function roomOf(path: string): string | undefined {
  const [top, room, ...rest] = path.split('/');
  return top === 'src' && rest.length > 0 ? room : undefined;
}

function checkImport(file: string, name: string, room: Room, { specifier, typesOnly }: Import): string[] {
  if (specifier === undefined) return [`${file}: imports a module by a computed name`];
  // Kit writes this module for every page; it holds nothing but that page's types.
  if (name === 'routes' && specifier === './$types') return [];
  const target = pathOf(specifier, file);
  if (target === undefined) {
    return matches(specifier, room.packages) ? [] : [`${file}: ${name} may not import package ${specifier}`];
  }
  const other = roomOf(target);
  if (
    other === name ||
    matches(
      target,
      (room.outside ?? []).map((start) => `${start}*`)
    )
  )
    return [];
  if (other === undefined) return [`${file}: ${name} may not import ${target}`];
  if (room.rooms.includes(other)) return [];
  if (!room.typesOf?.includes(other)) return [`${file}: ${name} may not import ${other} (${specifier})`];
  return typesOnly ? [] : [`${file}: ${name} may import only types of ${other} (${specifier})`];
}

const linter = new Linter();
const MENTION = new RegExp(`\\b(${PAGE_GLOBALS.join('|')})\\b`);

function checkPageGlobals(file: SourceFile): string[] {
  // Whether a name is the page's or the file's own takes an analysis of scopes, which is slow.
  if (!MENTION.test(file.text)) return [];
  const messages = linter.verify(file.text, {
    files: ['**'],
    languageOptions: { parser: ts.parser },
    rules: { 'no-restricted-globals': ['error', { globals: PAGE_GLOBALS, checkGlobalObject: true }] }
  });
  return messages.map(({ line, message }) => `${file.path}:${line}: ${message}`);
}

function checkRoomFile(file: SourceFile, name: string, room: Room): string[] {
  const isComponent = COMPONENT.test(file.path);
  if (isComponent && !room.components) return [`${file.path}: ${name} may not hold components or runes`];
  const imports = importsOf(file.path, file.text);
  return [
    ...imports.flatMap((found) => checkImport(file.path, name, room, found)),
    ...(room.withoutPage ? checkPageGlobals(file) : [])
  ];
}

function checkRootFile(file: SourceFile): string[] {
  const packages = ROOT_FILES[file.path.slice('src/'.length)];
  if (packages === undefined) return [`${file.path}: no such file is provided for`];
  if (!CODE.test(file.path)) return [];
  return importsOf(file.path, file.text).flatMap(({ specifier }) =>
    specifier !== undefined && matches(specifier, packages)
      ? []
      : [`${file.path}: may not import ${specifier}`]
  );
}

function checkLength({ path, text }: SourceFile): string[] {
  const lines = text.replace(/\n$/, '').split('\n').length;
  return COUNTED.test(path) && lines > MOST_LINES ? [`${path}: ${lines} lines, at most ${MOST_LINES}`] : [];
}

/** Every breach of the house rules in one file under src, in words; none is an empty list. */
export function checkFile(file: SourceFile): string[] {
  const name = roomOf(file.path);
  if (name === undefined) return [...checkRootFile(file), ...checkLength(file)];
  const room = ROOMS[name];
  if (room === undefined) return [`${file.path}: ${name} is no room of the house`];
  return [...(CODE.test(file.path) ? checkRoomFile(file, name, room) : []), ...checkLength(file)];
}
