import { expect, test } from 'vitest';
import { directionAt, nearestOn, pointAt, stationed } from '#plan/geometry/stations';

/** North for ten metres, then east for thirty. */
const BENT = stationed([[0, 0], [0, 10], [30, 10]])!; // prettier-ignore

test('only the outer segments go on', () => {
  // Ahead of the first segment, beyond the corner: it belongs to the second.
  expect(nearestOn(BENT, [0.5, 14], true)).toEqual({ along: 10.5, offset: -4, apart: 4 });
  expect(nearestOn(BENT, [1, -3], true)).toEqual({ along: -3, offset: 1, apart: 1 });
  expect(nearestOn(BENT, [33, 8], true)).toEqual({ along: 43, offset: 2, apart: 2 });
  expect(nearestOn(BENT, [33, 10], false)).toMatchObject({ along: 40, apart: 3 });
});

test('a corner belongs to the segment that it begins', () => {
  expect(directionAt(BENT, 10)).toEqual([1, 0]);
  expect(directionAt(BENT, 9.99)).toEqual([0, 1]);
  expect(pointAt(BENT, 43)).toEqual([33, 10]);
  expect(pointAt(BENT, -3)).toEqual([0, -3]);
});

test('a line without length has no places', () => {
  expect(stationed([[2, 2], [2, 2]])).toBeNull(); // prettier-ignore
  expect(stationed([[0, 0], [0, 0], [0, 4]])?.stations).toEqual([0, 4]); // prettier-ignore
});
