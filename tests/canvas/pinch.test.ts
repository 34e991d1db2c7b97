import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '#plan/schema';
import { pinchBetween } from '#canvas/input/pinch';
import type { Viewport } from '#editor/types';
import { pannedBy, planToScreen, screenToPlan, zoomedAbout } from '#editor/viewport';

const view: Viewport = { centre: [3, -2], scale: 40, width: 900, height: 700 };
const finger: fc.Arbitrary<Point> = fc.tuple(
  fc.integer({ min: 0, max: 900 }),
  fc.integer({ min: 0, max: 700 })
);
const apart = ([a, b]: readonly [Point, Point]): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('pinch', () => {
  it('keeps the plan under both fingers when they only move apart or along', () => {
    fc.assert(
      fc.property(
        finger,
        finger,
        fc.double({ min: 0.3, max: 3, noNaN: true }),
        finger,
        (a, b, factor, shift) => {
          fc.pre(apart([a, b]) > 50 && apart([a, b]) * factor > 50);
          const by: Point = [shift[0] - 450, shift[1] - 350];
          const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
          const moved = ([x, y]: Point): Point => [
            middle[0] + by[0] + (x - middle[0]) * factor,
            middle[1] + by[1] + (y - middle[1]) * factor
          ];
          const pinch = pinchBetween([a, b], [moved(a), moved(b)]);
          const after = zoomedAbout(pannedBy(view, ...pinch.by), pinch.factor, pinch.about);
          for (const at of [a, b]) {
            const [x, y] = planToScreen(after, screenToPlan(view, at));
            expect(Math.hypot(x - moved(at)[0], y - moved(at)[1])).toBeLessThan(1e-6);
          }
        }
      )
    );
  });

  it('does not run away when the fingers meet', () => {
    const { factor } = pinchBetween([[100, 100], [101, 100]], [[100, 100], [120, 100]]); // prettier-ignore
    expect(factor).toBe(2);
  });
});
