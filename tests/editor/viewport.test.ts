import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Viewport } from '#editor/types';
import {
  fitted,
  pannedBy,
  planToScreen,
  SCALE_LIMITS,
  screenToPlan,
  visibleBox,
  zoomedAbout
} from '#editor/viewport';

const coordinate = fc.double({ min: -20_000, max: 20_000, noNaN: true });
const views: fc.Arbitrary<Viewport> = fc.record({
  centre: fc.tuple(coordinate, coordinate),
  scale: fc.double({ min: 0.02, max: 4_000, noNaN: true }),
  width: fc.integer({ min: 1, max: 4_000 }),
  height: fc.integer({ min: 1, max: 3_000 })
});
const inView = (view: Viewport) =>
  fc.tuple(
    fc.double({ min: 0, max: view.width, noNaN: true }),
    fc.double({ min: 0, max: view.height, noNaN: true })
  );
const viewsWithPoint = views.chain((view) => inView(view).map((screen) => ({ view, screen })));

describe('viewport', () => {
  it('puts the y axis of the plan upwards on the screen', () => {
    const view: Viewport = { centre: [10, 20], scale: 50, width: 800, height: 600 };
    expect(planToScreen(view, [10, 20])).toEqual([400, 300]);
    expect(planToScreen(view, [11, 22])).toEqual([450, 200]);
  });

  it('comes back from the screen to the same plan point', () => {
    fc.assert(
      fc.property(viewsWithPoint, ({ view, screen }) => {
        const [x, y] = planToScreen(view, screenToPlan(view, screen));
        expect(Math.hypot(x - screen[0], y - screen[1])).toBeLessThan(1e-6);
      })
    );
  });

  it('keeps the plan point under the cursor while zooming', () => {
    fc.assert(
      fc.property(
        viewsWithPoint,
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        ({ view, screen }, factor) => {
          const before = screenToPlan(view, screen);
          const after = screenToPlan(zoomedAbout(view, factor, screen), screen);
          // A double holds 20 km to some picometres.
          expect(Math.hypot(after[0] - before[0], after[1] - before[1])).toBeLessThan(1e-9);
        }
      )
    );
  });

  it('stays within its limits however often it is zoomed', () => {
    const view: Viewport = { centre: [0, 0], scale: 40, width: 800, height: 600 };
    const zoomed = (factor: number) =>
      Array.from({ length: 200 }).reduce<Viewport>((last) => zoomedAbout(last, factor, [1, 2]), view);
    expect(zoomed(1.5).scale).toBe(SCALE_LIMITS.max);
    expect(zoomed(0.5).scale).toBe(SCALE_LIMITS.min);
    expect(zoomedAbout(view, Number.NaN, [0, 0])).toBe(view);
    expect(zoomedAbout(view, 0, [0, 0])).toBe(view);
  });

  it('moves the drawing with the hand', () => {
    const view: Viewport = { centre: [0, 0], scale: 50, width: 800, height: 600 };
    const [x, y] = planToScreen(pannedBy(view, 30, -20), [1, 1]);
    const [beforeX, beforeY] = planToScreen(view, [1, 1]);
    expect([x - beforeX, y - beforeY]).toEqual([30, -20]);
  });

  it('fits a box into the surface with room around it', () => {
    const sized = fc.tuple(
      coordinate,
      coordinate,
      fc.double({ min: 0.5, max: 500, noNaN: true }),
      fc.double({ min: 0.5, max: 500, noNaN: true })
    );
    fc.assert(
      fc.property(views, sized, (view, [left, bottom, width, height]) => {
        const box = { left, bottom, right: left + width, top: bottom + height };
        const seen = visibleBox(fitted(view, box));
        const scale = fitted(view, box).scale;
        fc.pre(scale > SCALE_LIMITS.min);
        expect(seen.left).toBeLessThan(box.left);
        expect(seen.right).toBeGreaterThan(box.right);
        expect(seen.bottom).toBeLessThan(box.bottom);
        expect(seen.top).toBeGreaterThan(box.top);
      })
    );
  });
});
