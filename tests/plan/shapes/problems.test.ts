import { describe, expect, it } from 'vitest';
import type { Point, Shape } from '#plan/schema';
import { problemOf } from '#plan/shapes/index';
import { circle, everyShape, polygon, quadrupole, rectangle } from './examples';

const withPoints = (...points: Point[]): Shape => ({ ...polygon, points });

describe('what makes a shape impossible', () => {
  it('is nothing for the examples', () => {
    expect(everyShape.map(problemOf)).toEqual(everyShape.map(() => null));
  });

  it('is a corner cut from half the shorter side on', () => {
    expect(problemOf({ ...rectangle, cornerCut: 0.59 })).toBeNull();
    expect(problemOf({ ...rectangle, cornerCut: 0.6 })).toMatchObject({ key: 'cornerCut', found: '0.6 m' });
    expect(problemOf({ ...rectangle, cornerCut: -0.1 })?.key).toBe('cornerCut');
  });

  it.each<[Shape, string]>([
    [{ ...rectangle, width: 0 }, 'width'],
    [{ ...rectangle, length: -1 }, 'length'],
    [{ ...quadrupole, length: 501 }, 'length'],
    [{ ...circle, diameter: Number.NaN }, 'diameter']
  ])('is a size out of bounds', (shape, key) => {
    expect(problemOf(shape)?.key).toBe(key);
  });

  it.each<[string, Shape, RegExp]>([
    ['too few points', withPoints([0, 0], [1, 1]), /2 points/],
    ['a repeated point', withPoints([0, 0], [2, 0], [2, 0.0005], [0, 2]), /twice in a row/],
    ['the first point again at the end', withPoints([0, 0], [2, 0], [0, 2], [0, 0]), /twice in a row/],
    ['crossing sides', withPoints([0, 0], [2, 2], [2, 0], [0, 2]), /side 1 crossing or touching side 3/],
    ['points on one line', withPoints([0, 0], [1, 0], [3, 0]), /crossing or touching/],
    ['next to no area', withPoints([0, 0], [0.5, 0], [0.5, 0.0015], [0, 0.0015]), /encloses nothing/],
    ['an absurd side', withPoints([0, 0], [900, 0], [0, 3]), /a side of 900 m/]
  ])('is a polygon with %s', (_, shape, found) => {
    expect(problemOf(shape)?.key).toBe('points');
    expect(problemOf(shape)?.found).toMatch(found);
  });
});
