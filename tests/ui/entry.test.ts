import { describe, expect, test } from 'vitest';
import { readEntry, stepEntry, type EntryRule } from '#ui/fields/entry';

const width: EntryRule = { kind: 'length', system: 'metric', min: 0.05, max: 500 };
const turns: EntryRule = { kind: 'count', system: 'metric', min: 1, max: 50 };

describe('reading an entry', () => {
  // 1.8 m, and six feet and a half of 0.3048 m.
  test.each([
    ['1.8', 1.8],
    ['1,8 m', 1.8],
    ['180cm', 1.8],
    ['6\'-6"', 6.5 * 0.3048],
    ['78in', 6.5 * 0.3048]
  ])('%s', (text, value) => {
    const reading = readEntry(text, width);
    expect(reading.ok && reading.value).toBeCloseTo(value, 9);
  });

  test.each(['0', '501', '-2'])('%s m is refused with the range', (text) => {
    const reading = readEntry(text, width);
    expect(reading).toMatchObject({ ok: false });
    expect(!reading.ok && reading.reason).toMatch(/0\.05.*500/);
  });

  test('the bounds themselves are admitted', () => {
    expect(readEntry('0.05', width)).toMatchObject({ ok: true });
    expect(readEntry('500', width)).toMatchObject({ ok: true });
  });

  test.each(['', 'wide', '2.5'])('"%s" is no number of turns', (text) => {
    expect(readEntry(text, turns)).toMatchObject({ ok: false });
  });
});

describe('stepping', () => {
  test('stays within the bounds', () => {
    expect(stepEntry(1, turns, -1, false)).toBe(1);
    expect(stepEntry(48, turns, 1, true)).toBe(50);
    expect(stepEntry(3, turns, 1, false)).toBe(4);
  });

  test('goes up and down again to where it began', () => {
    expect(stepEntry(stepEntry(1.8, width, 1, false), width, -1, false)).toBeCloseTo(1.8, 12);
  });
});
