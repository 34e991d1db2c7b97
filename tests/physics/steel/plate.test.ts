/** A plate at rest under a loop: images, convergence, losses. */
import { describe, expect, it } from 'vitest';
import { filamentsOf } from '#physics/field/filaments';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import { meanHeight, type Winding } from '#physics/inductance/winding';
import { ownReflection, reflectionOf } from '#physics/steel/reflection';
import { meshSheet, sheetScreen, surfaceRatio, type Metal } from '#physics/steel/sheet';
import { PATIENCE } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { circleWinding, rectangleWinding } from '../support/windings';

const PERFECT: Metal = { resistivity: 1e-20, relativePermeability: 1 };
const STEEL: Metal = { resistivity: 1.7e-7, relativePermeability: 100 };
const F = 50_000;
const LOOP = rectangleWinding(1.8, 1.8, { turns: 3 });
const Z = meanHeight(LOOP.runs[0]!);

const imageIn = (winding: Winding, z: number): number =>
  -mutualInductance(winding, {
    ...winding,
    runs: winding.runs.map((run) => ({ ...run, heights: run.heights.map((height) => 2 * z - height) }))
  });

const change = (
  winding: Winding,
  side: number,
  below: number,
  {
    metal = PERFECT,
    fineness = 1,
    x = 0,
    clearance = Math.abs(below)
  }: {
    metal?: Metal;
    fineness?: number;
    x?: number;
    clearance?: number;
  } = {}
) => {
  const screen = sheetScreen(
    meshSheet(side, side, clearance, fineness),
    metal,
    { x, y: 0, heading: 90 },
    Z - below
  );
  return ownReflection(reflectionOf(screen, filamentsOf(winding)), F);
};

describe(
  'a plate much larger than the loop is the image of the loop in it (method of images)',
  { timeout: PATIENCE },
  () => {
    it.each([0.3, 0.4, 0.6])('%f m below a square loop', (below) => {
      expect(relativeError(change(LOOP, 6, below).re, imageIn(LOOP, Z - below))).toBeLessThan(0.015);
    });

    it('and below a round one', () => {
      const round = circleWinding(0.9, { turns: 3 });
      const z = meanHeight(round.runs[0]!);
      expect(relativeError(change(round, 6, 0.4).re, imageIn(round, z - 0.4))).toBeLessThan(0.012);
    });

    it('seen from either side', () => {
      expect(relativeError(change(LOOP, 5, -0.4).re, change(LOOP, 5, 0.4).re)).toBeLessThan(1e-9);
    });
  }
);

describe('the mesh of a plate at rest', { timeout: PATIENCE }, () => {
  it.each([
    ['a deck 0.3 m below', 3.8, 0.3, 0],
    ['a cover 0.6 m wide, half a metre beside the wire', 0.6, 0.15, 1.7],
    ['a plate half below the loop', 2, 0.35, 1]
  ])('%s: within 1.2 %% of one with four times as many unknowns', (_, side, below, x) => {
    const clearance = Math.max(0.3, below);
    const usual = change(LOOP, side, below, { x, clearance }).re;
    const fine = change(LOOP, side, below, { x, clearance, fineness: 2 }).re;
    expect(relativeError(usual, fine)).toBeLessThan(0.012);
  });
});

describe('a plate of steel', { timeout: PATIENCE }, () => {
  it('takes a little less than a perfect one, and loses power', () => {
    const perfect = change(LOOP, 4, 0.3);
    const steel = change(LOOP, 4, 0.3, { metal: STEEL });
    expect(-perfect.im / -perfect.re).toBeLessThan(1e-4);
    expect(steel.im).toBeLessThan(0);
    expect(-steel.re).toBeLessThan(-perfect.re);
    expect(-steel.re).toBeGreaterThan(0.95 * -perfect.re);
  });

  it('takes less the deeper it lies, and never more than the loop has', () => {
    const all = [0.3, 0.5, 0.8, 1.2].map((below) => -change(LOOP, 4, below, { metal: STEEL }).re);
    expect([...all].sort((a, b) => b - a)).toEqual(all);
    expect(all[0]).toBeLessThan(externalInductance(LOOP));
    expect(all[3]).toBeGreaterThan(0);
  });

  it('has the surface impedance ρ/δ of a thick metal: 1.83 mΩ at 50 kHz with µr = 100', () => {
    const { re, im } = surfaceRatio(STEEL, F);
    const depth = Math.sqrt(1.7e-7 / (Math.PI * F * 4e-7 * Math.PI * 100));
    expect(relativeError(-im * 2 * Math.PI * F, 1.7e-7 / depth)).toBeLessThan(1e-6);
    expect(re).toBe(-im);
  });
});
