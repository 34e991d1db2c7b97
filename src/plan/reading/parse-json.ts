/** From the file's text to plain values, or the reason why not. */
import { t } from '#i18n/message';
import { fixed } from '#units/digits';
import { jsonFault } from './json-fault';
import { type Problem, problem } from './problem';

/** Characters; far above any site with pictures, low enough to hold and walk in a browser. */
const LARGEST_FILE = 32 * 1024 * 1024;

export type Parsed =
  { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly problem: Problem };

export function parseJson(text: string): Parsed {
  if (text.length > LARGEST_FILE) {
    const found = t('read.millionCharacters', { size: fixed(text.length / 1024 / 1024, 1) });
    return { ok: false, problem: problem([], found, t('read.atMostMillion')) };
  }
  // Some editors put a byte order mark in front; JSON.parse refuses it.
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (body.trim() === '')
    return { ok: false, problem: problem([], t('read.emptyFile'), t('read.siteDocument')) };
  try {
    return { ok: true, value: JSON.parse(body) as unknown };
  } catch {
    return { ok: false, problem: notJson(body) };
  }
}

function notJson(text: string): Problem {
  const fault = jsonFault(text);
  // Sound JSON that the engine refuses all the same is nested beyond its stack.
  if (!fault) return problem([], t('read.tooDeep'), t('read.levels', { most: 32 }));
  const { line, column, found, expected } = fault;
  const message = t('read.notJson', { line, column, found, expected });
  return { path: '', found, expected, message };
}
