/** From the file's text to plain values, or the reason why not. */
import { jsonFault } from './json-fault';
import { type Problem, problem } from './problem';

/** Characters; far above any site with pictures, low enough to hold and walk in a browser. */
const LARGEST_FILE = 32 * 1024 * 1024;

export type Parsed =
  { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly problem: Problem };

export function parseJson(text: string): Parsed {
  if (text.length > LARGEST_FILE) {
    const found = `${(text.length / 1024 / 1024).toFixed(1)} million characters`;
    return { ok: false, problem: problem([], found, 'at most 32 million characters') };
  }
  // Some editors put a byte order mark in front; JSON.parse refuses it.
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (body.trim() === '') return { ok: false, problem: problem([], 'an empty file', 'a site document') };
  try {
    return { ok: true, value: JSON.parse(body) as unknown };
  } catch {
    return { ok: false, problem: notJson(body) };
  }
}

function notJson(text: string): Problem {
  const fault = jsonFault(text);
  // Sound JSON that the engine refuses all the same is nested beyond its stack.
  if (!fault) return problem([], 'lists or objects nested too deeply to read', 'at most 32 levels');
  const { line, column, found, expected } = fault;
  const message = `The file is not JSON: line ${line}, column ${column}: found ${found}, expected ${expected}.`;
  return { path: '', found, expected, message };
}
