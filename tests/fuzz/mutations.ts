/** Ways to damage a document: a value at a time, or a stretch of its text. */
import type { Random } from './random';

type Container = Record<string, unknown> | unknown[];

const HOSTILE: readonly unknown[] = [
  null,
  true,
  '',
  'L1',
  '3',
  '__proto__',
  -1,
  0,
  0.5,
  2,
  1e9,
  -1e308,
  Number.MAX_SAFE_INTEGER + 2,
  [],
  {},
  [0, 0],
  [[0, 0]],
  { kind: 'circle' },
  { kind: 'polygon', points: [] },
  '\u0000\ud800\u202e',
  'x'.repeat(5_000)
];

function containersIn(root: Container): Container[] {
  const found: Container[] = [root];
  for (const container of found)
    for (const value of Object.values(container))
      if (typeof value === 'object' && value !== null) found.push(value as Container);
  return found;
}

/** Nudges a number as a hand or a unit slip would. */
const nudged = (value: number, random: Random): number =>
  random.pick([value * 1.01, value + 0.1, -value, value * 1000, value / 1000]);

/** Damages one value of the document in place. */
export function damageValue(root: Container, random: Random): void {
  const container = random.pick(containersIn(root).filter((each) => Object.keys(each).length > 0));
  const key = random.pick(Object.keys(container));
  const record = container as Record<string, unknown>;
  const value = record[key];
  switch (random.below(5)) {
    case 0:
      record[key] = random.pick(HOSTILE);
      break;
    case 1:
      if (Array.isArray(container)) container.splice(Number(key), 1);
      else Reflect.deleteProperty(container, key);
      break;
    case 2:
      if (Array.isArray(container)) container.push(structuredClone(value));
      else record[`${key} again`] = structuredClone(value);
      break;
    case 3:
      record[key] = typeof value === 'number' ? nudged(value, random) : value;
      break;
    default:
      record[key] = record[random.pick(Object.keys(container))];
  }
}

/** Cuts, doubles or overwrites a stretch of text. */
export function damageText(text: string, random: Random): string {
  const at = random.below(text.length);
  const stretch = random.below(12);
  switch (random.below(4)) {
    case 0:
      return text.slice(0, at) + text.slice(at + stretch);
    case 1:
      return text.slice(0, at) + text.slice(at, at + stretch) + text.slice(at);
    case 2:
      return (
        text.slice(0, at) +
        random.pick(['"', '{', ']', ',', '9', 'e9', '\\', '\u0000', '-', ' ']) +
        text.slice(at + 1)
      );
    default:
      return text.slice(0, at);
  }
}
