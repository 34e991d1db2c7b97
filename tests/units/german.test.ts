import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { speak, spokenLanguage } from '#i18n/message';
import { speakWhole } from '#i18n/whole';
import { figures, fixed } from '#units/digits';
import { format } from '#units/format';
import { formatForEdit } from '#units/format-for-edit';
import { QUANTITY_KINDS, type UnitSystem } from '#units/kind';
import { readNumber } from '#units/number-literal';
import { parseQuantity } from '#units/parse';

beforeAll(() => {
  speakWhole('de');
});
afterAll(() => {
  speakWhole('en');
});

const SEED = 20251125;
const PATIENCE = 60_000;
const systems: readonly UnitSystem[] = ['metric', 'imperial'];

const valueOf = (text: string, kind: Parameters<typeof parseQuantity>[1], system: UnitSystem): number => {
  const result = parseQuantity(text, kind, system);
  return result.ok ? result.value : NaN;
};
const reasonOf = (text: string): string => {
  const result = parseQuantity(text, 'length', 'metric');
  return result.ok ? '' : result.reason;
};

describe('what people type in German', () => {
  it.each([
    ['1,8 m', 1.8],
    ['1,8', 1.8],
    ['1.8 m', 1.8],
    ['1,234 m', 1.234],
    ['1.234,5 m', 1234.5],
    ['1,234.5 m', 1234.5],
    ['180 cm', 1.8],
    [',5 m', 0.5],
    ['3,5 - 2 * 0,25 m', 3],
    ['6\'-6,5"', 6 * 0.3048 + 6.5 * 0.0254]
  ])('%s', (text, metres) => {
    expect(valueOf(text, 'length', 'metric')).toBeCloseTo(metres, 12);
  });

  it.each([
    ['78 Zoll', 'length', 1.9812],
    ['6 Fuß', 'length', 1.8288],
    ['12 Sekunden', 'time', 12],
    ['2 Minuten', 'time', 120],
    ['3,2 Prozent', 'ratio', 0.032]
  ] as const)('%s', (text, kind, value) => {
    expect(valueOf(text, kind, 'metric')).toBeCloseTo(value, 12);
  });

  it('asks where a point may part thousands, and offers both readings', () => {
    expect(reasonOf('1.234 m')).toBe(
      '„1.234“ lässt sich auf zwei Arten lesen; schreiben Sie 1,234 mit Komma oder 1234 ohne Punkt'
    );
    expect(reasonOf('.125')).toContain('0,125');
  });

  it('says in German why it does not understand', () => {
    expect(reasonOf('2 kHz')).toContain('ist hier keine Einheit (Länge)');
    expect(reasonOf('1,2,3')).toContain('ist keine Zahl');
  });
});

describe('what a language reads', () => {
  it.each([
    ['1.234', '.', 1.234],
    ['1,234', ',', 1.234],
    ['1.5e3', '.', 1500],
    ['1,5e3', ',', 1500],
    ['1,5', '.', 1.5],
    ['1.5', ',', 1.5],
    ['12.345.678', '.', 12345678],
    ['12.345.678', ',', 12345678],
    ['12,345,678', ',', 12345678]
  ] as const)('%s with the decimal sign %s', (text, sign, value) => {
    expect(readNumber(text, sign)).toBe(value);
  });

  it.each([
    ['1,234', '.'],
    ['1.234', ',']
  ] as const)('%s with the decimal sign %s is ambiguous', (text, sign) => {
    expect(() => readNumber(text, sign)).toThrow();
  });
});

describe('what people read in German', () => {
  it('has a decimal comma everywhere', () => {
    expect(format(1.8, 'length', 'metric').text).toBe('1,80 m');
    expect(format(0.0324, 'ratio', 'metric').text).toBe('3,24 %');
    expect(formatForEdit(1.234, 'length', 'metric')).toBe('1,234 m');
    expect(fixed(-0.25, 2)).toBe('−0,25');
    expect(figures(12.345, 3)).toBe('12,3');
  });

  it('parts no thousands, which a point could be taken for', () => {
    expect(format(12345.678, 'length', 'metric').text).toBe('12345,678 m');
  });
});

describe('10,000 values as an edit field shows them', () => {
  const magnitudes = fc
    .tuple(fc.double({ min: -10, max: 10, noNaN: true }), fc.integer({ min: -3, max: 3 }))
    .map(([mantissa, exponent]) => mantissa * 10 ** exponent);
  const cases = fc.tuple(
    fc.constantFrom(...QUANTITY_KINDS.filter((kind) => kind !== 'count')),
    fc.constantFrom(...systems),
    magnitudes
  );

  it('are read back in German', { timeout: PATIENCE }, () => {
    const { counterexample } = fc.check(
      fc.property(cases, ([kind, system, value]) => {
        const shown = formatForEdit(value, kind, system);
        const back = valueOf(shown, kind, system);
        const allowed =
          kind === 'length' ? 1e-4 : kind === 'smallLength' ? 1e-6 : 1e-9 * Math.max(1, Math.abs(value));
        return (
          !shown.includes('.') &&
          Math.abs(back - value) <= allowed &&
          formatForEdit(back, kind, system) === shown
        );
      }),
      { numRuns: 10_000, seed: SEED }
    );
    expect(counterexample).toBeNull();
  });

  it('are never read as another value where the other language is spoken', { timeout: PATIENCE }, () => {
    const words = { 'refusal.commaOrGroup': '{text}' };
    const { counterexample } = fc.check(
      fc.property(cases, ([kind, system, value]) => {
        const shown = formatForEdit(value, kind, system);
        const german = valueOf(shown, kind, system);
        speak('en', words);
        const english = valueOf(shown, kind, system);
        speak('de', {});
        return Number.isNaN(english) || english === german;
      }),
      { numRuns: 10_000, seed: SEED }
    );
    expect(counterexample).toBeNull();
    expect(spokenLanguage()).toBe('de');
  });
});
