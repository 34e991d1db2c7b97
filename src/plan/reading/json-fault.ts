/**
 * Where a text stops being JSON. The engines word and place this differently, so the file is walked once more, by hand
 * and without recursion, after `JSON.parse` has refused it.
 */
import { t } from '#i18n/message';
import { quoted } from './problem';

export interface JsonFault {
  /** Both counted from 1. */
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly expected: string;
}

type Next = 'value' | 'firstValue' | 'name' | 'firstName' | 'colon' | 'afterValue' | 'afterMember' | 'end';

interface Stop {
  readonly at: number;
  readonly expected: string;
}

const SPACE = /[ \t\n\r]*/y;
const SCALAR = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const WORD = /[\p{L}\p{N}_.+-]{1,20}|./suy;

function matchEnd(pattern: RegExp, text: string, at: number): number | null {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : null;
}

/** End of the text in double quotes that starts at `start`. A loop: one pattern for all of it overflows on megabytes. */
function stringEnd(text: string, start: number): number | Stop {
  let at = start + 1;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return at + 1;
    if (code < 0x20) return { at, expected: t('read.json.quoteBeforeLineEnd') };
    if (code !== 0x5c) {
      at += 1;
      continue;
    }
    const end = matchEnd(ESCAPE, text, at);
    if (end === null) return { at, expected: t('read.json.escape') };
    at = end;
  }
  return { at, expected: t('read.json.quote') };
}

/** Offset and expectation of the first fault, or null for sound JSON. */
function walk(text: string): Stop | null {
  const open: ('[' | '{')[] = [];
  const afterValue = (): Next =>
    open.length === 0 ? 'end' : open[open.length - 1] === '[' ? 'afterValue' : 'afterMember';
  let next: Next = 'value';
  let at = 0;
  for (;;) {
    at = matchEnd(SPACE, text, at) ?? at;
    const stop: Stop = { at, expected: t(`read.json.${next}`) };
    const char = text[at];
    if (char === undefined) return next === 'end' ? null : stop;
    const wantsValue: boolean = next === 'value' || next === 'firstValue';
    const wantsName: boolean = next === 'name' || next === 'firstName';
    const closes =
      char === ']'
        ? next === 'firstValue' || next === 'afterValue'
        : next === 'firstName' || next === 'afterMember';
    if ((char === ']' || char === '}') && closes) {
      open.pop();
      next = afterValue();
      at += 1;
    } else if (wantsValue && (char === '[' || char === '{')) {
      open.push(char);
      next = char === '[' ? 'firstValue' : 'firstName';
      at += 1;
    } else if (char === '"' && (wantsValue || wantsName)) {
      const end = stringEnd(text, at);
      if (typeof end !== 'number') return end;
      at = end;
      next = wantsName ? 'colon' : afterValue();
    } else if (wantsValue) {
      const end = matchEnd(SCALAR, text, at);
      if (end === null) return stop;
      at = end;
      next = afterValue();
    } else if (char === ':' && next === 'colon') {
      next = 'value';
      at += 1;
    } else if (char === ',' && (next === 'afterValue' || next === 'afterMember')) {
      next = next === 'afterValue' ? 'value' : 'name';
      at += 1;
    } else {
      return stop;
    }
  }
}

const inWords = (text: string): string => (/^\p{Cc}/u.test(text) ? t('read.json.control') : quoted(text));

/** Null when the text is sound JSON after all. */
export function jsonFault(text: string): JsonFault | null {
  const stop = walk(text);
  if (!stop) return null;
  const lineStart = text.lastIndexOf('\n', stop.at - 1) + 1;
  const end = matchEnd(WORD, text, stop.at);
  return {
    line: text.slice(0, lineStart).split('\n').length,
    column: stop.at - lineStart + 1,
    found: end === null ? t('read.json.end') : inWords(text.slice(stop.at, end)),
    expected: stop.expected
  };
}
