import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circleAndSegment, parallelCircles } from '#physics/inductance/circles';
import { buildBody } from '#physics/vehicle/body';
import { filamentsOf, type Placement } from '#physics/field/filaments';
import { fluxThrough } from '#physics/vehicle/flux';
import { between, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { bodyOf, OVER, plate, rim } from '../support/vehicles';
import { circleWinding, rectangleWinding } from '../support/windings';

const MU0 = 4e-7 * Math.PI;
const TURNS = { turns: 3, bottom: -0.0538 };
/** Middle of three turns at 3.8 mm. */
const MIDDLE = -0.05;

const ringFlux = (
  part: Parameters<typeof rim>[0],
  winding: ReturnType<typeof circleWinding>,
  at: Placement
) => fluxThrough(buildBody([rim(part)]), filamentsOf(winding), at)[0]!;

describe('flux through a lying ring', () => {
  it('of a round loop is the mutual inductance of circles', () => {
    for (const [x, height] of [
      [0, 0.3],
      [0.4, 0.3],
      [0.9, 0.25],
      [1.6, 0.5]
    ] as const) {
      const found = ringFlux({ axis: [0, 0, 1], height }, circleWinding(0.9, TURNS), {
        x,
        y: 0,
        heading: 90
      });
      const wanted = 3 * parallelCircles(0.9, 0.31, x, height - MIDDLE);
      expect(relativeError(found, wanted)).toBeLessThan(5e-3);
    }
  });

  it('of a rectangle is the sum of a circle and its sides', () => {
    for (const [x, y, height] of [
      [0, 0, 0.3],
      [0.6, 0.2, 0.25],
      [1.4, -0.7, 0.4]
    ] as const) {
      const found = ringFlux({ axis: [0, 0, 1], height }, rectangleWinding(1.8, 2.4, TURNS), {
        x,
        y,
        heading: 90
      });
      const corners = [
        [-0.9, -1.2],
        [0.9, -1.2],
        [0.9, 1.2],
        [-0.9, 1.2]
      ] as const;
      const wanted = corners.reduce((sum, [cx, cy], k) => {
        const [ex, ey] = corners[(k + 1) % 4]!;
        const l = Math.hypot(ex - cx, ey - cy);
        const one = circleAndSegment(0.31, cx - x, cy - y, (ex - cx) / l, (ey - cy) / l, l, height - MIDDLE);
        return sum + 3 * one;
      }, 0);
      expect(relativeError(found, wanted)).toBeLessThan(1e-3);
    }
  });
});

describe('flux through a standing ring', () => {
  it('vanishes in the plane of symmetry of a loop and changes sign across a wire-free middle', () => {
    const loop = rectangleWinding(1.8, 1.8, TURNS);
    const at = (x: number) => ringFlux({}, loop, { x, y: 0, heading: 90 });
    expect(Math.abs(at(0))).toBeLessThan(1e-9 * Math.abs(at(0.9)));
    expect(relativeError(at(0.5), -at(-0.5))).toBeLessThan(1e-6);
  });
});

describe('flux through a plate', () => {
  it('of a wide loop is its field in the middle, √2·2µ0·N·I/πs, on every hat', () => {
    // a small plate in the plane of a large square of side s sees the field of its centre
    const [side, height] = [40, 0.2];
    const body = buildBody([plate(0.5, 0.4, height)], 0.5);
    const mesh = body.plates[0]!;
    const flux = fluxThrough(body, filamentsOf(rectangleWinding(side, side, { bottom: height })), OVER);
    const field = (2 * Math.SQRT2 * MU0) / (Math.PI * side);
    const volume = new Float64Array(mesh.unknowns);
    mesh.pointIndex.forEach((index, k) => {
      if (index >= 0) volume[index]! += mesh.pointWeight[k]!;
    });
    flux.forEach((value, k) => expect(relativeError(value, field * volume[k]!)).toBeLessThan(1e-3));
  });

  it('of several turns is as much for each of them', () => {
    const body = bodyOf([plate(0.8, 1.2, 0.4)], 0.5);
    const one = fluxThrough(body, filamentsOf(rectangleWinding(1.8, 1.8, { bottom: MIDDLE })), OVER);
    const three = fluxThrough(body, filamentsOf(rectangleWinding(1.8, 1.8, TURNS)), OVER);
    three.forEach((value, k) =>
      expect(Math.abs(value - 3 * one[k]!)).toBeLessThan(1e-12 * Math.abs(3 * one[k]!))
    );
  });
});

describe('a placement', () => {
  const loop = rectangleWinding(1.8, 2.4, TURNS, [0.3, 0.2]);
  const fluxOf = (x: number, y: number, at: Placement): Float64Array =>
    fluxThrough(bodyOf([plate(0.6, 0.6, 0.4, x, y)], 0.5), filamentsOf(loop), at);
  const total = (flux: Float64Array): number => flux.reduce((sum, value) => sum + value, 0);

  it.each([
    [90, 0.5, 1.2],
    [0, 1.2, -0.5],
    [180, -1.2, 0.5],
    [270, -0.5, -1.2]
  ])('with heading %i° puts a part 0.5 m to the right and 1.2 m ahead at (%f, %f)', (heading, x, y) => {
    const found = total(fluxOf(0.5, 1.2, { x: 0, y: 0, heading }));
    expect(relativeError(found, total(fluxOf(0, 0, { x, y, heading: 90 })))).toBeLessThan(1e-9);
  });

  it('a whole turn further is the same', () => {
    fc.assert(
      fc.property(between(-360, 360), between(-2, 2), (heading, x) => {
        const one = fluxOf(0.2, 0.3, { x, y: 0, heading });
        const other = fluxOf(0.2, 0.3, { x, y: 0, heading: heading + 360 });
        one.forEach((value, k) => expect(Math.abs(other[k]! - value)).toBeLessThan(1e-15));
      }),
      { seed: SEED, numRuns: 20 }
    );
  });
});
