import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pairCoupling, type StraightPair } from '#physics/coupling/pair-coupling';
import { mutualOfSegments } from '#physics/inductance/segments';
import { gaussLegendre } from '#physics/numeric/gauss-legendre';
import { between, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';

const pair = (x: number, y: number, spacing: number, angle: number): StraightPair => ({
  at: [x, y],
  spacing,
  angle
});

type Point = readonly [number, number];
const wiresOf = ({ at, spacing, angle }: StraightPair): readonly [Point, Point] => {
  const [dx, dy] = [(Math.cos(angle) * spacing) / 2, (Math.sin(angle) * spacing) / 2];
  return [
    [at[0] + dx, at[1] + dy],
    [at[0] - dx, at[1] - dy]
  ];
};

/** Flux of the field µ0I/2πr of two line currents through the strip between the other pair's wires, Wb/m per ampere. */
const fluxThrough = (source: StraightPair, through: StraightPair): number => {
  const [plus, minus] = wiresOf(through);
  const { nodes, weights } = gaussLegendre(60);
  let flux = 0;
  nodes.forEach((node, n) => {
    const share = (node + 1) / 2;
    const at = [minus[0] + share * (plus[0] - minus[0]), minus[1] + share * (plus[1] - minus[1])] as const;
    wiresOf(source).forEach(([x, y], which) => {
      const [rx, ry] = [at[0] - x, at[1] - y];
      // a current along z: B = µ0I/2πr² · (−ry, rx); across the strip from minus to plus the normal is (−dy, dx)
      const across = -ry * -(plus[1] - minus[1]) + rx * (plus[0] - minus[0]);
      flux -= ((which === 0 ? 1 : -1) * 2e-7 * across * (weights[n]! / 2)) / (rx * rx + ry * ry);
    });
  });
  return flux;
};

/** Far apart enough that no wire of one lies on the other. */
const pairs = fc
  .record({
    distance: between(0.01, 0.05),
    direction: between(0, 2 * Math.PI),
    ourSpacing: between(0.002, 0.006),
    theirSpacing: between(0.002, 0.006),
    ourAngle: between(0, 2 * Math.PI),
    theirAngle: between(0, 2 * Math.PI)
  })
  .map(({ distance, direction, ...rest }) => [
    pair(0.1, -0.2, rest.ourSpacing, rest.ourAngle),
    pair(
      0.1 + distance * Math.cos(direction),
      -0.2 + distance * Math.sin(direction),
      rest.theirSpacing,
      rest.theirAngle
    )
  ]);

describe('two straight pairs side by side', () => {
  it.each([
    // 4 mm between wires, 8 mm between axes: the case that the catalogue of conduits names
    ['in one line', 0, 0, -2e-7 * Math.log(64 / 48)],
    ['in one line, one turned over', 0, Math.PI, 2e-7 * Math.log(64 / 48)],
    ['face to face', Math.PI / 2, Math.PI / 2, 2e-7 * Math.log(80 / 64)],
    ['across one another', 0, Math.PI / 2, 0]
  ])('%s', (_, ours, theirs, wanted) => {
    const found = pairCoupling(pair(0, 0, 0.004, ours), pair(0.008, 0, 0.004, theirs));
    expect(Math.abs(found - wanted)).toBeLessThan(1e-18);
  });

  it('couple by at most 58 nH/m so near, whichever way they lie', () => {
    let most = 0;
    for (let n = 0; n < 72; n++)
      for (let m = 0; m < 72; m++) {
        const [ours, theirs] = [(n * Math.PI) / 36, (m * Math.PI) / 36];
        most = Math.max(most, Math.abs(pairCoupling(pair(0, 0, 0.004, ours), pair(0.008, 0, 0.004, theirs))));
      }
    expect(most * 1e9).toBeCloseTo(57.5, 1);
  });

  it('link the flux that one drives through the strip between the wires of the other', () => {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        const found = pairCoupling(a!, b!);
        expect(Math.abs(found - fluxThrough(a!, b!))).toBeLessThan(1e-12 + 1e-6 * Math.abs(found));
      }),
      { seed: SEED }
    );
  });

  it('are the limit of long filaments (Neumann)', () => {
    const length = 400;
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        let sum = 0;
        wiresOf(a!).forEach(([x, y], i) => {
          wiresOf(b!).forEach(([u, v], j) => {
            const sign = i === j ? 1 : -1;
            sum += sign * mutualOfSegments([x, y, 0], [x, y, length], [u, v, 0], [u, v, length]);
          });
        });
        const found = pairCoupling(a!, b!);
        expect(Math.abs(found - sum / length)).toBeLessThan(2e-12 + 1e-4 * Math.abs(found));
      }),
      { seed: SEED, numRuns: 40 }
    );
  });

  it('couple alike both ways, and the other way round when one is turned over', () => {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        const found = pairCoupling(a!, b!);
        expect(Math.abs(pairCoupling(b!, a!) - found)).toBeLessThan(1e-20);
        const turned = pairCoupling(a!, { ...b!, angle: b!.angle + Math.PI });
        expect(Math.abs(turned + found)).toBeLessThan(1e-18);
      }),
      { seed: SEED }
    );
  });

  it('fall off with the square of the distance from afar', () => {
    const at = (distance: number) => pairCoupling(pair(0, 0, 0.004, 0), pair(distance, 0, 0.004, 0));
    expect(relativeError(at(1), at(0.5) / 4)).toBeLessThan(1e-3);
  });
});
