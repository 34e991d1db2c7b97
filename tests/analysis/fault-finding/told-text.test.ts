import { beforeAll, describe, expect, test } from 'vitest';
import { textTold, valueTold } from '#analysis/fault-finding/told-text';
import { loadMessages } from '#i18n/load';

beforeAll(async () => {
  await loadMessages('en', ['views']);
});

const twenty = { kind: 'temperature', value: 20 } as const;

describe('a number that is told', () => {
  test.each([
    ['resistance', 0.536, '0.536 Ω'],
    ['resistance', 4_700, '4.70 kΩ'],
    ['frequency', 43_600, '43.60 kHz'],
    ['frequency', 771.9, '772 Hz'],
    ['insulation', 5e7, '50.0 MΩ'],
    ['length', 31.42, '31.4 m'],
    ['share', 0.0367, '3.7 %'],
    ['ratio', 0.0015, '0.15 %'],
    ['time', 0.125, '125 ms'],
    ['time', 240, '4.0 min'],
    ['time', 6_300, '1.8 h'],
    ['plain', 2.64, '2.6'],
    ['count', 3, '3']
  ] as const)('%s %f', (kind, value, text) => {
    expect(valueTold({ kind, value }, 'metric')).toBe(text);
  });
  test('a temperature in the degrees that are shown', () => {
    const told = (system: 'metric' | 'imperial') =>
      textTold('causes', { key: 'assumed.temperature', values: { temperature: twenty } }, system);
    expect(told('metric')).toContain('at 20 °C');
    // by definition 20 · 9/5 + 32
    expect(told('imperial')).toContain('at 68 °F');
  });
  test('in feet and inches', () => {
    expect(valueTold({ kind: 'length', value: 0.3048 }, 'imperial')).toBe('1\'-0"');
  });
});

test('a day is written as the language writes it, and none is nothing', () => {
  expect(valueTold({ day: '2026-11-17' }, 'metric')).toBe('17 Nov 2026');
  expect(valueTold({ day: '' }, 'metric')).toBe('');
});

test('a told key is filled in', () => {
  const told = { key: 'loop.less', values: { low: { kind: 'resistance', value: 0.42 } } } as const;
  expect(textTold('walk', told, 'metric')).toBe('Less than 0.420 Ω');
});
