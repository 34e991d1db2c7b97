/**
 * The usual mesh against one three times as fine: what the figures of a vehicle are worth. Found: 0.3 % for the car, 0.5 %
 * for the lorry, 0.4 % for the engine, 0.6 % for the axle; 8 % in the coarse form that only looks for places.
 */
import { describe, expect, it } from 'vitest';
import type { Part } from '#physics/vehicle/parts';
import type { Placement } from '#physics/field/filaments';
import { PATIENCE } from '../support/arbitraries';
import { bodyOf, change, plate } from '../support/vehicles';
import { circleWinding, rectangleWinding } from '../support/windings';

const LOOPS = [
  rectangleWinding(1.8, 1.8, { turns: 3 }),
  rectangleWinding(1.2, 5, { turns: 2 }),
  circleWinding(0.9, { turns: 3 })
];
const PLACES: readonly Placement[] = [
  { x: 0, y: 0, heading: 90 },
  { x: 0.4, y: 1.1, heading: 90 },
  { x: -0.6, y: -1.4, heading: 70 }
];

/** Against the strongest answer of the places: where a narrow part answers next to nothing its share means nothing. */
const worst = (parts: readonly Part[], fineness: number, fine = 3): number =>
  Math.max(
    ...LOOPS.flatMap((loop) => {
      const answers = (value: number) => PLACES.map((at) => change(bodyOf(parts, value), loop, at));
      const converged = answers(fine);
      const strongest = Math.max(...converged.map(Math.abs));
      return answers(fineness).map((value, k) => Math.abs(value - converged[k]!) / strongest);
    })
  );

describe('the mesh of a plate', { timeout: PATIENCE }, () => {
  it.each<[string, readonly Part[]]>([
    ['a small car at 0.45 m', [plate(1.5, 2.8, 0.45)]],
    ['the rear of a lorry at 0.9 m', [plate(2.3, 4, 0.9)]],
    ['an engine at 0.28 m', [plate(0.4, 0.8, 0.28)]],
    ['an axle at 0.42 m', [plate(1.9, 0.3, 0.42)]]
  ])('for %s is good to 0.7 percent', (_, parts) => {
    expect(worst(parts, 1)).toBeLessThan(0.007);
  });

  it('in its coarse form, which only looks for places, is good to 10 %', () => {
    expect(worst([plate(1.5, 2.8, 0.45)], 0.42)).toBeLessThan(0.1);
  });

  it('comes nearer with every refinement', () => {
    const parts = [plate(1.5, 2.8, 0.45)];
    expect(worst(parts, 2)).toBeLessThan(worst(parts, 1));
    expect(worst(parts, 1)).toBeLessThan(worst(parts, 0.42));
  });
});
