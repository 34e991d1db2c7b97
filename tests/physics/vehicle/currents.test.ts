import { describe, expect, it } from 'vitest';
import { filamentsOf, type Placement } from '#physics/field/filaments';
import { placedSource } from '#physics/field/placed-field';
import type { FieldMaker } from '#physics/field/points';
import { windingSource } from '#physics/field/winding-field';
import type { Winding } from '#physics/inductance/winding';
import { drivenBy, drivenSources, oppose } from '#physics/vehicle/currents';
import { fluxThrough } from '#physics/vehicle/flux';
import type { Body } from '#physics/vehicle/body';
import { fieldAt, fluxUp, integral } from '../support/fields';
import { relativeError } from '../support/reference';
import { BICYCLE, bodyOf, CAR, change, OVER, plate, rim } from '../support/vehicles';
import { circleWinding, mirrored, rectangleWinding } from '../support/windings';

const MU0 = 4e-7 * Math.PI;
const LOOP = rectangleWinding(1.8, 1.8, { turns: 3, bottom: -0.0538 });
const BESIDE: Placement = { x: 0.3, y: 0.4, heading: 75 };

const fluxOf = (body: Body, winding: Winding, at: Placement) => fluxThrough(body, filamentsOf(winding), at);

const sourceOf = (body: Body, winding: Winding, at: Placement): FieldMaker =>
  placedSource(drivenSources(body, drivenBy(body, fluxOf(body, winding, at))), at);

describe('flux of the currents in a vehicle back through the loop', () => {
  const through = (source: FieldMaker): number =>
    LOOP.runs[0]!.heights.reduce((sum, z) => sum + fluxUp([source], [-0.9, 0.9, -0.9, 0.9], z, 8), 0);

  it.each([
    ['a car', CAR, OVER],
    ['a car aslant', CAR, BESIDE],
    ['a low plate', [plate(1.2, 2, 0.2)], OVER],
    [
      'two plates and a rim',
      [plate(1.6, 4.2, 0.5), plate(0.8, 0.8, 0.3, 0, 1), rim({ x: 0.7, y: 1.2 })],
      BESIDE
    ],
    ['a bicycle', BICYCLE, { x: 0.8, y: 0, heading: 90 }]
  ])('of %s is the change of its inductance within 1 %%', (_name, parts, at) => {
    const body = bodyOf(parts);
    const wanted = change(body, LOOP, at);
    expect(wanted).toBeLessThan(0);
    expect(relativeError(through(sourceOf(body, LOOP, at)), wanted)).toBeLessThan(0.01);
  });
});

describe('the field across a plate', () => {
  it.each([
    ['a car', bodyOf(CAR)],
    ['a low plate', bodyOf([plate(1.6, 4.2, 0.25)])]
  ])(
    'of %s vanishes in the mean over the hat of every node, from the third of the rim inwards',
    (_name, body) => {
      const at = { x: 0.2, y: 0.1, heading: 90 };
      const { xs, ys, z } = drivenBy(body, fluxOf(body, LOOP, at)).sheets[0]!;
      const loop = windingSource(LOOP, 1);
      const both = [loop, sourceOf(body, LOOP, at)];
      const strongest = Math.max(
        ...[...xs].flatMap((x) => [...ys].map((y) => Math.abs(fieldAt([loop], [at.x + x, at.y + y, z])[2])))
      );
      /** Of hat·Bz over the cells around a node, and of the hat. */
      const mean = (p: number, q: number): number => {
        const hat = (nodes: Float64Array, k: number, t: number): number =>
          t < nodes[k]!
            ? (t - nodes[k - 1]!) / (nodes[k]! - nodes[k - 1]!)
            : (nodes[k + 1]! - t) / (nodes[k + 1]! - nodes[k]!);
        const halves = (nodes: Float64Array, k: number, f: (t: number) => number): number =>
          integral(f, nodes[k - 1]!, nodes[k]!, 2) + integral(f, nodes[k]!, nodes[k + 1]!, 2);
        const sum = halves(xs, p, (x) =>
          halves(ys, q, (y) => hat(xs, p, x) * hat(ys, q, y) * fieldAt(both, [at.x + x, at.y + y, z])[2])
        );
        return sum / (((xs[p + 1]! - xs[p - 1]!) * (ys[q + 1]! - ys[q - 1]!)) / 4);
      };
      let worst = 0;
      for (let p = 3; p < xs.length - 3; p += 2)
        for (let q = 3; q < ys.length - 3; q += 3) worst = Math.max(worst, Math.abs(mean(p, q)));
      expect(worst).toBeLessThan(0.01 * strongest);
    }
  );
});

describe('a plate that is large against the loop', () => {
  it('throws the field of the image loop below it, and lets none through', () => {
    const small = rectangleWinding(0.5, 0.5, { bottom: 0 });
    const body = bodyOf([plate(6, 6, 0.4)]);
    const source = sourceOf(body, small, OVER);
    const image = windingSource(mirrored(small, 0.4), -1);
    for (const at of [
      [0, 0, 0],
      [0.2, 0.1, 0.1],
      [0.6, -0.3, 0.1]
    ] as const) {
      const [found, wanted] = [fieldAt([source], at), fieldAt([image], at)];
      const missed = Math.hypot(...found.map((value, k) => value - wanted[k]!));
      expect(missed).toBeLessThan(0.02 * Math.hypot(...wanted));
    }
    const above = fieldAt([source, windingSource(small, 1)], [0.1, 0.2, 0.7]);
    expect(Math.hypot(...above)).toBeLessThan(
      0.02 * Math.hypot(...fieldAt([windingSource(small, 1)], [0.1, 0.2, 0.7]))
    );
  });
});

describe('a ring', () => {
  it('carries the flux through it over its inductance, against the loop', () => {
    const lying = rim({ axis: [0, 0, 1], height: 0.3 });
    const { rings } = drivenBy(
      bodyOf([lying]),
      fluxOf(bodyOf([lying]), circleWinding(0.9, { bottom: 0 }), OVER)
    );
    // L = µ0·R·(ln(8R/a) − 2); flux by quadrature of the loop's field over the ring's disc
    const inductance = MU0 * 0.31 * (Math.log((8 * 0.31) / 0.008) - 2);
    const loop = windingSource(circleWinding(0.9, { bottom: 0 }), 1);
    const flux = integral((r) => 2 * Math.PI * r * fieldAt([loop], [r, 0, 0.3])[2], 0, 0.31, 8);
    expect(relativeError(rings[0]!, -flux / inductance)).toBeLessThan(5e-3);
  });

  it('has the same field whichever way its axis points', () => {
    const [one, other] = [rim({ axis: [1, 0, 0] }), rim({ axis: [-2, 0, 0] })].map((ring) =>
      fieldAt([sourceOf(bodyOf([ring]), LOOP, { x: 0.6, y: 0, heading: 90 })], [0.4, 0.1, 0.2])
    );
    one!.forEach((value, k) => expect(Math.abs(value - other![k]!)).toBeLessThan(1e-9 * Math.hypot(...one!)));
  });
});

describe('currents', () => {
  it('solve A·i = −φ, with and without the mirror that halves the problem', () => {
    for (const parts of [CAR, [plate(1.6, 2, 0.4, 0.1, 0), rim({ x: 0.5, axis: [0.3, 0.2, 1] })]]) {
      const body = bodyOf(parts, 0.5);
      const [a, b] = [
        fluxOf(body, LOOP, BESIDE),
        fluxOf(body, circleWinding(0.7, { bottom: -0.05 }), BESIDE)
      ];
      const energy = (x: Float64Array, y: Float64Array): number =>
        x.reduce((sum, value, k) => sum + value * y[k]!, 0);
      // symmetric, and the same number that the inductance code gets from half of the solution
      expect(relativeError(energy(a, oppose(body, b)), energy(b, oppose(body, a)))).toBeLessThan(1e-9);
      expect(relativeError(energy(a, oppose(body, a)), change(body, LOOP, BESIDE))).toBeLessThan(1e-9);
    }
  });

  it('of a plate over the middle of a loop are symmetric, and none flows over the rim', () => {
    const body = bodyOf(CAR);
    const { xs, ys, psi } = drivenBy(body, fluxOf(body, LOOP, OVER)).sheets[0]!;
    const at = (p: number, q: number): number => psi[p * ys.length + q]!;
    const [right, top] = [xs.length - 1, ys.length - 1];
    const size = Math.max(...psi.map(Math.abs));
    for (let p = 0; p <= right; p++)
      for (let q = 0; q <= top; q++) {
        for (const other of [at(right - p, q), at(p, top - q)])
          expect(Math.abs(at(p, q) - other)).toBeLessThan(1e-6 * size);
        if (p === 0 || q === 0 || p === right || q === top) expect(at(p, q)).toBe(0);
      }
    // against the loop's own sense, and less than its own current times its turns
    expect(at(right / 2, top / 2)).toBeLessThan(0);
    expect(size).toBeLessThan(3);
  });
});
