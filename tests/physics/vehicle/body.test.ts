import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildBody } from '#physics/vehicle/body';
import type { Part } from '#physics/vehicle/parts';
import { between, PATIENCE, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { change, OVER, plate, rim } from '../support/vehicles';
import { rectangleWinding } from '../support/windings';

const position = fc.tuple(between(-2.5, 2.5), between(-2.5, 2.5));
const plates: fc.Arbitrary<Part> = fc
  .tuple(position, between(0.1, 1.8), between(0.1, 3), between(0.1, 1.2))
  .map(([[x, y], width, length, height]) => plate(width, length, height, x, y));
const rings: fc.Arbitrary<Part> = fc
  .tuple(
    position,
    between(0.1, 1),
    between(0.1, 0.6),
    between(0.002, 0.03),
    fc.tuple(between(-1, 1), between(-1, 1), between(-1, 1)).filter((axis) => Math.hypot(...axis) > 0.01)
  )
  .map(([[x, y], height, radius, conductorRadius, axis]) =>
    rim({ x, y, height, radius, conductorRadius, axis })
  );

describe('every vehicle has an answer: its matrix is positive', { timeout: PATIENCE }, () => {
  const loop = rectangleWinding(1.8, 1.8, { turns: 3 });
  const answers = (parts: readonly Part[]): void => {
    const found = change(buildBody(parts, 0.4), loop);
    expect(found).toBeLessThanOrEqual(0);
    expect(Number.isFinite(found)).toBe(true);
  };

  it('with random plates, drawn into one another as well', () => {
    fc.assert(fc.property(fc.array(plates, { minLength: 1, maxLength: 4 }), answers), {
      seed: SEED,
      numRuns: 20
    });
  });

  it('with random rings among random plates', () => {
    const parts = fc
      .tuple(
        fc.array(plates, { minLength: 1, maxLength: 2 }),
        fc.array(rings, { minLength: 1, maxLength: 4 })
      )
      .map((groups) => groups.flat());
    fc.assert(fc.property(parts, answers), { seed: SEED, numRuns: 25 });
  });

  it('with random rings alone', () => {
    fc.assert(fc.property(fc.array(rings, { minLength: 1, maxLength: 6 }), answers), {
      seed: SEED,
      numRuns: 100
    });
  });

  it.each<[string, readonly Part[]]>([
    ['the same plate twice', [plate(1.6, 4.2, 0.45), plate(1.6, 4.2, 0.45)]],
    ['a plate a millimetre over another', [plate(1.6, 4.2, 0.45), plate(1, 1, 0.451, 0.2, 1)]],
    ['a plate that goes on where another ends', [plate(1, 1, 0.4), plate(1, 1, 0.4, 1, 0)]],
    ['the same ring twice', [rim({ y: 0.5 }), rim({ y: 0.5 })]],
    ['twin tyres', [rim({ x: 0.7 }), rim({ x: 0.72 })]],
    ['a ring in a ring', [rim(), rim({ radius: 0.3 })]],
    ['a ring that lies on a plate', [plate(1.6, 4.2, 0.45), rim({ axis: [0, 0, 1], height: 0.45 })]],
    ['a ring through a plate', [plate(1.6, 4.2, 0.45), rim({ y: 1.1 })]],
    ['a ring along the rim of a plate', [plate(0.62, 0.62, 0.45), rim({ axis: [0, 0, 1], height: 0.45 })]]
  ])('with %s', (_, parts) => answers(parts));
});

describe('parts of one vehicle', () => {
  const loop = rectangleWinding(1.8, 1.8, { turns: 3 });

  it('far from one another answer as if each were alone', () => {
    const one = plate(0.5, 0.5, 0.4, 0.9, 0);
    const far = plate(0.5, 0.5, 0.4, 0.9, 40);
    expect(
      relativeError(change(buildBody([one, far], 0.5), loop), change(buildBody([one], 0.5), loop))
    ).toBeLessThan(1e-5);
  });

  it('shield one another: a plate under a larger one adds less than its own answer, but adds', () => {
    const [large, engine] = [plate(1.6, 3, 0.5), plate(0.8, 0.9, 0.35)];
    const both = change(buildBody([large, engine], 0.6), loop);
    const alone = [large, engine].map((part) => change(buildBody([part], 0.6), loop));
    expect(both).toBeLessThan(alone[0]!);
    expect(both).toBeGreaterThan(alone[0]! + alone[1]!);
  });

  it('do not mind the order in which they are named', () => {
    const parts = [
      plate(1.6, 3, 0.5),
      rim({ x: 0.8, y: 1 }),
      plate(0.6, 0.8, 0.35, 0, 1),
      rim({ x: -0.8, y: 1 })
    ];
    const found = change(buildBody(parts, 0.5), loop, { ...OVER, x: 0.3 });
    expect(
      relativeError(change(buildBody([...parts].reverse(), 0.5), loop, { ...OVER, x: 0.3 }), found)
    ).toBeLessThan(2e-3);
  });

  it('of a ring turn with its axis alone, not with its sense', () => {
    const at = { ...OVER, x: 0.8 };
    const found = change(buildBody([rim({ axis: [1, 0, 0.2] })]), loop, at);
    expect(relativeError(change(buildBody([rim({ axis: [-5, 0, -1] })]), loop, at), found)).toBeLessThan(
      1e-6
    );
  });

  it('that mirror onto themselves are solved in halves, and give what the whole gives', () => {
    const cases: readonly (readonly Part[])[] = [
      [plate(1.6, 3, 0.45), plate(0.8, 0.9, 0.35, 0, 1)],
      [plate(0.5, 0.9, 0.3), rim({ y: 0.7 }), rim({ y: -0.7, axis: [0, 0.3, 1] })],
      [rim({ y: 0.5 }), rim({ y: -0.5, axis: [0, 1, 0] })]
    ];
    const hair = 1e-7;
    for (const parts of cases)
      for (const at of [OVER, { x: 0.7, y: 0.4, heading: 60 }]) {
        const whole = parts.map((part) => ({ ...part, x: part.x + hair }));
        const found = change(buildBody(parts, 0.5), loop, at);
        const wanted = change(buildBody(whole, 0.5), loop, at);
        expect(Math.abs(found - wanted)).toBeLessThan(1e-5 * Math.abs(wanted) + 1e-15);
      }
  });
});
