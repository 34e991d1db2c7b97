import { describe, expect, it } from 'vitest';
import type { QuantityKind } from '#units/kind';
import { accepted } from './accepted';

const TYPED: readonly (readonly [text: string, kind: QuantityKind, stored: number])[] = [
  ['50 kHz', 'frequency', 50e3],
  ['50khz', 'frequency', 50e3],
  ['50', 'frequency', 50e3],
  ['47210 Hz', 'frequency', 47210],
  ['0.05 MHz', 'frequency', 50e3],
  ['120 µH', 'inductance', 120e-6],
  ['120 μH', 'inductance', 120e-6],
  ['120uH', 'inductance', 120e-6],
  ['120', 'inductance', 120e-6],
  ['0.12 mH', 'inductance', 120e-6],
  ['120000 nH', 'inductance', 120e-6],
  ['0.00012 H', 'inductance', 120e-6],
  ['220 nF', 'capacitance', 220e-9],
  ['220', 'capacitance', 220e-9],
  ['0.22 µF', 'capacitance', 220e-9],
  ['0.22uF', 'capacitance', 220e-9],
  ['80 pF', 'capacitance', 80e-12],
  ['2.2e-7 F', 'capacitance', 220e-9],
  ['0.5', 'resistance', 0.5],
  ['0.5 Ω', 'resistance', 0.5],
  ['0.5 \u2126', 'resistance', 0.5],
  ['0.5 ohm', 'resistance', 0.5],
  ['500 mΩ', 'resistance', 0.5],
  ['500 mohm', 'resistance', 0.5],
  ['4.7 kΩ', 'resistance', 4700],
  ['100 MΩ', 'resistance', 100e6],
  ['100 Mohm', 'resistance', 100e6],
  ['1.2 k', 'resistance', 1200],
  ['98 u', 'inductance', 98e-6],
  ['0.098 m', 'inductance', 98e-6],
  ['43.2 k', 'frequency', 43_200],
  ['200', 'insulation', 200e6],
  ['200 M', 'insulation', 200e6],
  ['1.5 G', 'insulation', 1.5e9],
  ['2 GΩ', 'insulation', 2e9],
  ['850 kΩ', 'insulation', 850e3],
  ['470 ohm', 'insulation', 470],
  ['2', 'time', 2],
  ['2 s', 'time', 2],
  ['5 ms', 'time', 0.005],
  ['5 min', 'time', 300],
  ['1.5 h', 'time', 5400],
  ['3.2 %', 'ratio', 0.032],
  ['3.2%', 'ratio', 0.032],
  ['3,2', 'ratio', 0.032],
  ['0.16', 'ratio', 0.0016],
  ['90', 'angle', 90],
  ['90°', 'angle', 90],
  ['90 deg', 'angle', 90],
  ['-45 degrees', 'angle', -45],
  ['3.141592653589793 rad', 'angle', 180],
  ['20 °C', 'temperature', 20],
  ['20 C', 'temperature', 20],
  ['-10 ℃', 'temperature', -10],
  ['68 °F', 'temperature', 20],
  ['68F', 'temperature', 20],
  ['-40 °F', 'temperature', -40],
  ['32 °F', 'temperature', 0],
  ['3', 'count', 3],
  ['4.0', 'count', 4],
  ['12 L', 'volume', 0.012],
  ['12 litres', 'volume', 0.012],
  ['1.5 m³', 'volume', 1.5],
  ['1 ft³', 'volume', 0.3048 ** 3],
  // The US liquid gallon is defined as 231 cubic inches.
  ['1 gal', 'volume', 231 * 0.0254 ** 3],
  ['50', 'speed', 50 / 3.6],
  ['50 km/h', 'speed', 50 / 3.6],
  ['50 KM/H', 'speed', 50 / 3.6],
  ['36 km/h + 1 m/s', 'speed', 11],
  // The international mile is defined as 1609.344 m.
  ['30 mph', 'speed', (30 * 1609.344) / 3600],
  ['10 ft/s', 'speed', 3.048],
  ['2.5', 'plain', 2.5],
  ['-1.5e-3', 'plain', -0.0015]
];

describe('quantities other than lengths', () => {
  it.each(TYPED)('%s as %s is stored as %f', (text, kind, stored) => {
    const value = accepted(text, kind, 'metric');
    expect(Math.abs(value - stored)).toBeLessThanOrEqual(1e-12 * Math.abs(stored));
  });

  it('take a bare number in the displayed unit of the system', () => {
    expect(accepted('68', 'temperature', 'imperial')).toBe(20);
    expect(accepted('20', 'temperature', 'metric')).toBe(20);
    expect(accepted('1', 'volume', 'imperial')).toBeCloseTo(0.003785411784, 15);
    expect(accepted('1', 'volume', 'metric')).toBe(0.001);
    expect(accepted('50', 'frequency', 'imperial')).toBe(50e3);
  });
});
