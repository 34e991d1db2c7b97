import { describe, expect, it } from 'vitest';
import { format, type FormatOptions } from '#units/format';
import { formatForEdit } from '#units/format-for-edit';
import { QUANTITY_KINDS, type QuantityKind, type UnitSystem } from '#units/kind';

const inch = 0.0254;
const SHOWN: readonly (readonly [value: number, kind: QuantityKind, system: UnitSystem, text: string])[] = [
  [1.8, 'length', 'metric', '1.80 m'],
  [1.825, 'length', 'metric', '1.825 m'],
  [-1.8, 'length', 'metric', '−1.80 m'],
  [-0.0001, 'length', 'metric', '0.00 m'],
  [78 * inch, 'length', 'imperial', '6\'-6"'],
  [72 * inch, 'length', 'imperial', '6\'-0"'],
  [78.5 * inch, 'length', 'imperial', '6\'-6 1/2"'],
  [72.0625 * inch, 'length', 'imperial', '6\'-0 1/16"'],
  [-78 * inch, 'length', 'imperial', '−6\'-6"'],
  [6 * inch, 'length', 'imperial', '6"'],
  [0.75 * inch, 'length', 'imperial', '3/4"'],
  [0, 'length', 'imperial', '0"'],
  [71.9999 * inch, 'length', 'imperial', '6\'-0"'],
  // 1.8 m is 70.866 inches, which is 3 mm from the nearest sixteenth.
  [1.8, 'length', 'imperial', '5\'-10.866"'],
  [0.008, 'smallLength', 'metric', '8 mm'],
  [0.0025, 'smallLength', 'metric', '2.5 mm'],
  [0.375 * inch, 'smallLength', 'imperial', '0.375 in'],
  [2 * inch, 'smallLength', 'imperial', '2 in'],
  [30, 'angle', 'metric', '30°'],
  [-22.5, 'angle', 'metric', '−22.5°'],
  [4, 'count', 'metric', '4'],
  [47210, 'frequency', 'metric', '47.21 kHz'],
  [118.24e-6, 'inductance', 'metric', '118.2 µH'],
  [7e-6, 'inductance', 'metric', '7.000 µH'],
  [220e-9, 'capacitance', 'metric', '220 nF'],
  [2.2e-6, 'capacitance', 'metric', '2.20 µF'],
  [80e-12, 'capacitance', 'metric', '80.0 pF'],
  [0.35, 'resistance', 'metric', '350 mΩ'],
  [0.9996, 'resistance', 'metric', '1.00 Ω'],
  [1.234, 'resistance', 'metric', '1.23 Ω'],
  [150e6, 'resistance', 'metric', '150 MΩ'],
  [150e6, 'insulation', 'metric', '150 MΩ'],
  [2.4e9, 'insulation', 'imperial', '2.40 GΩ'],
  [85e3, 'insulation', 'metric', '85.0 kΩ'],
  [0, 'resistance', 'metric', '0 Ω'],
  [2, 'time', 'metric', '2.00 s'],
  [0.005, 'time', 'metric', '5.00 ms'],
  [0.032, 'ratio', 'metric', '3.20 %'],
  [-0.00034, 'ratio', 'metric', '−0.0340 %'],
  [0.6, 'ratio', 'metric', '60.0 %'],
  [1e-12, 'ratio', 'metric', '1.00e−10 %'],
  [20, 'temperature', 'metric', '20 °C'],
  [20, 'temperature', 'imperial', '68 °F'],
  [0.0123, 'volume', 'metric', '12.3 L'],
  [1.5, 'volume', 'metric', '1.50 m³'],
  [0.003785411784, 'volume', 'imperial', '1.00 gal'],
  [12.345, 'plain', 'metric', '12.3'],
  [9.996, 'plain', 'metric', '10.0'],
  [12345, 'plain', 'metric', '12345']
];

describe('format', () => {
  it.each(SHOWN)('%f as %s, %s, is shown as %s', (value, kind, system, text) => {
    const shown = format(value, kind, system);
    expect(shown.text).toBe(text);
    expect(shown.text.startsWith(shown.number)).toBe(true);
    expect(shown.text.endsWith(shown.unit)).toBe(true);
  });

  it.each<[number, QuantityKind, FormatOptions, string]>([
    [0.35, 'resistance', { unit: 'Ω' }, '0.350 Ω'],
    [1.8, 'length', { unit: 'mm' }, '1800 mm'],
    [1.8288, 'length', { unit: 'ft' }, '6.00 ft'],
    [0.028316846592, 'volume', { unit: 'ft³' }, '1.00 ft³'],
    [0.032, 'ratio', { digits: 1 }, '3 %'],
    [0.032, 'ratio', { signed: true }, '+3.20 %'],
    [-0.032, 'ratio', { signed: true }, '−3.20 %'],
    [0, 'ratio', { signed: true }, '0 %'],
    [1.8, 'length', { decimalSign: ',' }, '1,80 m']
  ])('%f as %s with %o is shown as %s', (value, kind, options, text) => {
    expect(format(value, kind, 'metric', options).text).toBe(text);
  });

  it('shows a dash for what is not there or not finite, in every kind', () => {
    for (const kind of QUANTITY_KINDS) {
      for (const value of [undefined, null, Number.NaN, Number.POSITIVE_INFINITY]) {
        expect(format(value, kind, 'imperial')).toEqual({ text: '–', number: '–', unit: '' });
        expect(formatForEdit(value, kind, 'imperial')).toBe('');
      }
    }
  });

  it('refuses a unit of another kind, which only a mistake in the program can ask for', () => {
    expect(() => format(1, 'length', 'metric', { unit: 'kHz' })).toThrow(RangeError);
  });
});

describe('formatForEdit', () => {
  it.each<[number, QuantityKind, UnitSystem, string]>([
    [1.8, 'length', 'metric', '1.8 m'],
    [-1.83742, 'length', 'metric', '-1.8374 m'],
    [78 * inch, 'length', 'imperial', '6\'-6"'],
    [2.12504 * inch, 'length', 'imperial', '2 1/8"'],
    [0.0254, 'smallLength', 'metric', '25.4 mm'],
    [0.0254, 'smallLength', 'imperial', '1 in'],
    [0.35, 'resistance', 'metric', '0.35 Ω'],
    [80e-12, 'capacitance', 'metric', '0.08 nF'],
    [0.1 + 0.2, 'plain', 'metric', '0.3'],
    [0.0016, 'ratio', 'metric', '0.16 %'],
    [45, 'angle', 'metric', '45°']
  ])('%f as %s, %s, is edited as %s', (value, kind, system, text) => {
    expect(formatForEdit(value, kind, system)).toBe(text);
  });
});
