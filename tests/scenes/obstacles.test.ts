import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { boxHolds, type Box } from '#editor/geometry/box';
import { boxOfWriting, lengthInside, takenOf } from '#scenes/obstacles';

const BOX: Box = { left: 100, right: 220, bottom: 40, top: 72 };
const place: fc.Arbitrary<Point> = fc.tuple(
  fc.double({ min: 0, max: 300, noNaN: true }),
  fc.double({ min: 0, max: 120, noNaN: true })
);

describe('how much of a line lies in a box', () => {
  it('is nothing beside it, its width across it, and all of a line within', () => {
    expect(lengthInside([0, 30], [300, 30], BOX)).toBe(0);
    expect(lengthInside([0, 50], [300, 50], BOX)).toBeCloseTo(120, 9);
    expect(lengthInside([150, 0], [150, 300], BOX)).toBeCloseTo(32, 9);
    expect(lengthInside([110, 50], [140, 50], BOX)).toBeCloseTo(30, 9);
    expect(lengthInside([150, 50], [150, 50], BOX)).toBe(0);
  });

  it('is what counting along the line finds, in either direction', () => {
    fc.assert(
      fc.property(place, place, (from, to) => {
        const steps = 2_000;
        const inside = Array.from({ length: steps }, (_, k): Point => {
          const share = (k + 0.5) / steps;
          return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
        }).filter((at) => boxHolds(BOX, at)).length;
        const length = distance(from, to);
        const found = lengthInside(from, to, BOX);
        expect(Math.abs(found - (inside / steps) * length)).toBeLessThanOrEqual((2 * length) / steps + 1e-9);
        expect(lengthInside(to, from, BOX)).toBeCloseTo(found, 6);
      })
    );
  });
});

describe('what an obstacle takes of a box', () => {
  it('is the common area of two boxes, and a line with its width', () => {
    expect(takenOf(BOX, { left: 210, right: 400, bottom: 0, top: 50 })).toBe(100);
    expect(takenOf(BOX, { left: 221, right: 400, bottom: 0, top: 50 })).toBe(0);
    expect(takenOf(BOX, { from: [0, 50], to: [300, 50], width: 6 })).toBeCloseTo(720, 9);
  });
});

describe('the box of a text', () => {
  const text = { kind: 'text', at: [50, 20], text: 'AAAA', colour: '', size: 10 } as const;

  it('lies where the text is aligned, and grows with the size of texts', () => {
    const [left, right] = (['left', 'right'] as const).map((align) => boxOfWriting({ ...text, align }, 1));
    expect(left!.left).toBe(46);
    expect(right!.right).toBe(54);
    const middle = boxOfWriting({ ...text, align: 'center' }, 2);
    expect(middle.right - 50).toBeCloseTo(50 - middle.left, 9);
    expect(middle.top - middle.bottom).toBeCloseTo(28.8, 9);
    expect(middle.right - middle.left - 8).toBeCloseTo(2 * (left!.right - left!.left - 8), 9);
  });
});
