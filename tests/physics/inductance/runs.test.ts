import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mutualInductance } from '#physics/inductance/loop';
import { mutualOfRuns, selfOfRun, totalLength } from '#physics/inductance/runs';
import { mutualOfSegments } from '#physics/inductance/segments';
import type { RoundRun, StraightRun } from '#physics/inductance/winding';
import { between, PATIENCE, SEED, windings } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { circleWinding, placed, rectangleWinding, singleWires } from '../support/windings';

const MU0 = 4e-7 * Math.PI;

const straight = (over: Partial<StraightRun> = {}): StraightRun => ({
  kind: 'straight',
  x: 0,
  y: 0,
  ux: 1,
  uy: 0,
  length: 1.8,
  heights: [-0.05],
  ...over
});
const round = (over: Partial<RoundRun> = {}): RoundRun => ({
  kind: 'round',
  x: 0,
  y: 0,
  radius: 0.9,
  heights: [-0.05],
  ...over
});

describe('two columns', () => {
  it('are the sum of their wires, pair by pair', () => {
    const a = straight({ heights: [-0.05, -0.046, -0.042] });
    const b = straight({ x: 0.2, y: 0.01, length: 2.4, heights: [-0.06, -0.03] });
    let wanted = 0;
    for (const za of a.heights)
      for (const zb of b.heights)
        wanted += mutualOfSegments([0, 0, za], [1.8, 0, za], [0.2, 0.01, zb], [2.6, 0.01, zb]);
    expect(relativeError(mutualOfRuns(a, b), wanted)).toBeLessThan(1e-13);
  });

  it('change sign with the direction of one', () => {
    const other = straight({ x: 1.8, y: 0.5, ux: -1, heights: [-0.04] });
    expect(mutualOfRuns(straight(), other)).toBeLessThan(0);
    expect(mutualOfRuns(straight(), straight({ y: 0.5, heights: [-0.04] }))).toBe(
      -mutualOfRuns(straight(), other)
    );
  });

  it('at right angles have nothing in common', () => {
    expect(mutualOfRuns(straight(), straight({ ux: 0, uy: 1, y: -0.9, x: 0.4, heights: [-0.02] }))).toBe(0);
  });

  it('of which one is a circle do not depend on the order', () => {
    const side = straight({ y: 0.3, x: -0.5 });
    expect(mutualOfRuns(round(), side, 0.004)).toBe(mutualOfRuns(side, round(), 0.004));
  });

  it('that were drawn into one another count as their insulation apart', () => {
    const [l, d] = [1.8, 0.0038];
    const wanted = (MU0 / (2 * Math.PI)) * (l * Math.asinh(l / d) - Math.hypot(l, d) + d);
    expect(relativeError(mutualOfRuns(straight(), straight(), d), wanted)).toBeLessThan(1e-12);
    // from the insulation's thickness on sideways the drawing holds
    const beside = straight({ y: 2 * d });
    const apart = (MU0 / (2 * Math.PI)) * (l * Math.asinh(l / (2 * d)) - Math.hypot(l, 2 * d) + 2 * d);
    expect(relativeError(mutualOfRuns(straight(), beside, d), apart)).toBeLessThan(1e-12);
  });
});

describe('columns far from one another', () => {
  // one pair at the root mean square height stands for all: 12 times the largest difference is where it starts
  const straightRuns = fc.record({
    heights: fc.array(between(-0.1, -0.02), { minLength: 1, maxLength: 5 }),
    angle: between(-Math.PI, Math.PI),
    length: between(0.3, 8)
  });

  it('differ from the full sum by less than 1e-5 of M', () => {
    fc.assert(
      fc.property(straightRuns, straightRuns, between(1, 3), between(-2, 2), (one, two, distance, slide) => {
        const a = straight({ length: one.length, heights: one.heights });
        const spread = Math.max(...one.heights.flatMap((za) => two.heights.map((zb) => Math.abs(za - zb))));
        const [ux, uy] = [Math.cos(two.angle), Math.abs(Math.sin(two.angle))];
        fc.pre(Math.abs(ux) > 0.01 && spread > 1e-4);
        const b = straight({
          x: slide,
          y: distance * 12.01 * spread,
          ux,
          uy,
          length: two.length,
          heights: two.heights
        });
        let full = 0;
        for (const za of a.heights)
          for (const zb of b.heights) full += mutualOfRuns({ ...a, heights: [za] }, { ...b, heights: [zb] });
        expect(relativeError(mutualOfRuns(a, b), full)).toBeLessThan(1e-5);
      }),
      { seed: SEED, numRuns: 300 }
    );
  });

  it('do so for whole loops of every shape, round ones included', { timeout: PATIENCE }, () => {
    fc.assert(
      fc.property(windings(1), windings(1), between(0, Math.PI), between(3, 9), (one, two, angle, apart) => {
        const other = placed(two, angle, apart, 0.3);
        const full = mutualInductance(singleWires(one), singleWires(other));
        // of a pair's share: a distant pair of loops is a small difference of large ones, 1e-9 H an 1e-4 of them
        expect(Math.abs(mutualInductance(one, other) - full)).toBeLessThan(1e-5 * Math.abs(full) + 1e-13);
      }),
      { seed: SEED, numRuns: 25 }
    );
  });

  it('in particular for a rectangle and a circle 1 cm to 1 m apart in neighbouring slots', () => {
    const wires = { turns: 5, pitch: 0.0043 };
    for (const gap of [0.01, 0.05, 0.1, 0.2, 0.22, 0.5, 1]) {
      const one = rectangleWinding(1.8, 1.8, wires);
      for (const other of [
        rectangleWinding(1.8, 1.8, wires, [1.8 + gap, 0]),
        circleWinding(0.9, wires, [1.8 + gap, 0])
      ]) {
        const full = mutualInductance(singleWires(one), singleWires(other));
        expect(relativeError(mutualInductance(one, other), full)).toBeLessThan(1e-5);
      }
    }
  });
});

describe('a column alone', () => {
  it('of one straight wire has the partial inductance of Rosa 1908', () => {
    const [l, a] = [1.8, 8.14e-4];
    const wanted = ((MU0 * l) / (2 * Math.PI)) * (Math.asinh(l / a) - Math.sqrt(1 + (a / l) ** 2) + a / l);
    expect(relativeError(selfOfRun(straight(), a), wanted)).toBeLessThan(1e-13);
  });

  it('counts every pair of its wires twice', () => {
    const [l, a, d] = [1.8, 8.14e-4, 0.0038];
    const at = (distance: number): number =>
      ((MU0 * l) / (2 * Math.PI)) *
      (Math.asinh(l / distance) - Math.sqrt(1 + (distance / l) ** 2) + distance / l);
    const found = selfOfRun(straight({ heights: [-0.05, -0.05 + d, -0.05 + 2 * d] }), a);
    expect(relativeError(found, 3 * at(a) + 4 * at(d) + 2 * at(2 * d))).toBeLessThan(1e-12);
  });
});

it('the length of wire counts every wire of every run', () => {
  const runs = [straight({ heights: [0, 1, 2] }), round({ heights: [0, 1] })];
  expect(totalLength(runs)).toBeCloseTo(3 * 1.8 + 2 * 2 * Math.PI * 0.9, 12);
});
