import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isStraight, placeOn, stationOf, wayOf, type Way } from '#analysis/passing/way';
import { pointAt } from '#plan/geometry/stations';
import type { Point } from '#plan/schema';
import { between, SEED } from '../../physics/support/arbitraries';

const wayThrough = (...points: Point[]): Way =>
  wayOf({ lanes: [], paths: [{ id: 'p', name: '', points }] }, { kind: 'path', id: 'p' })!;
/** Ten metres along +y, then ten along +x. */
const corner = wayThrough([0, 0], [0, 10], [10, 10]);

describe('a way', () => {
  it('is a lane or a path of the drawing, or none', () => {
    const lanes = [
      {
        id: 'a',
        name: '',
        width: 3.5,
        centreline: [
          [0, -5],
          [0, 5]
        ] as Point[]
      }
    ];
    expect(wayOf({ lanes, paths: [] }, { kind: 'lane', id: 'a' })!.length).toBe(10);
    expect(wayOf({ lanes, paths: [] }, { kind: 'path', id: 'a' })).toBeNull();
    expect(wayOf({ lanes: [], paths: [] }, { kind: 'lane', id: 'a' })).toBeNull();
  });

  it('counts metres from its start, and leaves out points that coincide', () => {
    expect(corner.stations).toEqual([0, 10, 20]);
    expect(wayThrough([0, 0], [0, 0], [3, 4], [3, 4]).stations).toEqual([0, 5]);
    expect(
      wayOf(
        {
          lanes: [],
          paths: [
            {
              id: 'p',
              name: '',
              points: [
                [1, 1],
                [1, 1]
              ]
            }
          ]
        },
        { kind: 'path', id: 'p' }
      )
    ).toBeNull();
  });

  it('goes on straight before its start and beyond its end', () => {
    expect(pointAt(corner, 4)).toEqual([0, 4]);
    expect(pointAt(corner, 13)).toEqual([3, 10]);
    expect(pointAt(corner, -2)).toEqual([0, -2]);
    expect(pointAt(corner, 23)).toEqual([13, 10]);
  });

  it('knows what is straight', () => {
    expect(isStraight(wayThrough([0, 0], [1, 2], [3, 6]))).toBe(true);
    expect(isStraight(corner)).toBe(false);
    // there and back on one line
    expect(isStraight(wayThrough([0, 0], [0, 6], [0, 3]))).toBe(false);
  });
});

describe('a vehicle on a way', () => {
  it('stands to the right of it by its offset, heading along it', () => {
    const at = placeOn(corner, 4, 0.5, 4);
    expect([at.x, at.y, at.heading]).toEqual([0.5, 4, 90]);
    const later = placeOn(corner, 16, 0.5, 4);
    expect(later.x).toBeCloseTo(6, 12);
    expect(later.y).toBeCloseTo(9.5, 12);
    expect(later.heading).toBeCloseTo(0, 12);
  });

  it('turns evenly in a bend, both its axles on the way', () => {
    // a vehicle of 10 m: axles 3 m before and behind its middle, here (0, 7) and (3, 10)
    const at = placeOn(corner, 10, 0, 10);
    expect(at.x).toBeCloseTo(1.5, 12);
    expect(at.y).toBeCloseTo(8.5, 12);
    expect(at.heading).toBeCloseTo(45, 12);
  });

  it('moves on by small steps, whatever the bends', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(between(-10, 10), between(-10, 10)), { minLength: 3, maxLength: 5 }),
        between(0, 1),
        between(2, 12),
        (points, share, length) => {
          fc.pre(
            points.every(
              ([x, y], k) => k === 0 || Math.hypot(x - points[k - 1]![0], y - points[k - 1]![1]) > 0.1
            )
          );
          const way = wayThrough(...points);
          const along = share * way.length;
          const [a, b] = [placeOn(way, along, 0, length), placeOn(way, along + 0.01, 0, length)];
          expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(0.0101);
        }
      ),
      { seed: SEED, numRuns: 100 }
    );
  });
});

describe('the station of a point', () => {
  it('is the nearest place of the way, and how far to its right the point lies', () => {
    expect(stationOf(corner, [2, 3])).toEqual({ along: 3, offset: 2 });
    expect(stationOf(corner, [-1, 3])).toEqual({ along: 3, offset: -1 });
    expect(stationOf(corner, [7, 9])).toEqual({ along: 17, offset: 1 });
    // before the start and beyond the end
    expect(stationOf(corner, [1, -4])).toEqual({ along: -4, offset: 1 });
    expect(stationOf(corner, [14, 10])).toEqual({ along: 24, offset: 0 });
  });

  it('undoes a place on a straight way', () => {
    fc.assert(
      fc.property(
        between(-5, 25),
        between(-4, 4),
        between(-10, 10),
        between(-10, 10),
        (along, offset, x, y) => {
          fc.pre(Math.hypot(x, y) > 0.1);
          const way = wayThrough([1, 2], [1 + x, 2 + y]);
          const at = placeOn(way, along, offset, 3);
          const found = stationOf(way, [at.x, at.y]);
          expect(found.along).toBeCloseTo(along, 7);
          expect(found.offset).toBeCloseTo(offset, 7);
        }
      ),
      { seed: SEED, numRuns: 100 }
    );
  });
});
