/** A mat of bars under loops: limits, signs, reciprocity, and the same lattice wherever it lies. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filamentsOf } from '#physics/field/filaments';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import { meanHeight, type Winding } from '#physics/inductance/winding';
import { cellSet, latticeMatrix, meshInductances, sharedBars } from '#physics/steel/lattice';
import { barRatio, latticeFactor, matScreen, sinkOf, widened, type Bars } from '#physics/steel/mat';
import {
  inducedDipoles,
  mutualReflection,
  overlapOf,
  ownReflection,
  reflectionOf
} from '#physics/steel/reflection';
import { DIPOLE } from '#physics/field/dipoles';
import { PATIENCE } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { rectangleWinding } from '../support/windings';

const F = 50_000;
const BARS: Bars = { pitch: 0.2, radius: 0.005, resistivity: 1.7e-7, relativePermeability: 100 };
const PERFECT: Bars = { ...BARS, resistivity: 1e-20, relativePermeability: 1 };
const LOOP = rectangleWinding(1.8, 1.8, { turns: 3 });
const Z = meanHeight(LOOP.runs[0]!);

const matUnder = (bars: Bars, count: number, z: number, x = 0, y = 0, heading = 90) => {
  const cells = cellSet(count, count, () => true);
  const half = (count * bars.pitch) / 2;
  const turn = ((heading - 90) * Math.PI) / 180;
  const corner = {
    x: x - half * Math.cos(turn) + half * Math.sin(turn),
    y: y - half * Math.sin(turn) - half * Math.cos(turn),
    heading
  };
  return matScreen(bars, cells, latticeFactor(cells, bars), corner, z);
};
const own = (winding: Winding, bars: Bars, count: number, z: number, x = 0, y = 0, heading = 90) =>
  ownReflection(reflectionOf(matUnder(bars, count, z, x, y, heading), filamentsOf(winding)), F);

describe('the inductances of meshes', () => {
  it('of one mesh: a square of round wire, Rosa 1908, without the internal part', () => {
    const square = rectangleWinding(0.2, 0.2, { turns: 1 });
    const table = meshInductances(
      cellSet(3, 3, () => true),
      0.2,
      square.wireRadius
    );
    expect(relativeError(table[0]!, externalInductance(square))).toBeLessThan(1e-9);
    const beside = rectangleWinding(0.2, 0.2, { turns: 1 }, [0.4, 0]);
    expect(relativeError(table[6]!, mutualInductance(square, beside))).toBeLessThan(1e-9);
  });

  it('make a symmetric matrix that does not depend on where the cells stand in their box', () => {
    const all = latticeMatrix(
      cellSet(4, 4, () => true),
      0.2,
      0.005
    );
    const corner = latticeMatrix(
      cellSet(6, 5, (i, j) => i > 1 && j > 0),
      0.2,
      0.005
    );
    for (let i = 0; i < 16; i++)
      for (let j = 0; j <= i; j++) expect(corner[i * 16 + j]).toBe(all[i * 16 + j]);
  });

  it('share bars: a current in all meshes flows round the rim only', () => {
    const cells = cellSet(3, 4, () => true);
    const voltage = sharedBars(cells, 0.2, new Float64Array(12).fill(1));
    expect(voltage.reduce((sum, value) => sum + value, 0)).toBeCloseTo(0.2 * 14, 12);
  });
});

describe('a mat', { timeout: PATIENCE }, () => {
  it('without bars to speak of does nothing: a hair of a bar, and one that hardly conducts', () => {
    const inductance = externalInductance(LOOP);
    const insulating = own(LOOP, { ...BARS, resistivity: 1e3, relativePermeability: 1 }, 14, -0.12);
    expect(Math.abs(insulating.re) / inductance).toBeLessThan(1e-6);
    expect(Math.abs(insulating.im) / inductance).toBeLessThan(1e-3);
  });

  it('with bars ever closer becomes a sheet: the image of the loop in its plane (method of images)', () => {
    const sheet = -mutualInductance(LOOP, {
      ...LOOP,
      runs: LOOP.runs.map((run) => ({ ...run, heights: run.heights.map((z) => 2 * (Z - 0.4) - z) }))
    });
    const shares = [0.4, 0.2, 0.13].map((pitch) => {
      const bars = { ...PERFECT, pitch, radius: pitch / 2 / Math.PI / 1.001 };
      return own(LOOP, bars, Math.round(4.4 / pitch), Z - 0.4).re / sheet;
    });
    // bars of that radius have no sheet inductance: only the finite extent and the gaps' fine field are left
    expect(shares[2]).toBeGreaterThan(0.985);
    expect(shares[2]).toBeLessThan(1.005);
    expect(Math.abs(shares[2]! - shares[1]!)).toBeLessThan(0.01);
  });

  it('from afar looks like a plane as much deeper as its sheet inductance says', () => {
    const z = Z - 0.6;
    const plane = z - sinkOf(PERFECT, F);
    const image = -mutualInductance(LOOP, {
      ...LOOP,
      runs: LOOP.runs.map((run) => ({ ...run, heights: run.heights.map((h) => 2 * plane - h) }))
    });
    expect(relativeError(own(LOOP, PERFECT, 26, z).re, image)).toBeLessThan(0.02);
  });

  it('takes inductance and adds resistance, less of both the deeper it lies', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.08, max: 0.5, noNaN: true }),
        fc.double({ min: 0.003, max: 0.01, noNaN: true }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.integer({ min: 0, max: 90 }),
        (depth, radius, x, turn) => {
          const at = (d: number) => own(LOOP, { ...BARS, radius }, 13, -d, x, 0.1, 90 + turn);
          const [near, far] = [at(depth), at(depth + 0.1)];
          expect(near.re).toBeLessThan(0);
          expect(near.im).toBeLessThan(0);
          expect(near.re).toBeLessThan(far.re);
          expect(near.im).toBeLessThan(far.im);
          expect(-near.re).toBeLessThan(externalInductance(LOOP));
        }
      ),
      { numRuns: 25 }
    );
  });

  it('couples two loops the same both ways', () => {
    const a = filamentsOf(LOOP);
    const b = filamentsOf(rectangleWinding(1.2, 1.5, { turns: 4 }, [1.4, 0.3]));
    const screen = matUnder(BARS, 18, -0.12, 0.6);
    const [there, back] = [[a, b] as const, [b, a] as const].map(([first, second]) => {
      const reflection = reflectionOf(screen, first);
      return mutualReflection(reflection, overlapOf(reflection, second), F);
    });
    expect(relativeError(there!.re, back!.re)).toBeLessThan(1e-6);
    expect(relativeError(there!.im, back!.im)).toBeLessThan(1e-4);
    // two loops that are one and the same
    const one = reflectionOf(screen, a);
    const self = mutualReflection(one, overlapOf(one, a), F);
    expect(relativeError(self.re, ownReflection(one, F).re)).toBeLessThan(1e-9);
  });

  it('carries the current that opposes the loop: its dipoles point against it', () => {
    const dipoles = inducedDipoles(reflectionOf(matUnder(BARS, 14, -0.12), filamentsOf(LOOP)), F);
    let moment = 0;
    for (let at = 0; at < dipoles.length; at += DIPOLE) moment += dipoles[at + 3]!;
    const loop = 3 * 1.8 * 1.8;
    expect(moment).toBeLessThan(-0.3 * loop);
    expect(moment).toBeGreaterThan(-loop);
  });
});

describe('bars that stand for a closer mat', () => {
  it('have its sheet inductance and its metal per metre', () => {
    const wide = widened({ ...BARS, pitch: 0.1 }, 0.3);
    expect(relativeError(sinkOf(wide, F), sinkOf({ ...BARS, pitch: 0.1 }, F))).toBeLessThan(1e-9);
    const [a, b] = [barRatio(wide, F), barRatio({ ...BARS, pitch: 0.1 }, F)];
    expect(relativeError(a.im * 0.3, b.im * 0.1)).toBeLessThan(1e-12);
  });
});
