import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { built, limitsOf, type CircuitInputKey } from '#analysis/tolerance/disturb';
import { wireOf } from '#plan/catalogue/wires';
import { emptySite } from '#plan/read';
import type { Circuit, Site } from '#plan/schema';
import { centreOf, pathOf, problemOf } from '#plan/shapes/index';
import { loops, SEED } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { circuit, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const siteOfShapes = (...shapes: readonly Json[]): Site =>
  siteOf({
    loops: shapes.map((shape, k) => loop(`L${k}`, shape)),
    circuits: [
      circuit(
        'C1',
        shapes.map((_, k) => `L${k}`)
      )
    ],
    units: [unit('U1')]
  });

const shapesAfter = (site: Site, dimensions: number) =>
  built(site, site.circuits[0]!, { dimensions }).site.loops.map(({ shape }) => shape);

describe('a circuit built otherwise', () => {
  const box = { centre: [3, 4], width: 1.75, length: 2.5, rotation: 30 };

  it('has every side longer and keeps centre, turn and corner cuts', () => {
    const site = siteOfShapes(
      { kind: 'rectangle', cornerCut: 0.3, ...box },
      { kind: 'quadrupole', ...box, centre: [9, 4] },
      { kind: 'circle', centre: [0, 20], diameter: 2 }
    );
    expect(shapesAfter(site, 0.25)).toMatchObject([
      { centre: [3, 4], width: 2, length: 2.75, rotation: 30, cornerCut: 0.3 },
      { centre: [9, 4], width: 2, length: 2.75 },
      { centre: [0, 20], diameter: 2.25 }
    ]);
  });

  it('has a polygon scaled about its centre: a square side grows by the tolerance, whichever way it is turned', () => {
    const points = [
      [0, -1],
      [1, 0],
      [0, 1],
      [-1, 0]
    ];
    const site = siteOfShapes({ kind: 'polygon', points });
    const [shape] = shapesAfter(site, 0.1);
    expect(pathOf(shape!).sawCut / 4).toBeCloseTo(Math.SQRT2 + 0.1, 12);
    expect(centreOf(shape!)[0]).toBeCloseTo(0, 12);
    expect(centreOf(shape!)[1]).toBeCloseTo(0, 12);
  });

  it('has thicker insulation on its own wire alone, a longer first cable, another day and another pavement', () => {
    const site = siteOf({
      loops: [loop('L1', square(0, 0)), loop('L2', square(0, 9), { wire: 'awg12' })],
      circuits: [circuit('C1', ['L1'])],
      units: [unit('U1')]
    });
    const other = built(site, site.circuits[0]!, {
      wirePitch: 0.0005,
      leadInLength: -3,
      temperature: 10,
      permittivity: 2,
      depth: 0.0625
    });
    expect(wireOf('awg14', other.site)).toMatchObject({
      conductorDiameter: 0.001628,
      insulatedDiameter: 0.0043
    });
    expect(wireOf('awg12', other.site)).toEqual(wireOf('awg12', site));
    expect(other.circuit.leadIn.length).toBe(27);
    expect(other.site).toMatchObject({ temperature_C: 30, pavement: { relativePermittivity: 7 } });
    expect(other.site.loops.map(({ slot }) => slot.depth)).toEqual([0.1125, 0.05]);
  });

  it('is the circuit as drawn when nothing is off', () => {
    const site = siteOfShapes({ kind: 'rectangle', ...box });
    expect(built(site, site.circuits[0]!, {})).toEqual({ site, circuit: site.circuits[0] });
  });
});

describe('the limits of what can be built', () => {
  it('hold nothing off, and loops at either end can still be cut', () => {
    fc.assert(
      fc.property(fc.array(loops(), { minLength: 1, maxLength: 3 }), (drawn) => {
        const named = drawn.map((each, k) => ({ ...each, id: `L${k}` }));
        const only: Circuit = {
          id: 'C1',
          name: '',
          strings: [named.map(({ id }) => ({ loop: id, reversed: false }))],
          leadIn: { cable: 'pair-14', length: 10 },
          channel: null,
          detect: []
        };
        const site = { ...emptySite(), loops: named };
        const limits = limitsOf(site, only);
        for (const [least, most] of Object.values(limits)) {
          expect(least).toBeLessThanOrEqual(0);
          expect(most).toBeGreaterThanOrEqual(0);
        }
        for (const dimensions of [limits.dimensions[0], Math.min(1, limits.dimensions[1])]) {
          const other = built(site, only, { dimensions });
          other.site.loops.forEach(({ shape }, k) => {
            expect(problemOf(shape)).toBeNull();
            expect(shape === named[k]!.shape).toBe(dimensions === 0);
          });
        }
      }),
      { seed: SEED, numRuns: 60 }
    );
  });

  it.each([
    ['leadInLength', -30],
    ['depth', -0.045],
    ['permittivity', -4],
    ['temperature', -80]
  ] as readonly (readonly [CircuitInputKey, number])[])('end where the document does: %s', (input, least) => {
    const site = siteOfShapes(square(0, 0));
    expect(limitsOf(site, site.circuits[0]!)[input][0]).toBeCloseTo(least, 12);
  });

  it('leave a wire some insulation', () => {
    const site = siteOfShapes(square(0, 0));
    const [least] = limitsOf(site, site.circuits[0]!).wirePitch;
    const { insulatedDiameter, conductorDiameter } = wireOf('awg14', site)!;
    expect(relativeError(insulatedDiameter + least, conductorDiameter)).toBeLessThan(0.05);
    expect(insulatedDiameter + least).toBeGreaterThan(conductorDiameter);
  });
});
