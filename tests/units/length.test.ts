import { describe, expect, it } from 'vitest';
import { FOOT, INCH } from '#units/constants';
import type { UnitSystem } from '#units/kind';
import { parseQuantity } from '#units/parse';
import { accepted } from './accepted';

const ANY_SYSTEM: readonly (readonly [text: string, metres: number])[] = [
  ['1.8m', 1.8],
  ['1.8 m', 1.8],
  [' 1.8\tm ', 1.8],
  ['1.8\u00a0m', 1.8],
  ['1.8\u202fm', 1.8],
  ['1.8 M', 1.8],
  ['1.8 metres', 1.8],
  ['1,8 m', 1.8],
  ['180 cm', 1.8],
  ['57 cm', 0.57],
  ['1800mm', 1.8],
  ['.5 m', 0.5],
  [',5 m', 0.5],
  ['5. m', 5],
  ['-1.8 m', -1.8],
  ['−1.8 m', -1.8],
  ['+1.8 m', 1.8],
  ['1.234 m', 1.234],
  ['1,234.5 m', 1234.5],
  ['1.234,5 m', 1234.5],
  ['1,234,567 mm', 1234.567],
  ['1.234.567 mm', 1234.567],
  ['1,2345 m', 1.2345],
  ['1.8e2 cm', 1.8],
  ["6'", 6 * 0.3048],
  ['6 ft', 6 * 0.3048],
  ['6ft.', 6 * 0.3048],
  ['6 feet', 6 * 0.3048],
  ['1 foot', 0.3048],
  ['78in', 78 * 0.0254],
  ['78 inches', 78 * 0.0254],
  ['72"', 72 * 0.0254],
  ["72''", 72 * 0.0254],
  ['6\'-6"', 78 * 0.0254],
  ['6\' 6"', 78 * 0.0254],
  ['6\'6"', 78 * 0.0254],
  ["6'6", 78 * 0.0254],
  ["6' 6", 78 * 0.0254],
  ["6'-6", 78 * 0.0254],
  ["6'6''", 78 * 0.0254],
  ['6\' - 6"', 78 * 0.0254],
  ['6ft 6in', 78 * 0.0254],
  ['6ft6in', 78 * 0.0254],
  ['6ft6', 78 * 0.0254],
  ['6ft-6in', 78 * 0.0254],
  ['6 ft. 6 in.', 78 * 0.0254],
  ['6 FT 6 IN', 78 * 0.0254],
  ['6′-6″', 78 * 0.0254],
  ['6’-6”', 78 * 0.0254],
  ['6’–6”', 78 * 0.0254],
  ['-6\'-6"', -78 * 0.0254],
  ['7\'-9"', 93 * 0.0254],
  ['10\'6"', 126 * 0.0254],
  ['6 1/2"', 6.5 * 0.0254],
  ['6 1 / 2"', 6.5 * 0.0254],
  ['6 1⁄2"', 6.5 * 0.0254],
  ['6½"', 6.5 * 0.0254],
  ['6 ½ in', 6.5 * 0.0254],
  ['6\'-6 1/2"', 78.5 * 0.0254],
  ["6'-6 1/2", 78.5 * 0.0254],
  ["6' 6½", 78.5 * 0.0254],
  ['6 ft 6 1/2 in', 78.5 * 0.0254],
  ['6\'-0 3/16"', 72.1875 * 0.0254],
  ['6\' 1/2"', 72.5 * 0.0254],
  ["6'-1/2", 72.5 * 0.0254],
  ['6\' .5"', 72.5 * 0.0254],
  ["6'.5", 72.5 * 0.0254],
  ['6\'-6.25"', 78.25 * 0.0254],
  ['3/4"', 0.75 * 0.0254],
  ['¾"', 0.75 * 0.0254],
  ['¼ in', 0.25 * 0.0254],
  ['⅜"', 0.375 * 0.0254],
  ['½ m', 0.5],
  ['2 1/2 m', 2.5],
  ['0', 0],
  ['-0', 0]
];

const BARE: readonly (readonly [
  text: string,
  kind: 'length' | 'smallLength',
  system: UnitSystem,
  metres: number
])[] = [
  ['1.8', 'length', 'metric', 1.8],
  ['6', 'length', 'imperial', 6 * 0.3048],
  ['6 1/2', 'length', 'imperial', 6.5 * 0.3048],
  ['8', 'smallLength', 'metric', 0.008],
  ['2,5', 'smallLength', 'metric', 0.0025],
  ['2', 'smallLength', 'imperial', 2 * 0.0254],
  ['3/8', 'smallLength', 'imperial', 0.375 * 0.0254]
];

describe('constants', () => {
  it('are the exact definitions and agree with each other', () => {
    expect(FOOT).toBe(0.3048);
    expect(INCH).toBe(0.0254);
    expect(12 * INCH).toBeCloseTo(FOOT, 15);
  });
});

describe('lengths with a unit', () => {
  it.each(ANY_SYSTEM)('%s is %f m whatever is displayed', (text, metres) => {
    for (const system of ['metric', 'imperial'] as const) {
      expect(accepted(text, 'length', system)).toBeCloseTo(metres, 12);
      expect(accepted(text, 'smallLength', system)).toBeCloseTo(metres, 12);
    }
  });
});

describe('lengths without a unit', () => {
  it.each(BARE)('%s as %s, %s, is %f m', (text, kind, system, metres) => {
    expect(accepted(text, kind, system)).toBeCloseTo(metres, 12);
  });
});

describe('stored digits', () => {
  it('are those that were typed, without binary noise', () => {
    expect(accepted('57 cm', 'length', 'metric')).toBe(0.57);
    expect(accepted('1.8 + 0.6 m', 'length', 'metric')).toBe(2.4);
    expect(accepted('3*0.6m', 'length', 'metric')).toBe(1.8);
    expect(accepted("6'", 'length', 'imperial')).toBe(1.8288);
    expect(Object.is(accepted('-0', 'length', 'metric'), 0)).toBe(true);
  });
});

describe('the echo', () => {
  it.each([
    ['180 cm', 'metric', '1.8 m'],
    ['78in', 'metric', '1.9812 m'],
    ['78in', 'imperial', '6\'-6"'],
    ["6'6½", 'imperial', '6\'-6 1/2"'],
    ['-6in', 'imperial', '-6"']
  ] as const)('of %s in %s is %s', (text, system, echo) => {
    expect(parseQuantity(text, 'length', system)).toMatchObject({ ok: true, echo });
  });
});
