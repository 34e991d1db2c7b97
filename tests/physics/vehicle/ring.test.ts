import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coaxialCircles, parallelCircles } from '#physics/inductance/circles';
import type { RingPart } from '#physics/vehicle/parts';
import { mutualOfRings, ringPath, type RingPath } from '#physics/vehicle/ring';
import { between, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';

const MU0 = 4e-7 * Math.PI;
const ring = (over: Partial<RingPart> = {}): RingPart => ({
  kind: 'ring',
  x: 0,
  y: 0,
  height: 0.34,
  radius: 0.31,
  conductorRadius: 0.008,
  axis: [0, 0, 1],
  ...over
});
const wound = (part: RingPart): RingPath => ringPath(part, 1);
const axes = fc
  .tuple(between(-1, 1), between(-1, 1), between(-1, 1))
  .filter((axis) => Math.hypot(...axis) > 0.01);

describe('a ring', () => {
  it('has L = µ0·R·(ln(8R/a) − 2): 1.456 µH for a rim of 0.31 m and 8 mm', () => {
    const wanted = MU0 * 0.31 * (Math.log((8 * 0.31) / 0.008) - 2);
    expect(relativeError(wound(ring()).inductance, wanted)).toBeLessThan(1e-14);
    expect(wanted).toBeCloseTo(1.456e-6, 9);
  });

  it('lies on its circle round its axis, whatever the axis', () => {
    fc.assert(
      fc.property(axes, between(0.1, 2), (axis, radius) => {
        const path = wound(ring({ axis, radius, x: 1, y: -2 }));
        const size = Math.hypot(...axis);
        let length = 0;
        const closing = [0, 0, 0];
        for (let k = 0; k < path.x.length; k++) {
          const from = [path.x[k]! - 1, path.y[k]! + 2, path.z[k]! - 0.34];
          const step = [path.dx[k]!, path.dy[k]!, path.dz[k]!];
          expect(Math.hypot(...from)).toBeCloseTo(radius, 12);
          const along = (v: number[]): number =>
            v.reduce((sum, value, m) => sum + (value * axis[m]!) / size, 0);
          expect(along(from)).toBeCloseTo(0, 12);
          expect(along(step)).toBeCloseTo(0, 12);
          length += Math.hypot(...step);
          step.forEach((value, m) => (closing[m]! += value));
        }
        expect(length).toBeCloseTo(2 * Math.PI * radius, 12);
        closing.forEach((value) => expect(value).toBeCloseTo(0, 12));
      }),
      { seed: SEED, numRuns: 50 }
    );
  });
});

describe('two rings', () => {
  it('on one axis or in one plane have the closed form of circles', () => {
    const below = wound(ring());
    const above = wound(ring({ height: 0.64, radius: 0.4 }));
    expect(relativeError(mutualOfRings(below, above), coaxialCircles(0.31, 0.4, 0.3))).toBeLessThan(1e-5);
    const beside = wound(ring({ x: 0.9 }));
    expect(relativeError(mutualOfRings(below, beside), parallelCircles(0.31, 0.31, 0.9, 0))).toBeLessThan(
      1e-5
    );
  });

  it('that stand one behind the other, as wheels do, have that of circles in one plane', () => {
    const front = wound(ring({ y: 0.525, axis: [1, 0, 0] }));
    const rear = wound(ring({ y: -0.525, axis: [1, 0, 0] }));
    expect(relativeError(mutualOfRings(front, rear), parallelCircles(0.31, 0.31, 1.05, 0))).toBeLessThan(
      1e-5
    );
  });

  it('have M_ij = M_ji, and the other sign with one axis turned round', () => {
    fc.assert(
      fc.property(axes, axes, between(0.7, 3), (one, two, distance) => {
        const a = wound(ring({ axis: one }));
        const b = wound(ring({ axis: two, x: distance, radius: 0.2 }));
        const [x, y, z] = two;
        const turned = wound(ring({ axis: [-x, -y, -z], x: distance, radius: 0.2 }));
        const M = mutualOfRings(a, b);
        expect(Math.abs(mutualOfRings(b, a) - M)).toBeLessThan(1e-20);
        expect(Math.abs(mutualOfRings(a, turned) + M)).toBeLessThan(1e-12);
      }),
      { seed: SEED, numRuns: 50 }
    );
  });

  it('have |k| < 1, however close: their matrix must have an answer', () => {
    for (const conductorRadius of [0.002, 0.008, 0.03])
      for (const apart of [0, 0.001, 0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.12]) {
        const a = wound(ring({ conductorRadius, axis: [1, 0, 0] }));
        const b = wound(ring({ conductorRadius, axis: [1, 0, 0], x: apart }));
        const k = mutualOfRings(a, b) / Math.sqrt(a.inductance * b.inductance);
        expect(Math.abs(k)).toBeLessThan(1 + 1e-9);
      }
  });
});
