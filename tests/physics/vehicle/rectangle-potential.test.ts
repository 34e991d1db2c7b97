import { describe, expect, it } from 'vitest';
import { gaussLegendre } from '#physics/numeric/gauss-legendre';
import { cornerRoom, cornersOf, CORNER_VALUES } from '#physics/vehicle/rectangle-potential';
import { PATIENCE } from '../support/arbitraries';
import { relativeError } from '../support/reference';

/** ∬ 1/r, ∬ u/r, ∬ v/r over a rectangle whose corners are (u0, v0) and (u1, v1) as seen from the point's foot. */
const closed = (u0: number, u1: number, v0: number, v1: number, h: number): number[] => {
  const room = cornerRoom(2, 2);
  cornersOf(Float64Array.of(u0, u1), Float64Array.of(v0, v1), 0, 0, h, room);
  return [0, 1, 2].map((value) => {
    const at = (corner: number): number => room.corners[corner * CORNER_VALUES + value]!;
    return at(3) - at(2) - at(1) + at(0);
  });
};

/** The same by Gauss–Legendre in panels: for points that are not on the rectangle. */
const quadrature = (u0: number, u1: number, v0: number, v1: number, h: number): number[] => {
  const { nodes, weights } = gaussLegendre(16);
  const panels = 6;
  const axis = (from: number, to: number): [number, number][] =>
    Array.from({ length: panels }, (_, p) =>
      nodes.map((node, k): [number, number] => {
        const step = (to - from) / panels;
        return [from + step * (p + (1 + node) / 2), (weights[k]! * step) / 2];
      })
    ).flat();
  const sums = [0, 0, 0];
  for (const [u, wu] of axis(u0, u1))
    for (const [v, wv] of axis(v0, v1)) {
      const share = (wu * wv) / Math.sqrt(u * u + v * v + h * h);
      [1, u, v].forEach((factor, k) => (sums[k]! += factor * share));
    }
  return sums;
};

describe('potential of a rectangle', { timeout: PATIENCE }, () => {
  it.each([
    ['above the middle', -0.5, 0.5, -0.3, 0.3, 0.4],
    ['above a corner', 0, 0.7, 0, 0.2, 0.15],
    ['beside and above', 0.4, 1.1, -2, -0.6, 0.2],
    ['low above a long strip', -3, 3, 0.1, 0.15, 0.1],
    ['in the plane, beside', 0.2, 0.9, -0.4, 0.8, 0],
    ['in the plane, on the line of a side', 0.2, 0.9, 0, 0.8, 0],
    ['far away', 20, 21, 30, 30.5, 3]
  ])('%s agrees with quadrature', (_, u0, u1, v0, v1, h) => {
    const wanted = quadrature(u0, u1, v0, v1, h);
    const scale = Math.abs(wanted[0]!) * Math.max(Math.abs(u0), Math.abs(u1), Math.abs(v0), Math.abs(v1));
    const found = closed(u0, u1, v0, v1, h);
    expect(relativeError(found[0]!, wanted[0]!)).toBeLessThan(1e-8);
    expect(Math.abs(found[1]! - wanted[1]!)).toBeLessThan(1e-8 * scale);
    expect(Math.abs(found[2]! - wanted[2]!)).toBeLessThan(1e-8 * scale);
  });

  it('in the middle and at the corner of a square has the closed forms 4a·ln(1+√2) and 2a·ln(1+√2)', () => {
    const logarithm = Math.log(1 + Math.SQRT2);
    expect(relativeError(closed(-0.5, 0.5, -0.5, 0.5, 0)[0]!, 4 * logarithm)).toBeLessThan(1e-14);
    expect(relativeError(closed(0, 1, 0, 1, 0)[0]!, 2 * logarithm)).toBeLessThan(1e-14);
    expect(closed(-0.5, 0.5, -0.5, 0.5, 0)[1]).toBeCloseTo(0, 14);
  });

  it('adds up over the parts of a cut rectangle, also under its point', () => {
    for (const h of [0, 0.01, 0.3]) {
      const whole = closed(-0.4, 0.9, -0.2, 0.5, h);
      const parts = [closed(-0.4, 0.3, -0.2, 0.5, h), closed(0.3, 0.9, -0.2, 0.5, h)];
      whole.forEach((value, k) => expect(parts[0]![k]! + parts[1]![k]!).toBeCloseTo(value, 13));
    }
  });
});
