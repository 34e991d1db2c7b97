/**
 * What no document may contain whatever its fields mean: names that reach into an object's prototype, nesting without
 * end, numbers that overflowed, and sheer number of values. Walks with a list of its own, so depth cannot exhaust the stack.
 */
import { t } from '#i18n/message';
import { COUNTS } from '../bounds';
import { type Path, type Problem, inWords, problem, quoted } from './problem';

const DEEPEST = 32;
const LONGEST_LIST = 10_000;
const MOST_VALUES = 1_000_000;
const FORBIDDEN: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

interface Place {
  readonly value: unknown;
  readonly key: PropertyKey | null;
  readonly parent: Place | null;
  readonly depth: number;
}

function pathOf(place: Place): Path {
  const keys: PropertyKey[] = [];
  for (let at: Place | null = place; at && at.key !== null; at = at.parent) keys.unshift(at.key);
  return keys;
}

/** A point counts as one value: a drawing under the plan is hundreds of thousands of them. */
const isPoint = (value: readonly unknown[]): boolean =>
  value.length === 2 && Number.isFinite(value[0]) && Number.isFinite(value[1]);

function below(place: Place): Place[] {
  const { value } = place;
  const at = (key: PropertyKey, each: unknown): Place => ({
    value: each,
    key,
    parent: place,
    depth: place.depth + 1
  });
  if (Array.isArray(value) && isPoint(value)) return [];
  if (Array.isArray(value)) return value.map((each: unknown, index) => at(index, each));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value as Record<string, unknown>).map(([key, each]) => at(key, each));
}

function fault(place: Place): Problem | null {
  const { key, value, depth } = place;
  const wrong = (found: string, expected: string) => problem(pathOf(place), found, expected);
  if (typeof key === 'string' && FORBIDDEN.has(key))
    return wrong(t('read.fieldNamed', { name: quoted(key) }), t('read.anotherName'));
  // the paths of a drawing under the plan are the longest of all lists
  const most = key === 'paths' ? COUNTS.linePaths : LONGEST_LIST;
  if (Array.isArray(value) && value.length > most)
    return wrong(inWords(value), t('read.listAtMost', { most }));
  if (depth > DEEPEST)
    return wrong(t('read.nesting', { most: DEEPEST }), t('read.levels', { most: DEEPEST }));
  return null;
}

export interface Scan {
  /** Reasons not to look at the document any closer. */
  readonly unsafe: readonly Problem[];
  /** Numbers that overflowed, also in fields that the schema does not know and would pass on. */
  readonly infinite: readonly Problem[];
}

export function scan(root: unknown): Scan {
  const unsafe: Problem[] = [];
  const infinite: Problem[] = [];
  const waiting: Place[] = [{ value: root, key: null, parent: null, depth: 0 }];
  let seen = 0;
  for (let place = waiting.pop(); place; place = waiting.pop()) {
    const { value } = place;
    seen += 1;
    if (seen > MOST_VALUES) {
      unsafe.push(
        problem([], t('read.moreValues', { most: MOST_VALUES }), t('read.values', { most: MOST_VALUES }))
      );
      break;
    }
    const wrong = fault(place);
    if (wrong) unsafe.push(wrong);
    // What lies below a fault is refused with it, and may be what made it one.
    else for (const each of below(place).reverse()) waiting.push(each);
    if (typeof value === 'number' && !Number.isFinite(value))
      infinite.push(problem(pathOf(place), inWords(value), t('read.finite')));
  }
  return { unsafe, infinite };
}
