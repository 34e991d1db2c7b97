import { describe, expect, it } from 'vitest';
import { accepted, refused } from './accepted';

describe('sums of lengths', () => {
  it.each([
    ['1.8 + 0.6 m', 2.4],
    ['0.6 m + 1.8', 2.4],
    ['180 + 60 cm', 2.4],
    ['1.8 m + 60 cm', 2.4],
    ['1.8-0.6', 1.2],
    ['3*0.6m', 1.8],
    ['0.6m*3', 1.8],
    ['3 × 0.6 m', 1.8],
    ['12 m / 6/2', 1],
    ['12 m ÷ 4', 3],
    ['6/3 m', 2],
    ['2 + 3*4', 14],
    ['(2 + 3)*4', 20],
    ['(1.8 + 0.6) m', 2.4],
    ['2*(1 + 0.5 m)', 3],
    ['-(1 + 2) m', -3],
    ['3 - -2', 5],
    ['10 - 2 - 3 m', 5],
    ['6\'-6" + 6"', 84 * 0.0254],
    ['6\'-6" / 2', 39 * 0.0254],
    ['2 * 6\'-6"', 156 * 0.0254],
    ["2*6'6", 156 * 0.0254],
    ['1/2" + 1/4"', 0.75 * 0.0254],
    ["6' - 6 cm", 1.8288 - 0.06],
    ['6" - 1/2"', 5.5 * 0.0254],
    ["6'/2", 0.9144],
    ["6' + 1 m", 2.8288]
  ])('%s is %f m', (text, metres) => {
    expect(accepted(text, 'length', 'metric')).toBeCloseTo(metres, 12);
  });

  it('gives bare terms the unit of the others and not the displayed one', () => {
    expect(accepted('1.8 + 0.6 m', 'length', 'imperial')).toBeCloseTo(2.4, 12);
    expect(accepted('6 + 0.5', 'length', 'imperial')).toBeCloseTo(6.5 * 0.3048, 12);
  });

  it.each([
    ['1 + 2 m + 3 ft', 'unit'],
    ['1 m * 2 m', 'times'],
    ['1 m / 2 m', 'division'],
    ['1 / (2 m)', 'division'],
    ['1 m / 0', 'nought'],
    ['1/0', 'nought'],
    ['1 +', 'end'],
    ['* 2', '“*”'],
    ['(1 + 2', 'parenthesis'],
    ['1 + 2)', '“)”'],
    ['()', '“)”'],
    ['(1 m) cm', '“cm”'],
    ['1 (2)', '“(”'],
    ['2^3', '“^”'],
    ['Math.PI', '“Math”'],
    ['process.exit()', '“process”']
  ])('%s is refused and the reason names %s', (text, part) => {
    expect(refused(text, 'length', 'metric')).toContain(part);
  });
});

describe('sums of other kinds', () => {
  it('work in the unit of the kind', () => {
    expect(accepted('1 h + 30 min', 'time', 'metric')).toBe(5400);
    expect(accepted('1 + 2 %', 'ratio', 'metric')).toBe(0.03);
    expect(accepted('220 nF + 0.1 µF', 'capacitance', 'metric')).toBeCloseTo(320e-9, 18);
    expect(accepted('2*3 + 1', 'count', 'metric')).toBe(7);
    expect(accepted('0.1*30', 'count', 'metric')).toBe(3);
    expect(accepted('20 °C + 5', 'temperature', 'imperial')).toBe(25);
  });

  it('refuse two temperature scales in one sum, whose noughts differ', () => {
    expect(refused('20 °C + 5 °F', 'temperature', 'metric')).toContain('temperature');
  });
});
