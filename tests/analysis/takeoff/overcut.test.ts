/** Against the circle itself: points of the blade's rim, and its area summed in strips. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bladeReaches, overcutArea, overcutLength } from '#analysis/takeoff/overcut';

describe('what runs past the end of a cut', () => {
  it('is √(d(D − d)): for 350 mm and 50 mm deep √(50 · 300) = 122.474 mm', () => {
    expect(overcutLength(0.35, 0.05)).toBeCloseTo(0.122474, 6);
    // 100 mm of a 200 mm deep circle of 400 mm would be the radius itself; 40 mm of 200 mm: √(40 · 160) = 80 mm
    expect(overcutLength(0.2, 0.04)).toBeCloseTo(0.08, 12);
  });

  it('ends where the rim of the blade meets the road', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), fc.double({ min: 0.01, max: 0.49, noNaN: true }), (diameter, share) => {
        const depth = share * diameter;
        const run = overcutLength(diameter, depth)!;
        // the spindle stands a radius above the deepest point
        expect(Math.hypot(run, diameter / 2 - depth)).toBeCloseTo(diameter / 2, 9);
      })
    ); // prettier-ignore
  });

  it('leaves half a segment to be sealed, as summed in 20,000 strips', () => {
    for (const [diameter, depth] of [
      [0.35, 0.05],
      [0.2, 0.04],
      [0.4, 0.19]
    ] as const) {
      // prettier-ignore
      const run = overcutLength(diameter, depth)!;
      const strips = 20_000;
      let area = 0;
      for (let k = 0; k < strips; k++) {
        const x = ((k + 0.5) / strips) * run;
        area += (Math.sqrt((diameter / 2) ** 2 - x * x) - (diameter / 2 - depth)) * (run / strips);
      }
      expect(overcutArea(diameter, depth)!).toBeCloseTo(area, 9);
    }
  });

  it('is not known for a blade that would have its spindle in the road', () => {
    for (const diameter of [0.05, 0.08, 0.1]) {
      expect(bladeReaches(diameter, 0.05)).toBe(false);
      expect(overcutLength(diameter, 0.05)).toBeNull();
      expect(overcutArea(diameter, 0.05)).toBeNull();
    }
    expect(bladeReaches(0.101, 0.05)).toBe(true);
  });
});
