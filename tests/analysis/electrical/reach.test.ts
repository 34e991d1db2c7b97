import { describe, expect, it } from 'vitest';
import { createBodyStore } from '#analysis/electrical/bodies';
import { boxOf, footprintOf, gapBetween, reachOf } from '#analysis/electrical/reach';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import { filamentsOf } from '#physics/field/filaments';
import { catalogueVehicles } from '#plan/catalogue/vehicles';
import { PATIENCE } from '../../physics/support/arbitraries';
import { rectangleWinding } from '../../physics/support/windings';
import { circuit, loop, siteOf, square, unit } from '../support/sites';

const parts = footprintOf([
  { kind: 'plate', x: 0.1, y: -1, height: 0.5, width: 1.6, length: 4 },
  { kind: 'ring', x: 0, y: 2, height: 0.34, radius: 0.3, conductorRadius: 0.01, axis: [2, 0, 0] }
]);

describe('what a vehicle covers', () => {
  it('is what its parts cover', () => {
    expect(parts.left).toBeCloseTo(-0.7, 12);
    expect(parts.right).toBeCloseTo(0.9, 12);
    expect(parts.rear).toBeCloseTo(-3, 12);
    expect(parts.front).toBeCloseTo(2.31, 12);
    expect(parts.lowest).toBeCloseTo(0.03, 12);
    expect(parts.main).toBe(0.5);
    expect(parts.longest).toBeCloseTo(4, 12);
    // (1.6·4/π)^1.5 + 0.3³
    expect(parts.strength).toBeCloseTo(2.9076 + 0.027, 3);
  });
});

describe('the gap between a vehicle and a loop', () => {
  // from (0, 0) to (2, 3)
  const box = boxOf(filamentsOf(rectangleWinding(2, 3, {}, [1, 1.5])));

  it('sees the whole loop, and its moment', () => {
    expect([box.left, box.right, box.bottom, box.top].map((each) => Math.round(1e9 * each) / 1e9)).toEqual([
      0, 2, 0, 3
    ]);
    expect(box.moment).toBeCloseTo(6, 9);
    expect(boxOf(filamentsOf(rectangleWinding(2, 3, { turns: 4 }))).moment).toBeCloseTo(24, 9);
  });

  it.each([
    [1, 1, 90, 0],
    // its right side is at −1.1
    [-2, 1, 90, 1.1],
    // its front is at −0.69, its right side at −0.1: from corner to corner
    [-1, -3, 90, Math.hypot(0.1, 0.69)],
    // heading along +x its front is at −0.69
    [-3, 1, 0, 0.69],
    // heading along −y its rear is 3 m above its origin, its right side towards −x
    [1, -4, 270, 1]
  ])('at (%f, %f) heading %f is %f m', (x, y, heading, wanted) => {
    expect(gapBetween(box, parts, { x, y, heading })).toBeCloseTo(wanted, 9);
  });
});

describe('beyond its reach', { timeout: PATIENCE }, () => {
  const bodies = createBodyStore();
  const shapes = [
    square(0, 0),
    { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 15 },
    { kind: 'rectangle', centre: [0, 0], width: 3, length: 6 },
    { kind: 'circle', centre: [0, 0], diameter: 1.8 }
  ];
  const circuits = shapes.map(
    (shape) =>
      createSurveyor()
        .survey(siteOf({ loops: [loop('L', shape)], circuits: [circuit('C', ['L'])], units: [unit('U1')] }))
        .circuits.get('C')!.solved
  );

  it.each(catalogueVehicles)(
    '$id answers with less than 2.5·10⁻⁶, beside and behind every loop',
    (vehicle) => {
      const body = bodies.get(vehicle);
      const footprint = footprintOf(body.parts);
      for (const solved of circuits) {
        const box = boxOf(solved.input.loops[0]!.model.filaments);
        const { own: reach, field } = reachOf(box, footprint, solved.inductance);
        expect(field).toBe(reach);
        const beside = { x: box.right + reach - footprint.left, y: 0, heading: 90 };
        const behind = { x: 0, y: box.bottom - reach - footprint.front, heading: 90 };
        const across = { x: box.left - reach - footprint.front, y: 0, heading: 0 };
        for (const at of [beside, behind, across]) {
          expect(gapBetween(box, footprint, at)).toBeCloseTo(reach, 9);
          expect(-vehicleEffect(solved, body, at)).toBeLessThan(2.5e-6);
        }
      }
    }
  );
});
