/** Why a file was refused, in words. Text taken from the file is shortened and loses its control characters first. */
import { t } from '#i18n/message';

export interface Problem {
  /** Where in the document, like `loops[2].turns`; empty when the file as a whole is meant. */
  readonly path: string;
  readonly found: string;
  readonly expected: string;
  /** One plain sentence with all three. */
  readonly message: string;
}

export type Path = readonly PropertyKey[];

const LONGEST_TEXT = 60;
const LONGEST_PATH = 200;

function shorten(text: string, longest = LONGEST_TEXT): string {
  // Cut first: the text may be megabytes long.
  const clean = text.slice(0, longest * 2).replace(/[\p{C}\p{Zl}\p{Zp}]+/gu, ' ');
  const characters = [...clean];
  const whole = characters.length <= longest && text.length <= longest * 2;
  return whole ? clean : `${characters.slice(0, longest).join('')}…`;
}

export const quoted = (text: string): string => `"${shorten(text)}"`;

function pathText(path: Path): string {
  const parts = path.map((part, index) => {
    if (typeof part === 'number') return `[${part}]`;
    const key = String(part);
    if (!/^[A-Za-z_$][\w$]*$/.test(key) || key.length > LONGEST_TEXT) return `[${quoted(key)}]`;
    return index === 0 ? key : `.${key}`;
  });
  return shorten(parts.join(''), LONGEST_PATH);
}

export function problem(path: Path, found: string, expected: string): Problem {
  const where = pathText(path);
  const message = t('read.problem', { where: where === '' ? t('read.theFile') : where, found, expected });
  return { path: where, found, expected, message };
}

/** A value of the file in words. */
export function inWords(value: unknown): string {
  if (value === undefined) return t('read.nothing');
  if (value === null) return 'null';
  if (typeof value === 'string') return t('read.text', { text: quoted(value) });
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : t('read.hugeNumber');
  if (typeof value === 'boolean') return String(value);
  return Array.isArray(value) ? t('read.listOf', { count: value.length }) : t('read.object');
}

/** The same problem of a part of a document, told of the whole: `prefix` as it stands in paths, like `variants[0].design`. */
export function under(prefix: string, { path, found, expected, message }: Problem): Problem {
  const where = path === '' ? prefix : `${prefix}${path.startsWith('[') ? '' : '.'}${path}`;
  const sentence = (place: string) => t('read.problem', { where: place, found, expected });
  const isUsual = message === sentence(path === '' ? t('read.theFile') : path);
  return { path: where, found, expected, message: isUsual ? sentence(where) : `${where}: ${message}` };
}
