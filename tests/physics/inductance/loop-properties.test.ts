/** What must hold for every loop and every two loops, whatever they look like. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import type { Winding } from '#physics/inductance/winding';
import { between, PATIENCE, SEED, windings } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import {
  circleWinding,
  placed,
  polygonWinding,
  rectangleWinding,
  reversed,
  scaled
} from '../support/windings';

const RUNS = { seed: SEED, numRuns: 40 };
/** An error of M is judged against √(L1·L2), as M itself may be next to nothing. */
const coupling = (a: Winding, b: Winding, mutual = mutualInductance(a, b)): number =>
  mutual / Math.sqrt(externalInductance(a) * externalInductance(b));
const straightOnly = (winding: Winding): boolean => winding.runs.every(({ kind }) => kind === 'straight');
const moves = fc.tuple(between(-Math.PI, Math.PI), between(-200, 200), between(-200, 200));

describe('two loops', { timeout: PATIENCE }, () => {
  it('have M_ij = M_ji, wherever they lie: apart, nested, across one another', () => {
    fc.assert(
      fc.property(windings(), windings(), (a, b) => {
        const difference = mutualInductance(a, b) - mutualInductance(b, a);
        expect(Math.abs(coupling(a, b, difference))).toBeLessThan(1e-9);
      }),
      RUNS
    );
  });

  it('keep M when both are turned and moved together', () => {
    fc.assert(
      fc.property(windings(), windings(), moves, (a, b, [angle, dx, dy]) => {
        const moved = mutualInductance(placed(a, angle, dx, dy), placed(b, angle, dx, dy));
        expect(Math.abs(coupling(a, b, moved - mutualInductance(a, b)))).toBeLessThan(1e-7);
      }),
      RUNS
    );
  });

  it('change the sign of M and nothing else when one is wound the other way', () => {
    fc.assert(
      fc.property(windings().filter(straightOnly), windings(), (a, b) => {
        const both = mutualInductance(reversed(a), b) + mutualInductance(a, b);
        expect(Math.abs(coupling(a, b, both))).toBeLessThan(1e-9);
        expect(relativeError(externalInductance(reversed(a)), externalInductance(a))).toBeLessThan(1e-11);
      }),
      RUNS
    );
  });

  it('have |k| < 1, as near as they may be drawn', () => {
    fc.assert(
      fc.property(windings(0.5), windings(0.5), (a, b) => {
        expect(Math.abs(coupling(a, b))).toBeLessThan(1);
      }),
      { seed: SEED, numRuns: 80 }
    );
  });

  it('in one slot have 0 < k < 1, whatever their turns, wires and depths', () => {
    const wires = fc.record({
      turns: fc.integer({ min: 1, max: 12 }),
      gauge: fc.constantFrom([0.000512, 0.0029], [0.000814, 0.0038], [0.0010265, 0.0043]),
      bottom: between(-0.08, -0.04)
    });
    const kinds = fc.constantFrom('square', 'long', 'round');
    fc.assert(
      fc.property(wires, wires, kinds, between(0, 0.006), (one, two, kind, shift) => {
        const wound = ({ turns, gauge: [wireRadius, pitch], bottom }: typeof one, dx: number): Winding => {
          const options = { turns, wireRadius, pitch, bottom };
          if (kind === 'round') return circleWinding(0.9, options, [dx, 0]);
          return rectangleWinding(1.8, kind === 'long' ? 12 : 1.8, options, [dx, 0]);
        };
        const k = coupling(wound(one, 0), wound(two, shift));
        expect(k).toBeGreaterThan(0.3);
        expect(k).toBeLessThan(1);
      }),
      { seed: SEED, numRuns: 80 }
    );
  });
});

describe('every loop', { timeout: PATIENCE }, () => {
  it('has L > 0 that no turning or moving changes', () => {
    fc.assert(
      fc.property(windings(), moves, (winding, [angle, dx, dy]) => {
        const L = externalInductance(winding);
        expect(L).toBeGreaterThan(0);
        expect(relativeError(externalInductance(placed(winding, angle, dx, dy)), L)).toBeLessThan(1e-8);
      }),
      RUNS
    );
  });

  it('has L in proportion to its size when wire and insulation grow with it', () => {
    fc.assert(
      fc.property(windings(), between(0.2, 5), (winding, factor) => {
        const found = externalInductance(scaled(winding, factor));
        expect(relativeError(found, factor * externalInductance(winding))).toBeLessThan(1e-8);
      }),
      RUNS
    );
  });

  it('has the same L at every depth', () => {
    const winding = rectangleWinding(1.8, 2.4, { turns: 4 });
    expect(
      relativeError(externalInductance(placed(winding, 0, 0, 0, -0.3)), externalInductance(winding))
    ).toBeLessThan(1e-12);
  });

  it('encloses more flux with more turns and with longer sides', () => {
    fc.assert(
      fc.property(
        between(0.5, 4),
        between(0.5, 20),
        fc.integer({ min: 1, max: 8 }),
        (width, length, turns) => {
          const L = externalInductance(rectangleWinding(width, length, { turns }));
          expect(externalInductance(rectangleWinding(width, length, { turns: turns + 1 }))).toBeGreaterThan(
            L
          );
          expect(externalInductance(rectangleWinding(width * 1.1, length, { turns }))).toBeGreaterThan(L);
          expect(externalInductance(rectangleWinding(width, length * 1.1, { turns }))).toBeGreaterThan(L);
        }
      ),
      RUNS
    );
  });
});

describe('turns close together', () => {
  const loop = (turns: number, wireRadius: number, pitch: number): Winding =>
    rectangleWinding(1.8, 2.4, { turns, wireRadius, pitch });

  it('are N² times one turn whose wire has their geometric mean radius, the better the closer they lie', () => {
    for (const turns of [2, 3, 5, 8])
      for (const pitch of [4e-3, 4e-4, 4e-5]) {
        const radius = pitch / 5;
        let logarithms = 0;
        for (let i = 0; i < turns; i++)
          for (let j = 0; j < turns; j++) logarithms += Math.log(i === j ? radius : pitch * Math.abs(i - j));
        const mean = Math.exp(logarithms / turns ** 2);
        const one = externalInductance(loop(1, mean, pitch));
        // what is left of first order in pitch over side
        expect(relativeError(externalInductance(loop(turns, radius, pitch)), turns ** 2 * one)).toBeLessThan(
          0.3 * pitch
        );
      }
  });

  it('come nearer to N² times one turn with every decrease of the pitch, from below', () => {
    const share = (pitch: number): number =>
      externalInductance(loop(4, 1e-7, pitch)) / (16 * externalInductance(loop(1, 1e-7, pitch)));
    const shares = [1e-2, 1e-3, 1e-4, 1e-5, 1e-6].map(share);
    shares.forEach((value, k) => {
      expect(value).toBeLessThan(1);
      if (k > 0) expect(value).toBeGreaterThan(shares[k - 1]!);
    });
    expect(shares[4]).toBeGreaterThan(0.87);
  });
});

describe('squares', () => {
  const square = (x: number, bottom = -0.05): Winding =>
    rectangleWinding(1.8, 1.8, { turns: 3, bottom }, [x, 0]);

  it('side by side oppose one another, less and less with the distance', () => {
    let last = -Infinity;
    for (let gap = 0.02; gap < 30; gap *= 1.25) {
      const M = mutualInductance(square(0), square(1.8 + gap));
      expect(M).toBeLessThan(0);
      expect(M).toBeGreaterThan(last);
      last = M;
    }
  });

  it('above one another help, less and less with the distance', () => {
    let last = Infinity;
    for (let height = 0.02; height < 10; height *= 1.25) {
      const M = mutualInductance(square(0), square(0, -0.05 + height));
      expect(M).toBeGreaterThan(0);
      expect(M).toBeLessThan(last);
      last = M;
    }
  });

  it('far apart are dipoles: M = −µ0·N²·A²/(4πr³)', () => {
    const wanted = -(4e-7 * Math.PI * 9 * 1.8 ** 4) / (4 * Math.PI * 60 ** 3);
    expect(relativeError(mutualInductance(square(0), square(60)), wanted)).toBeLessThan(0.01);
  });
});

describe('the halves of a figure of eight', () => {
  const left = rectangleWinding(0.9, 3, { turns: 2 }, [-0.45, 0]);
  const right = reversed(rectangleWinding(0.9, 3, { turns: 2, bottom: -0.0481 }, [0.45, 0]));
  const eight = { ...left, runs: [...left.runs, ...right.runs] };

  it('help one another, and cancel towards a loop that lies evenly over both', () => {
    expect(mutualInductance(left, right)).toBeGreaterThan(0);
    const even = rectangleWinding(4, 4, { bottom: -0.0481 });
    const left0 = rectangleWinding(0.9, 3, {}, [-0.45, 0]);
    const right0 = reversed(rectangleWinding(0.9, 3, {}, [0.45, 0]));
    expect(Math.abs(mutualInductance(even, left0) + mutualInductance(even, right0))).toBeLessThan(1e-18);
  });

  it('couple far less than a plain loop with a neighbour on the axis of the middle slot', () => {
    const ahead = rectangleWinding(1.8, 1.8, { turns: 3 }, [0, 3.5]);
    const plain = rectangleWinding(1.8, 3, { turns: 2 });
    expect(Math.abs(mutualInductance(eight, ahead))).toBeLessThan(
      0.01 * Math.abs(mutualInductance(plain, ahead))
    );
  });
});

it('a polygon of many sides becomes a circle', () => {
  const sides = 60;
  const step = (2 * Math.PI) / sides;
  // equal area
  const r = 0.9 * Math.sqrt(step / Math.sin(step));
  const polygon = polygonWinding(
    Array.from({ length: sides }, (_, k) => [r * Math.cos(k * step), r * Math.sin(k * step)] as const),
    { turns: 3 }
  );
  const circle = circleWinding(0.9, { turns: 3 });
  // a filament's corner is sharper than a wire's: each leaves an error of its own
  expect(relativeError(externalInductance(polygon), externalInductance(circle))).toBeLessThan(1e-3);
  const beside = rectangleWinding(1.8, 1.8, { turns: 3 }, [2.2, 0.3]);
  expect(relativeError(mutualInductance(polygon, beside), mutualInductance(circle, beside))).toBeLessThan(
    1e-5
  );
});
