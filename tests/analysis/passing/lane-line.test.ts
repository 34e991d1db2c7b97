import { describe, expect, it } from 'vitest';
import { headingOf, lineOf, lineWithoutLane, onLine } from '#analysis/passing/lane-line';
import { extentAlong, pathOffsets } from '#analysis/passing/paths';
import type { Lane, Loop, Point } from '#plan/schema';

const laneAlong = (...centreline: Point[]): Lane => ({ id: 'a', name: '', centreline, width: 3.5 });
const near = (found: Point, wanted: Point): void => {
  expect(found[0]).toBeCloseTo(wanted[0], 12);
  expect(found[1]).toBeCloseTo(wanted[1], 12);
};

describe('the line of a lane', () => {
  it('starts beside the loop and runs the way the lane is drawn, offsets to the right of it', () => {
    const up = lineOf(laneAlong([2, -20], [2, 20]), [3, 5]);
    near(up.origin, [2, 5]);
    expect(headingOf(up)).toBeCloseTo(90, 12);
    near(onLine(up, 4, 1), [3, 9]);
    const down = lineOf(laneAlong([2, 20], [2, -20]), [3, 5]);
    expect(headingOf(down)).toBeCloseTo(-90, 12);
    near(onLine(down, 4, 1), [1, 1]);
    const east = lineOf(laneAlong([-20, 1], [20, 1]), [3, 5]);
    near(onLine(east, 4, 1), [7, 0]);
  });

  it('is the nearest straight part of a lane that bends, whatever points lie twice in one place', () => {
    const bent = laneAlong([0, -20], [0, 0], [0, 0], [30, 0]);
    near(lineOf(bent, [1, -10]).direction, [0, 1]);
    near(lineOf(bent, [15, -2]).direction, [1, 0]);
    near(lineOf(bent, [15, -2]).origin, [15, 0]);
  });

  it('runs along +y through a loop without a lane', () => {
    const line = lineWithoutLane([4, 5], 2);
    near(onLine(line, 3, 0.5), [4.5, 8]);
  });
});

describe('paths', () => {
  it('lie evenly from 0.4 m within the one edge to 0.4 m within the other', () => {
    const offsets = pathOffsets('anywhere', 3.5);
    expect(offsets[0]).toBeCloseTo(-1.35, 12);
    expect(offsets.at(-1)).toBeCloseTo(1.35, 12);
    expect(offsets).toEqual(
      offsets.map((_, k) => expect.closeTo(-1.35 + (2.7 * k) / (offsets.length - 1), 12) as number)
    );
    expect(pathOffsets('lane', 3.5)).toEqual([0]);
    expect(pathOffsets('anywhere', 0.7)).toEqual([0]);
  });
});

it('a loop lies from one of its ends to the other along the line', () => {
  const loop: Loop = {
    id: 'L1',
    name: '',
    turns: 3,
    wire: 'awg14',
    slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
    tail: { length: 0 },
    shape: { kind: 'rectangle', centre: [3, 5], width: 1, length: 4, rotation: 0, cornerCut: 0 }
  };
  const [from, to] = extentAlong(loop, lineOf(laneAlong([-20, 1], [20, 1]), [3, 5]));
  expect([from, to]).toEqual([expect.closeTo(-0.5, 12), expect.closeTo(0.5, 12)]);
});
