import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { speakLanguage } from '#i18n/load';
import { READING_QUANTITIES, type Quantity } from '#plan/schema';
import {
  echoOf,
  isOverRange,
  readAside,
  readTyped,
  typedText,
  UNITS_OF
} from '#ui/field-check/readings/typed';

const value = (text: string, quantity: Quantity, unit = UNITS_OF[quantity][0]): number => {
  const typed = readTyped(text, quantity, unit);
  if (typed.kind !== 'value') throw new Error(`${text} is ${typed.kind}`);
  return typed.value;
};

describe('what people type', () => {
  test.each<[string, Quantity, number]>([
    ['98 µH', 'inductance_H', 98e-6],
    ['0.098 mH', 'inductance_H', 98e-6],
    ['98', 'inductance_H', 98e-6],
    ['98,5', 'inductance_H', 98.5e-6],
    ['1.2 k', 'resistanceDc_ohm', 1200],
    ['1.2', 'resistanceDc_ohm', 1.2],
    ['850 mΩ', 'resistanceDc_ohm', 0.85],
    ['43.21', 'frequency_Hz', 43_210],
    ['43210 Hz', 'frequency_Hz', 43_210],
    ['200', 'insulation_ohm', 200e6],
    ['1.5 G', 'insulation_ohm', 1.5e9],
    ['14.5', 'q', 14.5],
    ['0', 'insulation_ohm', 0]
  ])('%s as %s is %f', (text, quantity, stored) => {
    expect(value(text, quantity)).toBeCloseTo(stored, 12);
  });

  test('a bare number has the unit that stands beside the field, a typed unit goes before it', () => {
    expect(value('0.098', 'inductance_H', 'mH')).toBeCloseTo(98e-6, 12);
    expect(value('98 µH', 'inductance_H', 'mH')).toBeCloseTo(98e-6, 12);
    expect(value('1.5', 'insulation_ohm', 'GΩ')).toBe(1.5e9);
    expect(value('950', 'frequency_Hz', 'Hz')).toBe(950);
  });

  test('a response is a drop, with a minus or without; only a plus is a rise', () => {
    expect(value('0.8', 'deltaLOverL')).toBeCloseTo(-0.008, 12);
    expect(value('-0.8 %', 'deltaLOverL')).toBeCloseTo(-0.008, 12);
    expect(value('+0.2', 'deltaLOverL')).toBeCloseTo(0.002, 12);
    expect(Object.is(value('0', 'deltaLOverL'), 0)).toBe(true);
  });

  test.each(['OL', 'ol', 'O.L', 'O. L.', '0L', '>2000', '> 2 GΩ', '≥ 999', 'over range', 'Over-range', 'overload', '∞', 'Überlauf', 'über Bereich']) // prettier-ignore
  ('%s is over the range', (text) => {
    expect(isOverRange(text)).toBe(true);
    expect(readTyped(text, 'insulation_ohm', 'MΩ')).toEqual({ kind: 'over range' });
  });

  test.each(['1', '1.', '2000', 'oh', 'low', '-5', '<1', 'over 9000'])('%s is not', (text) => {
    expect(isOverRange(text)).toBe(false);
  });

  test.each<[string, Quantity]>([
    ['abc', 'q'],
    ['12 kHz', 'inductance_H'],
    ['-3', 'resistanceDc_ohm'],
    ['5 H', 'inductance_H']
  ])('%s as %s: what is no figure says why, and only that', (text, quantity) => {
    const typed = readTyped(text, quantity, UNITS_OF[quantity][0]);
    expect(typed).toMatchObject({ kind: 'refused', reason: expect.stringMatching(/\S/) as string });
  });

  test('nothing typed is nothing, and any text at all is one of the four', () => {
    expect(readTyped('  ', 'q', undefined)).toEqual({ kind: 'nothing' });
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), fc.constantFrom(...READING_QUANTITIES), (text, quantity) => {
        const { kind } = readTyped(text, quantity, UNITS_OF[quantity][0]);
        expect(['nothing', 'value', 'over range', 'refused']).toContain(kind);
      }),
      { seed: 8, numRuns: 2_000 }
    );
  });
});

describe('a kept figure in the form again', () => {
  const figures: fc.Arbitrary<readonly [Quantity, number]> = fc
    .tuple(fc.constantFrom(...READING_QUANTITIES), fc.double({ min: 0.01, max: 9.99, noNaN: true }))
    .map(([quantity, mantissa]) => {
      const size = { inductance_H: 1e-5, deltaLOverL: -0.01, frequency_Hz: 1e4 } as const;
      return [quantity, mantissa * ((size as Partial<Record<Quantity, number>>)[quantity] ?? 1)] as const;
    });

  test('reads as what it was, in English and in German', async () => {
    for (const language of ['en', 'de'] as const) {
      await speakLanguage(language, ['page']);
      fc.assert(
        fc.property(figures, ([quantity, stored]) => {
          const back = value(typedText(stored, quantity), quantity);
          expect(Math.abs(back / stored - 1)).toBeLessThan(1e-9);
        }),
        { seed: 8, numRuns: 1_000 }
      );
    }
    await speakLanguage('en', ['page', 'views']);
  });

  test('a rise keeps its plus', () => {
    expect(typedText(0.002, 'deltaLOverL')).toBe('+0.2 %');
    expect(value('+0.2 %', 'deltaLOverL')).toBeCloseTo(0.002, 12);
  });

  test('what was typed is told back only where it says something else', () => {
    expect(echoOf('98 µH', 98e-6, 'inductance_H')).toBe('');
    expect(echoOf('0.098 mH', 98e-6, 'inductance_H')).toBe('98 µH');
    expect(echoOf('1.2 k', 1200, 'resistanceDc_ohm')).toBe('1200 Ω');
  });
});

test('what stands beside the figures: nothing, a value in the units shown, or a reason', () => {
  const range = { min: -60, max: 90 };
  expect(readAside(' ', 'temperature', range, 'metric')).toBeUndefined();
  expect(readAside('68', 'temperature', range, 'imperial')).toBeCloseTo(20, 9);
  expect(readAside('12 °C', 'temperature', range, 'imperial')).toBeCloseTo(12, 9);
  expect(readAside('300', 'temperature', range, 'metric')).toMatchObject({
    reason: expect.stringContaining('90') as string
  });
  expect(readAside('warm', 'temperature', range, 'metric')).toHaveProperty('reason');
});
