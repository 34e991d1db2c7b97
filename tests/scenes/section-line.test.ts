import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { common } from '#scenes/obstacles';
import { GRIP, gripPlaces, letterBox, sectionOnScreen } from '#scenes/section-line';

const VIEW = { centre: [0, 0], scale: 50, width: 1000, height: 800 } as const;
const ACROSS = { from: [-2, 0], to: [2, 0] } as const;
const point: fc.Arbitrary<Point> = fc.tuple(
  fc.double({ min: -12, max: 12, noNaN: true }),
  fc.double({ min: -9, max: 9, noNaN: true })
);

describe('the letters of a section', () => {
  it('leave the way beyond an end where something lies there, at the same distance', () => {
    const [, usual] = sectionOnScreen(ACROSS, VIEW, 1)!.letters;
    const covered = { left: usual[0] - 4, right: usual[0] + 200, bottom: usual[1] - 9, top: usual[1] + 9 };
    const [first, moved] = sectionOnScreen(ACROSS, VIEW, 1, [covered])!.letters;
    expect(first).toEqual(sectionOnScreen(ACROSS, VIEW, 1)!.letters[0]);
    expect(moved).not.toEqual(usual);
    expect(common(letterBox(moved, 1), covered)).toBe(0);
    expect(distance(moved, [600, 400])).toBeCloseTo(distance(usual, [600, 400]), 9);
  });

  it('stay on the screen where their end is just within it', () => {
    const { letters } = sectionOnScreen({ from: [-5, 0], to: [9.9, 0] }, VIEW, 1)!;
    expect(letterBox(letters[1], 1).right).toBeLessThanOrEqual(VIEW.width + 4);
    expect(letters[1][0]).toBeLessThan(1000);
  });

  it('never lie on the grip of their end, whatever the direction and the size of texts', () => {
    fc.assert(
      fc.property(point, point, fc.double({ min: 1, max: 2, noNaN: true }), (from, to, textScale) => {
        const seen = sectionOnScreen({ from, to }, VIEW, textScale);
        if (!seen) return;
        for (const [n, end] of seen.ends.entries())
          expect(distance(seen.letters[n]!, end)).toBeGreaterThan(GRIP.half + 6 * textScale);
      })
    );
  });
});

describe('the grips of a section', () => {
  const names = (...args: Parameters<typeof gripPlaces>) => gripPlaces(...args).map(({ which }) => which);

  it('are its ends and its middle', () => {
    expect(gripPlaces(ACROSS, VIEW, null)).toEqual([
      { which: 'from', at: [400, 400] },
      { which: 'middle', at: [500, 400] },
      { which: 'to', at: [600, 400] }
    ]);
  });

  it('give way where the line is short on the screen or out of sight', () => {
    expect(names(ACROSS, { ...VIEW, scale: 10 }, null)).toEqual(['from', 'to']);
    expect(names(ACROSS, { ...VIEW, scale: 5 }, null)).toEqual([]);
    expect(names({ from: [-2, 0], to: [30, 0] }, VIEW, null)).toEqual(['from']);
    expect(names({ from: [-2, 20], to: [2, 20] }, VIEW, null)).toEqual([]);
  });

  it('stay in the hand that holds them', () => {
    expect(names({ from: [-2, 0], to: [30, 0] }, VIEW, 'to')).toEqual(['from', 'to']);
    expect(names(ACROSS, { ...VIEW, scale: 5 }, 'middle')).toEqual(['middle']);
  });

  it('can always be told apart by a pointer', () => {
    fc.assert(
      fc.property(point, point, fc.double({ min: 0.1, max: 400, noNaN: true }), (from, to, scale) => {
        const places = gripPlaces({ from, to }, { ...VIEW, scale }, null).map(({ at }) => at);
        for (const [n, a] of places.entries())
          for (const b of places.slice(0, n))
            expect(distance(a, b)).toBeGreaterThanOrEqual(GRIP.apart - 1e-9);
      })
    );
  });
});
