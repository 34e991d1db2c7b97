import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The package's root folder, with no separator at its end. */
export const ROOT = resolve(fileURLToPath(import.meta.url), '../../..');

/** What an installation depends on. */
export const INSTALL_INPUTS = ['package-lock.json', '.npmrc'];

/** What the built site depends on. */
export const BUILD_INPUTS = [
  'src',
  'static',
  'samples',
  'package.json',
  'package-lock.json',
  'svelte.config.js',
  'vite.config.ts',
  'tsconfig.json'
];

/**
 * Every file at or under a path of the package, in a fixed order; nothing where the path does not exist.
 * @param {string} path
 * @returns {string[]}
 */
function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

/**
 * SHA-256 over the names and bytes of files, and over further words, as hexadecimal. Names count, so that a rename is a
 * change; times do not, so that two clones agree.
 * @param {string[]} paths files or folders, relative to the package's root
 * @param {string[]} words
 */
export function fingerprint(paths, words = []) {
  const hash = createHash('sha256').update(JSON.stringify(words));
  for (const file of paths.flatMap((path) => filesUnder(join(ROOT, path)))) {
    const bytes = readFileSync(file);
    hash.update(JSON.stringify([relative(ROOT, file).split(sep).join('/'), bytes.length])).update(bytes);
  }
  return hash.digest('hex');
}
