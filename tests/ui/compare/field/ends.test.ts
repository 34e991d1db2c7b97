import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import type { Scene } from '#editor/scene';
import {
  angleOf,
  carried,
  gripOf,
  LENGTH,
  lengthOf,
  movedBy,
  offsetOf,
  shiftedTo,
  stretchedTo,
  turnedTo,
  withEnd,
  type Ends
} from '#ui/compare/field/ends';
import { editorOf } from '../../../scenes/frames';
import { siteWith, square } from '../../../editor/sites';

const coordinate = fc.double({ min: -50, max: 50, noNaN: true });
const point: fc.Arbitrary<Point> = fc.tuple(coordinate, coordinate);
const line: fc.Arbitrary<Ends> = fc
  .tuple(point, point)
  .filter(([from, to]) => distance(from, to) >= LENGTH.min && distance(from, to) <= LENGTH.max);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Degrees from one direction to another, without a sign. */
const apart = (a: number, b: number): number => Math.abs(((a - b + 540) % 360) - 180);

describe('the numbers of a line between two ends', () => {
  it('are its direction, its length, and how far it passes the middle on the left', () => {
    const ends: Ends = [[-1, 2], [3, 2]]; // prettier-ignore
    expect(angleOf(ends)).toBe(0);
    expect(lengthOf(ends)).toBe(4);
    expect(offsetOf(ends)).toBe(2);
    expect(offsetOf([ends[1], ends[0]])).toBe(-2);
    expect(angleOf([[0, 0], [0, -1]])).toBe(270); // prettier-ignore
  });

  it('take a new value and leave the others as they were', () => {
    const value = fc.tuple(between(0, 360), between(-20, 20), between(LENGTH.min, LENGTH.max));
    fc.assert(
      fc.property(line, value, (ends, [degrees, offset, length]) => {
        const turned = turnedTo(ends, degrees);
        expect(apart(angleOf(turned), degrees)).toBeLessThan(1e-6);
        expect(lengthOf(turned)).toBeCloseTo(lengthOf(ends), 6);
        expect(distance(gripOf(turned, 'middle'), gripOf(ends, 'middle'))).toBeLessThan(1e-9);

        const shifted = shiftedTo(ends, offset);
        expect(offsetOf(shifted)).toBeCloseTo(offset, 6);
        expect(lengthOf(shifted)).toBeCloseTo(lengthOf(ends), 6);
        expect(apart(angleOf(shifted), angleOf(ends))).toBeLessThan(1e-6);

        const stretched = stretchedTo(ends, length);
        expect(lengthOf(stretched)).toBeCloseTo(length, 6);
        expect(apart(angleOf(stretched), angleOf(ends))).toBeLessThan(1e-6);
        expect(offsetOf(stretched)).toBeCloseTo(offsetOf(ends), 6);
      })
    );
  });
});

describe('an end that is put somewhere', () => {
  it('lies there, or in that direction as near as a line may be long; the other one stays', () => {
    fc.assert(
      fc.property(line, fc.constantFrom('from' as const, 'to' as const), point, (ends, which, at) => {
        const [kept, moved] = which === 'from' ? [1, 0] : [0, 1];
        const next = withEnd(ends, which, at);
        expect(next[kept]).toEqual(ends[kept]);
        expect(lengthOf(next)).toBeGreaterThanOrEqual(LENGTH.min - 1e-9);
        expect(lengthOf(next)).toBeLessThanOrEqual(LENGTH.max + 1e-9);
        const away = distance(at, ends[kept]!);
        if (away >= LENGTH.min && away <= LENGTH.max) expect(distance(next[moved]!, at)).toBeLessThan(1e-9);
      })
    );
  });

  it('changes nothing on top of the other', () => {
    const ends: Ends = [[0, 0], [4, 0]]; // prettier-ignore
    expect(withEnd(ends, 'to', [0, 0])).toBe(ends);
  });
});

describe('a line in the hand', () => {
  const site = siteWith({ shapes: [square(0, 0)] });
  const { state } = editorOf(site);
  const free: Scene = { ...state, snap: { ...state.snap, grid: false, objects: false } };
  const plainly = { shift: false, alt: false, pointer: 'mouse' } as const;

  it('goes exactly with the hand where nothing attracts, and back to where it was', () => {
    fc.assert(
      fc.property(line, point, (begun, by) => {
        const middle = carried({ which: 'middle', begun, by }, plainly, free).ends;
        expect(distance(middle[0], movedBy(begun, by)[0])).toBeLessThan(1e-9);
        expect(distance(middle[1], movedBy(begun, by)[1])).toBeLessThan(1e-9);
        for (const which of ['from', 'middle', 'to'] as const) {
          const still = carried({ which, begun, by: [0, 0] }, plainly, free).ends;
          expect(distance(still[0], begun[0]) + distance(still[1], begun[1])).toBeLessThan(1e-9);
        }
      })
    );
  });

  it('keeps to directions of 15° with shift', () => {
    fc.assert(
      fc.property(line, point, (begun, by) => {
        const { ends } = carried({ which: 'to', begun, by }, { ...plainly, shift: true }, free);
        if (ends === begun) return;
        const over = angleOf(ends) % 15;
        expect(Math.min(over, 15 - over)).toBeLessThan(1e-6);
      })
    );
  });

  it('goes only sideways by its middle with shift', () => {
    fc.assert(
      fc.property(line, point, (begun, by) => {
        const { ends } = carried({ which: 'middle', begun, by }, { ...plainly, shift: true }, free);
        expect(apart(angleOf(ends), angleOf(begun))).toBeLessThan(1e-6);
        const [dx, dy] = [ends[0][0] - begun[0][0], ends[0][1] - begun[0][1]];
        const ahead: Point = [begun[1][0] - begun[0][0], begun[1][1] - begun[0][1]];
        expect(Math.abs(dx * ahead[0] + dy * ahead[1]) / lengthOf(begun)).toBeLessThan(1e-6);
      })
    );
  });

  it('snaps to the middle of a loop as drawing does, and not with alt', () => {
    const scene: Scene = { ...state, snap: { ...state.snap, grid: false, objects: true, centres: true } };
    const begun: Ends = [[-3, 1.5], [3, 1.5]]; // prettier-ignore
    const by: Point = [0.03, -1.46];
    const snapped = carried({ which: 'middle', begun, by }, plainly, scene).ends;
    expect(gripOf(snapped, 'middle')).toEqual([0, 0]);
    const freely = carried({ which: 'middle', begun, by }, { ...plainly, alt: true }, scene).ends;
    expect(gripOf(freely, 'middle')[0]).toBeCloseTo(0.03, 9);
  });
});
