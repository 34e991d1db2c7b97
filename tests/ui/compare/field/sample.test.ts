import { describe, expect, it } from 'vitest';
import { fieldAt, strengthsOf } from '#ui/compare/field/sample';
import { coarseTable, fieldTable } from '#ui/compare/field/table';
import { partsAtMetal, readingText, shareLeft, summaryOf } from '#ui/compare/field/words';
import { FOOT } from '#units/constants';
import { pictureOf } from './pictures';

const MICRO = 1e-6;

describe('a field between its nodes', () => {
  // straight in u and v: interpolation has no error
  const picture = pictureOf((u, v) => [MICRO * u, MICRO * 2 * v, MICRO * (u - v)]);

  it('is what the formula says', () => {
    const reading = fieldAt(picture, [1.23, 0.77])!;
    expect(reading.u_T).toBeCloseTo(1.23e-6, 15);
    expect(reading.v_T).toBeCloseTo(1.54e-6, 15);
    expect(reading.across_T).toBeCloseTo(0.46e-6, 15);
    expect(reading.strength_T).toBeCloseTo(MICRO * Math.hypot(1.23, 1.54, 0.46), 15);
    expect(reading.direction_deg).toBeCloseTo((Math.atan2(1.54, 1.23) * 180) / Math.PI, 9);
  });

  it('has its corners, and nothing outside', () => {
    expect(fieldAt(picture, [4, 1.5])!.u_T).toBeCloseTo(4e-6, 15);
    expect(fieldAt(picture, [0, -0.5])!.v_T).toBeCloseTo(-1e-6, 15);
    expect(fieldAt(picture, [4.01, 0])).toBeNull();
    expect(fieldAt(picture, [1, -0.51])).toBeNull();
  });

  it('is written in full, every node once, with lengths in the unit shown', () => {
    const table = fieldTable(picture, 'imperial', 'Section');
    expect(table.rows).toHaveLength(41 * 21);
    expect(table.columns[0]!.head).toContain('(ft)');
    const last = table.rows.at(-1)! as readonly number[];
    expect(last[0]).toBeCloseTo(4 / FOOT, 9);
    expect(last[1]).toBeCloseTo(1.5 / FOOT, 9);
    expect(last[2]).toBeCloseTo(4, 12);
    expect(last[3]).toBeCloseTo(3, 12);
    expect(last[4]).toBeCloseTo(2.5, 12);
    expect(last[5]).toBeCloseTo(Math.hypot(4, 3, 2.5), 12);
  });

  it('is read from a coarse table from the top down', () => {
    const { rows } = coarseTable(picture, [1, 2], [0, 1]);
    expect(rows.map(({ at }) => at)).toEqual([1, 0]);
    expect(rows[0]!.strengths[1]).toBeCloseTo(MICRO * Math.hypot(2, 2, 1), 15);
  });

  it('is said with its place, above the road and under it', () => {
    expect(readingText(picture, [1, 0.5], 'metric')).toBe(
      '1.00 m along, 0.50 m up: 1.50 µT/A, direction 45°'
    );
    expect(readingText(picture, [1, -0.25], 'metric')).toContain('0.25 m under the road');
    expect(readingText(picture, [9, 0], 'metric')).toBe('');
  });
});

describe('what a vehicle leaves of a field', () => {
  const bare = pictureOf(() => [0, MICRO, 0]);
  // four fifths under the metal, a third over it, unchanged beside it
  const withVehicle = pictureOf(
    (u, v) => [0, MICRO * (u < 1 || u > 3 ? 1 : v > 0.45 ? 1 / 3 : v > 0 ? 0.8 : 1), 0],
    { metal: [[[1, 0.45], [3, 0.45]]] } // prettier-ignore
  );

  it('is told apart under the metal and over it', () => {
    const parts = partsAtMetal(withVehicle)!;
    expect(shareLeft({ withVehicle, bare }, parts.under)).toBeCloseTo(0.8, 12);
    expect(shareLeft({ withVehicle, bare }, parts.above)).toBeCloseTo(1 / 3, 12);
    expect(summaryOf({ withVehicle, bare }, 'Car', 'metric')).toBe(
      'Car above: between road and metal the field is on average 80\u00a0% of what it was without, over the metal 33\u00a0%.'
    );
  });

  it('is told of the whole section where it cuts no plate', () => {
    const half = pictureOf(() => [0, MICRO / 2, 0]);
    expect(partsAtMetal(half)).toBeNull();
    expect(summaryOf({ withVehicle: half, bare }, 'Bicycle', 'metric')).toContain('50\u00a0%');
  });

  it('counts the part across the section too', () => {
    expect(strengthsOf(pictureOf(() => [3e-7, 0, 4e-7]))[5]).toBeCloseTo(5e-7, 15);
  });
});
