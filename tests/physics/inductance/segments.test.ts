import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mutualOfSegments, parallelIntegral, type Vector } from '#physics/inductance/segments';
import { gaussLegendre } from '#physics/numeric/gauss-legendre';
import { between, SEED } from '../support/arbitraries';
import { referenceOf, relativeError } from '../support/reference';

const MU0 = 4e-7 * Math.PI;

interface SegmentCase {
  readonly name: string;
  readonly a: readonly [Vector, Vector];
  readonly b: readonly [Vector, Vector];
  readonly mutual_H: number;
}

const { cases, tolerance, generator } = referenceOf<SegmentCase>('segments');

describe(`mutual inductance of two straight filaments (${generator})`, () => {
  it.each(cases)('$name', ({ a, b, mutual_H }) => {
    const found = mutualOfSegments(a[0], a[1], b[0], b[1]);
    if (mutual_H === 0) expect(Math.abs(found)).toBeLessThan(1e-18);
    else expect(relativeError(found, mutual_H)).toBeLessThan(tolerance);
  });
});

const coordinate = between(-5, 5);
const point: fc.Arbitrary<Vector> = fc.tuple(coordinate, coordinate, between(-1, 1));
const onLine = (from: Vector, to: Vector, t: number): Vector => [
  from[0] + t * (to[0] - from[0]),
  from[1] + t * (to[1] - from[1]),
  from[2] + t * (to[2] - from[2])
];
const distance = (from: Vector, to: Vector): number =>
  Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
/** Of points a twentieth of the filaments apart from one another: enough to keep clear of a crossing. */
const clearance = (a0: Vector, a1: Vector, b0: Vector, b1: Vector): number => {
  let least = Infinity;
  for (let i = 0; i <= 20; i++)
    for (let j = 0; j <= 20; j++)
      least = Math.min(least, distance(onLine(a0, a1, i / 20), onLine(b0, b1, j / 20)));
  return least;
};
/** What the two could have at most: an error is judged against this, as M itself may be next to nothing. */
const scaleOf = (a0: Vector, a1: Vector, b0: Vector, b1: Vector): number =>
  (MU0 / (4 * Math.PI)) * Math.sqrt(distance(a0, a1) * distance(b0, b1));

const forAnyTwo = (check: (a0: Vector, a1: Vector, b0: Vector, b1: Vector, m: number) => void): void =>
  fc.assert(
    fc.property(point, point, point, point, (a0, a1, b0, b1) => {
      fc.pre(distance(a0, a1) > 0.01 && distance(b0, b1) > 0.01 && clearance(a0, a1, b0, b1) > 0.5);
      check(a0, a1, b0, b1, mutualOfSegments(a0, a1, b0, b1));
    }),
    { seed: SEED, numRuns: 150, endOnFailure: true }
  );

describe('any two filaments', () => {
  it('have M_ij = M_ji', () =>
    forAnyTwo((a0, a1, b0, b1, m) => {
      expect(Math.abs(mutualOfSegments(b0, b1, a0, a1) - m)).toBeLessThan(1e-7 * scaleOf(a0, a1, b0, b1));
    }));

  it('change sign with the sense of one and not with that of both', () =>
    forAnyTwo((a0, a1, b0, b1, m) => {
      const room = 1e-7 * scaleOf(a0, a1, b0, b1);
      expect(Math.abs(mutualOfSegments(a1, a0, b0, b1) + m)).toBeLessThan(room);
      expect(Math.abs(mutualOfSegments(a1, a0, b1, b0) - m)).toBeLessThan(room);
    }));

  it('are the sum of the parts of one of them', () =>
    forAnyTwo((a0, a1, b0, b1, m) => {
      const cut = onLine(b0, b1, 0.3);
      const parts = mutualOfSegments(a0, a1, b0, cut) + mutualOfSegments(a0, a1, cut, b1);
      expect(Math.abs(parts - m)).toBeLessThan(1e-7 * scaleOf(a0, a1, b0, b1));
    }));

  it('grow with the scale', () =>
    forAnyTwo((a0, a1, b0, b1, m) => {
      const big = ([x, y, z]: Vector): Vector => [7 * x, 7 * y, 7 * z];
      const found = mutualOfSegments(big(a0), big(a1), big(b0), big(b1));
      expect(Math.abs(found - 7 * m)).toBeLessThan(1e-7 * scaleOf(a0, a1, b0, b1));
    }));
});

describe('parallel filaments', () => {
  it('side by side have the closed form of the textbook (Rosa 1908)', () => {
    const [l, d] = [1.8, 0.3];
    const wanted = (MU0 / (2 * Math.PI)) * (l * Math.log((l + Math.hypot(l, d)) / d) - Math.hypot(l, d) + d);
    const found = mutualOfSegments([0, 0, 0], [l, 0, 0], [0, d, 0], [l, d, 0]);
    expect(relativeError(found, wanted)).toBeLessThan(1e-13);
    expect(relativeError((MU0 / (4 * Math.PI)) * parallelIntegral(l, l, d, 0), wanted)).toBeLessThan(1e-13);
  });

  it('end to end on one line have the closed form l·ln((l+m)/l) + m·ln((l+m)/m)', () => {
    const [l, m] = [1.8, 1.2];
    const wanted = l * Math.log((l + m) / l) + m * Math.log((l + m) / m);
    expect(relativeError(parallelIntegral(l, m, 0, l), wanted)).toBeLessThan(1e-13);
  });

  it('that overlap on one line have none: infinite, with the sign of their sense', () => {
    expect(mutualOfSegments([0, 0, 0], [2, 0, 0], [1, 0, 0], [3, 0, 0])).toBe(Infinity);
    expect(mutualOfSegments([0, 0, 0], [2, 0, 0], [3, 0, 0], [1, 0, 0])).toBe(-Infinity);
  });
});

/** By quadrature along one filament of the closed-form potential of the other: no trouble with small angles. */
const byQuadrature = (a0: Vector, a1: Vector, b0: Vector, b1: Vector): number => {
  const [l, m] = [distance(a0, a1), distance(b0, b1)];
  const unit = a0.map((value, k) => (a1[k]! - value) / l);
  const facing = unit.reduce((sum, value, k) => sum + (value * (b1[k]! - b0[k]!)) / m, 0);
  const { nodes, weights } = gaussLegendre(40);
  const panels = 40;
  let sum = 0;
  for (let p = 0; p < panels; p++)
    nodes.forEach((node, k) => {
      const at = onLine(b0, b1, (p + (1 + node) / 2) / panels);
      const r = at.map((value, axis) => value - a0[axis]!);
      const along = r.reduce((total, value, axis) => total + value * unit[axis]!, 0);
      const beside = Math.hypot(...r.map((value, axis) => value - along * unit[axis]!));
      const potential = Math.asinh(along / beside) - Math.asinh((along - l) / beside);
      sum += (weights[k]! * potential * m) / (2 * panels);
    });
  return (MU0 / (4 * Math.PI)) * facing * sum;
};

describe('nearly parallel filaments', () => {
  // sides drawn by hand, or loops turned by a hair: the foot of their common perpendicular runs away
  it.each([1e-9, 1e-7, 1e-6, 5e-6, 1e-5, 2.9e-5, 3.1e-5, 1e-4, 1e-3, 1e-2])(
    'that differ by %f rad agree with quadrature to 1e-6',
    (angle) => {
      for (const [dx, dy, dz] of [
        [0.2, 0.3, 0],
        [-0.7, 0.004, 0],
        [0, 0, 0.004],
        [1.3, 0.02, 0.01],
        [0.2, 1.8, 0.02],
        [0.2, 20, 0]
      ] as const) {
        const b0: Vector = [dx, dy, dz];
        const b1: Vector = [dx + 1.9 * Math.cos(angle), dy + 1.9 * Math.sin(angle), dz];
        const wanted = byQuadrature([0, 0, 0], [1.8, 0, 0], b0, b1);
        expect(relativeError(mutualOfSegments([0, 0, 0], [1.8, 0, 0], b0, b1), wanted)).toBeLessThan(1e-6);
        expect(relativeError(mutualOfSegments([0, 0, 0], [1.8, 0, 0], b1, b0), -wanted)).toBeLessThan(1e-6);
      }
    }
  );
});

describe('filaments that touch end to end', () => {
  it('are the same at every angle in the plan, far from its origin as well', () => {
    fc.assert(
      fc.property(between(0, 2 * Math.PI), between(-300, 300), between(-300, 300), (angle, x, y) => {
        const at = (along: number): Vector => [
          x + along * Math.cos(angle),
          y + along * Math.sin(angle),
          -0.05
        ];
        const [l, m] = [1.8, 1.2];
        const wanted = (MU0 / (4 * Math.PI)) * (l * Math.log((l + m) / l) + m * Math.log((l + m) / m));
        expect(relativeError(mutualOfSegments(at(0), at(l), at(l), at(l + m)), wanted)).toBeLessThan(1e-9);
        expect(relativeError(mutualOfSegments(at(0), at(l), at(l + m), at(l)), -wanted)).toBeLessThan(1e-9);
      }),
      { seed: SEED }
    );
  });
});
