/** What is found on the site, from the line that is measured from: places worked out by hand. */
import { describe, expect, it } from 'vitest';
import { referencePointsOf } from '#analysis/takeoff/reference-points';
import { lane, loop, siteOf, square } from '../support/sites';
import { box, cabinet, near } from './lines';

// the lane runs up along x = 0 from y = −20: a point (x, y) has station y + 20, and left of it is −x
const lanes = [lane('lane1', 0)];
const loops = [loop('L1', square(0, -5))];
const marks = [
  cabinet('m1', [4, 6]),
  { id: 'm2', kind: 'gate', points: [[-1.5, 0], [0, 0.2], [1.5, 0]] }, // prettier-ignore
  { id: 'm3', kind: 'note', points: [[1, 1]], text: 'dry day' },
  { id: 'm4', kind: 'arrow', points: [[0, -8], [0, -6]] }, // prettier-ignore
  box('m5', [2.2, -23])
];

describe('reference points', () => {
  it('are what is built or painted, both ends of a line, as one comes to them', () => {
    const points = referencePointsOf(siteOf({ lanes, loops, marks }));
    expect(points.map(({ mark, from, to }) => [mark.id, from, to])).toEqual([
      ['m5', { station: near(-3), offset: near(-2.2) }, null],
      ['m2', { station: near(20), offset: near(1.5) }, { station: near(20), offset: near(-1.5) }],
      ['m1', { station: near(26), offset: near(-4) }, null]
    ]);
  });

  it('are none where there is nothing to measure from', () => {
    expect(referencePointsOf(siteOf({ loops, marks }))).toEqual([]);
  });
});
