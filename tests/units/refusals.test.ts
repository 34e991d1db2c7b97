import { describe, expect, it } from 'vitest';
import type { QuantityKind } from '#units/kind';
import { refused } from './accepted';

describe('refusals of lengths', () => {
  it.each([
    ['', 'nothing'],
    ['   ', 'nothing'],
    ['6 ks', '“ks” is not a unit of length; try m, cm, mm, ft, in'],
    ['m', 'before “m”'],
    ['6 m m', '“m”'],
    ['6 6', '“6”'],
    ['1 234 m', '“234”'],
    ['6 m 6 cm', '“6”'],
    ['6 %', '“%”'],
    ['6 $', '“$”'],
    ['6 😀', '“😀”'],
    ['1,234', '1.234'],
    ['1,234 m', '1234'],
    ['12,345 mm', '12345'],
    ['1,23,456 m', '“1,23,456”'],
    ['12,34.5 m', '“12,34.5”'],
    ['1.2.3 m', '“1.2.3”'],
    ['1,234.567,8 m', '“1,234.567,8”'],
    ['5, m', '“5,”'],
    ['. m', '“.”'],
    ['NaN', '“NaN”'],
    ['Infinity', '“Infinity”'],
    ['1e400 m', 'too large'],
    ['1e308 * 1e308', 'too large'],
    ['1e308 ft * 10', 'too large'],
    ['1e308 - 1e308*10', 'too large'],
    ['1e308*10 - 1e308*10', 'too large'],
    ['1e101 m', 'too large'],
    ['1e-400 m', 'too small'],
    ['6\'-12"', 'less than 12'],
    ['6\' 18"', 'less than 12'],
    ['6.5\' 6"', 'whole'],
    ['6 ft - 6 in', 'join'],
    ['6 ft -6', 'join'],
    ["6'-6*2", 'multiplied'],
    ["6'-6/2", 'divided'],
    ['6\'6"6', '“6”'],
    ['6-1/2"', '6 1/2'],
    ['6\'-6-1/2"', '6 1/2'],
    ['6-½ in', '6 ½'],
    ['6 1/0"', '“1”'],
    ['1.5 1/2"', '“1”'],
    ['0x10', '“x”'],
    ['１８ m', '“１”']
  ])('%s is refused and the reason says %s', (text, part) => {
    expect(refused(text, 'length', 'metric')).toContain(part);
    expect(refused(text, 'length', 'imperial')).toContain(part);
  });

  it('shortens what it quotes', () => {
    expect(refused('x'.repeat(150), 'length', 'metric').length).toBeLessThan(80);
  });

  it('covers texts too long for a field and parentheses without end', () => {
    expect(refused('1'.repeat(201), 'length', 'metric')).toContain('too long');
    expect(refused('('.repeat(100_000), 'length', 'metric')).toContain('too long');
    expect(refused('('.repeat(200), 'length', 'metric')).toContain('missing');
  });
});

describe('refusals of other kinds', () => {
  it.each<[string, QuantityKind, string]>([
    ['3 m', 'count', '“m”'],
    ['3.5', 'count', 'whole'],
    ['-3', 'count', 'whole'],
    ['1e20', 'count', 'whole'],
    ['3 Hz', 'plain', '“Hz”'],
    ['50 mHz', 'frequency', 'Hz'],
    ['5 MH', 'inductance', 'mH'],
    ["5'", 'time', 'min'],
    ['5 m', 'time', 'min'],
    ['20 K', 'temperature', '°C'],
    ['90 grad', 'angle', 'rad'],
    ['5 V', 'resistance', 'Ω'],
    ['5 ppm', 'ratio', '%']
  ])('%s as %s is refused and the reason says %s', (text, kind, part) => {
    expect(refused(text, kind, 'metric')).toContain(part);
  });
});
