import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addCorners, cornersOf } from '#physics/field/sheet-corners';
import { sheetSource, type SheetCurrent } from '#physics/field/sheet-field';
import { placedSource } from '#physics/field/placed-field';
import { gradedNodes } from '#physics/vehicle/mesh';
import { between, SEED } from '../support/arbitraries';
import { fieldAt, integral, relativeDivergence, type Vector } from '../support/fields';
import { relativeError } from '../support/reference';

const MU0 = 4e-7 * Math.PI;

/** A hump of current that is not symmetric, on a mesh as a vehicle's. */
const humped = (width: number, length: number, step: number): SheetCurrent => {
  const [xs, ys] = [gradedNodes(width, step, 1), gradedNodes(length, step, 1)];
  const psi = Float64Array.from({ length: xs.length * ys.length }, (_, k) => {
    const [x, y] = [xs[Math.floor(k / ys.length)]!, ys[k % ys.length]!];
    const [a, b] = [width * width - 4 * x * x, length * length - 4 * y * y];
    return Math.sqrt(Math.max(0, a * b)) * (1 + 0.4 * x + Math.exp(-y * y));
  });
  return { xs, ys, z: 0.45, psi };
};

/** By the closed form everywhere. */
const exact = ({ xs, ys, z, psi }: SheetCurrent) => {
  const corners = cornersOf(xs, ys, psi);
  return {
    add: (points: Parameters<ReturnType<typeof sheetSource>['add']>[0], field: typeof points) => {
      for (let k = 0; k < points.x.length; k++) {
        const one = new Float64Array(3);
        addCorners(corners, points.x[k]!, points.y[k]!, points.z[k]! - z, one);
        field.x[k]! += one[0]!;
        field.y[k]! += one[1]!;
        field.z[k]! += one[2]!;
      }
    }
  };
};

const CAR = humped(1.6, 4.2, 0.36);
const CLOSED = exact(CAR);
const SERVED = sheetSource(CAR);

/** The law of Biot and Savart, K = (∂ψ/∂y, −∂ψ/∂x), integrated cell by cell by quadrature. */
const byQuadrature = ({ xs, ys, z, psi }: SheetCurrent, [x, y, h]: Vector): Vector => {
  const sum = [0, 0, 0];
  for (let p = 0; p < xs.length - 1; p++)
    for (let q = 0; q < ys.length - 1; q++) {
      const [x0, x1, y0, y1] = [xs[p]!, xs[p + 1]!, ys[q]!, ys[q + 1]!];
      const at = (i: number, j: number): number => psi[(p + i) * ys.length + q + j]!;
      const part = (which: 0 | 1 | 2): number =>
        integral(
          (s) =>
            integral(
              (t) => {
                const [a, b] = [(s - x0) / (x1 - x0), (t - y0) / (y1 - y0)];
                const kx = ((1 - a) * (at(0, 1) - at(0, 0)) + a * (at(1, 1) - at(1, 0))) / (y1 - y0);
                const ky = -((1 - b) * (at(1, 0) - at(0, 0)) + b * (at(1, 1) - at(0, 1))) / (x1 - x0);
                const [rx, ry, rz] = [x - s, y - t, h - z];
                const cube = Math.hypot(rx, ry, rz) ** 3;
                return [ky * rz, -kx * rz, kx * ry - ky * rx][which]! / cube;
              },
              y0,
              y1,
              2
            ),
          x0,
          x1,
          2
        );
      sum[0]! += part(0);
      sum[1]! += part(1);
      sum[2]! += part(2);
    }
  return sum.map((value) => (MU0 / (4 * Math.PI)) * value) as unknown as Vector;
};

const apart = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

const places = fc.tuple(between(-2.5, 2.5), between(-4, 4), between(-0.7, 2));

describe('the closed form of a sheet', () => {
  it('is the law of Biot and Savart', () => {
    const sheet = humped(1.2, 0.9, 0.4);
    for (const at of [
      [0.1, 0.2, 0.1],
      [0.55, -0.4, 0.75],
      [0.9, 0.3, 0.5],
      [-0.3, 0.1, 0],
      [0, 0, 1.5]
    ] as const) {
      const wanted = byQuadrature(sheet, at);
      expect(apart(fieldAt([exact(sheet)], at), wanted)).toBeLessThan(1e-6 * Math.hypot(...wanted));
    }
  });

  it('diverges nowhere on a grid, to 1e-6', () => {
    let worst = 0;
    for (let x = -1.5; x <= 1.5; x += 0.43)
      for (let y = -2.5; y <= 2.5; y += 0.71)
        for (const z of [0, 0.2, 0.3, 0.6, 1.1])
          worst = Math.max(worst, relativeDivergence([CLOSED], [x, y, z], 0.008));
    expect(worst).toBeLessThan(1e-6);
  });

  it('jumps along the sheet by µ0·K and goes on across it', () => {
    const { xs, ys, psi, z } = CAR;
    const [p, q] = [4, 9];
    const node = (i: number, j: number): number => psi[(p + i) * ys.length + q + j]!;
    const [dx, dy] = [xs[p + 1]! - xs[p]!, ys[q + 1]! - ys[q]!];
    const [x, y] = [xs[p]! + dx / 2, ys[q]! + dy / 2];
    const kx = (node(0, 1) + node(1, 1) - node(0, 0) - node(1, 0)) / (2 * dy);
    const ky = -(node(1, 0) + node(1, 1) - node(0, 0) - node(0, 1)) / (2 * dx);
    const [above, below] = [fieldAt([CLOSED], [x, y, z + 2e-4]), fieldAt([CLOSED], [x, y, z - 2e-4])];
    const size = MU0 * Math.hypot(kx, ky);
    // n × (above − below) = µ0·K
    expect(Math.abs(above[0] - below[0] - MU0 * ky)).toBeLessThan(0.01 * size);
    expect(Math.abs(above[1] - below[1] + MU0 * kx)).toBeLessThan(0.01 * size);
    expect(Math.abs(above[2] - below[2])).toBeLessThan(1e-9 * size);
  });

  it('far away is that of a dipole ∬ψ', () => {
    const { xs, ys, psi } = CAR;
    let moment = 0;
    for (let p = 0; p < xs.length - 1; p++)
      for (let q = 0; q < ys.length - 1; q++) {
        const at = p * ys.length + q;
        const mean = (psi[at]! + psi[at + 1]! + psi[at + ys.length]! + psi[at + ys.length + 1]!) / 4;
        moment += mean * (xs[p + 1]! - xs[p]!) * (ys[q + 1]! - ys[q]!);
      }
    const [, , up] = fieldAt([SERVED], [0, 0, 200.45]);
    expect(Math.abs(up / ((MU0 * moment) / (2 * Math.PI * 200 ** 3)) - 1)).toBeLessThan(1e-3);
  });
});

describe('a sheet from afar', () => {
  it('is within a thousandth of the closed form, and within 1e-5 of its strongest', () => {
    const strongest = Math.hypot(...fieldAt([CLOSED], [0, 0, 0.42]));
    fc.assert(
      fc.property(places, (at) => {
        const wanted = fieldAt([CLOSED], at);
        const missed = apart(fieldAt([SERVED], at), wanted);
        expect(missed).toBeLessThan(1e-3 * Math.hypot(...wanted));
        expect(missed).toBeLessThan(1e-5 * strongest);
      }),
      { seed: SEED, numRuns: 1_000 }
    );
  });

  it('is finite everywhere, on its nodes, its rim and in its plane too', () => {
    const { xs, ys, z } = CAR;
    fc.assert(
      fc.property(fc.nat(xs.length - 1), fc.nat(ys.length - 1), between(-3, 3), (p, q, x) => {
        for (const at of [
          [xs[p]!, ys[q]!, z],
          [x, ys[q]!, z],
          [xs[p]!, ys[q]!, z + 1e-9]
        ] as const)
          for (const value of fieldAt([SERVED], at)) expect(Number.isFinite(value)).toBe(true);
      }),
      { seed: SEED, numRuns: 200 }
    );
  });

  it('is in its plane the mean of both sides: across it alone', () => {
    const nodes = Float64Array.of(-1, 0, 1);
    const psi = new Float64Array(9);
    psi[4] = 1;
    const source = sheetSource({ xs: nodes, ys: nodes, z: 0.4, psi });
    const at = (z: number) => fieldAt([source], [0.3, 0.2, z]);
    const [x, y, up] = at(0.4);
    expect([x, y]).toEqual([0, 0]);
    const [above, below] = [at(0.4002), at(0.3998)];
    expect(Math.abs(above[0])).toBeGreaterThan(1e-8);
    expect(above[0] + below[0]).toBeCloseTo(0, 18);
    expect(relativeError(up, (above[2] + below[2]) / 2)).toBeLessThan(1e-2);
  });

  it('is nothing of a sheet without an inner node', () => {
    const sheet = { xs: Float64Array.of(0, 1), ys: Float64Array.of(0, 1), z: 0, psi: new Float64Array(4) };
    expect(fieldAt([sheetSource(sheet)], [0.2, 0.3, 0.1])).toEqual([0, 0, 0]);
  });
});

describe('a source that is placed', () => {
  it('has its field turned with it', () => {
    fc.assert(
      fc.property(places, between(-180, 180), ([x, y, z], heading) => {
        const turn = ((heading - 90) * Math.PI) / 180;
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const own = fieldAt([SERVED], [x, y, z]);
        const found = fieldAt(
          [placedSource([SERVED], { x: 3, y: -2, heading })],
          [3 + c * x - s * y, -2 + s * x + c * y, z]
        );
        const wanted: Vector = [c * own[0] - s * own[1], s * own[0] + c * own[1], own[2]];
        expect(apart(found, wanted)).toBeLessThan(1e-3 * Math.hypot(...own));
      }),
      { seed: SEED, numRuns: 50 }
    );
  });
});
