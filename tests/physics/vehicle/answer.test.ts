/** What a vehicle does to loops must hold for every vehicle and every loop. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import type { Placement } from '#physics/field/filaments';
import { between, PATIENCE, SEED, windings } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { BICYCLE, bodyOf, CAR, change, OVER, plate, rim, share } from '../support/vehicles';
import {
  circleWinding,
  mirrored,
  placed,
  polygonWinding,
  rectangleWinding,
  reversed,
  scaled
} from '../support/windings';

const VEHICLES = {
  car: bodyOf(CAR, 0.5),
  bicycle: bodyOf(BICYCLE),
  both: bodyOf([plate(0.5, 0.9, 0.3), rim({ y: 0.7 }), rim({ y: -0.7 })], 0.5)
};
const vehicles = fc.constantFrom(...Object.values(VEHICLES));
const placements: fc.Arbitrary<Placement> = fc.record({
  x: between(-3, 3),
  y: between(-3, 3),
  heading: between(-180, 360)
});
const square = rectangleWinding(1.8, 1.8, { turns: 3 });

/** A placement turned by an angle in radians about the origin, then moved. */
const moved = ({ x, y, heading }: Placement, angle: number, dx: number, dy: number): Placement => ({
  x: x * Math.cos(angle) - y * Math.sin(angle) + dx,
  y: x * Math.sin(angle) + y * Math.cos(angle) + dy,
  heading: heading + (angle * 180) / Math.PI
});

describe('the change of inductance', { timeout: PATIENCE }, () => {
  it('is never a rise and never more than the inductance itself, for all vehicles, loops and places', () => {
    fc.assert(
      fc.property(vehicles, windings(2), placements, (body, winding, at) => {
        const found = change(body, winding, at);
        expect(found).toBeLessThanOrEqual(0);
        expect(-found).toBeLessThan(0.5 * externalInductance(winding));
      }),
      { seed: SEED, numRuns: 150 }
    );
  });

  it('of two loops obeys reciprocity and ΔL_ij² ≤ ΔL_ii·ΔL_jj', () => {
    fc.assert(
      fc.property(vehicles, windings(2), windings(2), placements, (body, a, b, at) => {
        const cross = change(body, a, at, b);
        const own = Math.sqrt(change(body, a, at) * change(body, b, at));
        expect(change(body, b, at, a)).toBe(cross);
        expect(Math.abs(cross)).toBeLessThanOrEqual(own * (1 + 1e-9));
      }),
      { seed: SEED, numRuns: 60 }
    );
  });

  it('stays when loop and vehicle are turned and moved together', () => {
    fc.assert(
      fc.property(
        vehicles,
        windings(2).filter(({ runs }) => runs.every(({ kind }) => kind === 'straight')),
        placements,
        fc.tuple(between(-3, 3), between(-500, 500), between(-500, 500)),
        (body, winding, at, [angle, dx, dy]) => {
          const found = change(body, placed(winding, angle, dx, dy), moved(at, angle, dx, dy));
          const room = 1e-9 * externalInductance(winding);
          expect(Math.abs(found - change(body, winding, at))).toBeLessThan(room);
        }
      ),
      { seed: SEED, numRuns: 60 }
    );
  });

  it('over a round loop is that over a polygon of very many sides, in every direction', () => {
    const sides = 240;
    const step = (2 * Math.PI) / sides;
    const r = 0.9 * Math.sqrt(step / Math.sin(step));
    const round = circleWinding(0.9, { turns: 3 });
    const many = polygonWinding(
      Array.from({ length: sides }, (_, k) => [r * Math.cos(k * step), r * Math.sin(k * step)] as const),
      { turns: 3 }
    );
    for (const [body, x, heading] of [
      [VEHICLES.car, 0.6, 90],
      [VEHICLES.bicycle, 0.85, 90],
      [VEHICLES.bicycle, 0.5, 40],
      [VEHICLES.both, 1.2, 40]
    ] as const)
      for (const angle of [0, 0.1, 0.26, 0.35, 0.7, 1.3, 2.9, 5.8]) {
        const at = moved({ x, y: 0, heading }, angle, 0, 0);
        expect(relativeError(change(body, round, at), change(body, many, at))).toBeLessThan(0.01);
      }
  });

  it('grows with the scale when everything does', () => {
    for (const factor of [1.5, 3]) {
      const large = bodyOf([plate(1.6 * factor, 4.2 * factor, 0.45 * factor)], 0.5);
      const at = { x: 0.3 * factor, y: 0.8 * factor, heading: 75 };
      const found = change(large, scaled(square, factor), at);
      const wanted = factor * change(VEHICLES.car, square, { x: 0.3, y: 0.8, heading: 75 });
      expect(relativeError(found, wanted)).toBeLessThan(1e-6);
    }
  });

  it('does not mind the sense of winding, and ΔM does', () => {
    const other = rectangleWinding(1.2, 2, { turns: 2 }, [1.1, 0.4]);
    expect(change(VEHICLES.car, reversed(square))).toBeCloseTo(change(VEHICLES.car, square), 18);
    const one = change(VEHICLES.car, square, OVER, other);
    expect(relativeError(change(VEHICLES.car, reversed(square), OVER, other), -one)).toBeLessThan(1e-9);
  });

  it('grows with the square of the turns while they lie in one place', () => {
    const one = rectangleWinding(1.8, 1.8, { bottom: -0.0462 });
    expect(relativeError(change(VEHICLES.car, square), 9 * change(VEHICLES.car, one))).toBeLessThan(1e-9);
  });

  it('fades with every step of height and of depth', () => {
    const answers = [0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.3, 1.7].map((height) =>
      share(bodyOf([plate(1.6, 4.2, height)], 0.5), square)
    );
    answers.slice(1).forEach((value, k) => expect(value).toBeGreaterThan(answers[k]!));
    const deeper = [0.03, 0.05, 0.1, 0.2, 0.3].map((depth) =>
      share(VEHICLES.car, rectangleWinding(1.8, 1.8, { turns: 3, bottom: -depth }))
    );
    deeper.slice(1).forEach((value, k) => expect(value).toBeGreaterThan(deeper[k]!));
  });
});

describe('a large plate', { timeout: PATIENCE }, () => {
  const small = rectangleWinding(0.6, 0.6, { turns: 2 });

  it.each([
    [0.2, 0.99],
    [0.4, 0.98]
  ])('%f m up comes to the mirror image at twice the height, from below in size', (height, least) => {
    const image = -mutualInductance(small, mirrored(small, height));
    const shares = [1, 2, 4].map((side) => change(bodyOf([plate(side, side, height)]), small) / image);
    shares.forEach((value, k) => {
      expect(value).toBeLessThan(1);
      if (k > 0) expect(value).toBeGreaterThan(shares[k - 1]!);
    });
    expect(shares[2]).toBeGreaterThan(least);
  });
});

describe('the halves of a figure of eight', () => {
  // interleaved in the middle slot
  const left = rectangleWinding(0.9, 1.8, { turns: 2, pitch: 0.0076 }, [-0.45, 0]);
  const right = reversed(rectangleWinding(0.9, 1.8, { turns: 2, pitch: 0.0076, bottom: -0.0462 }, [0.45, 0]));
  const eight = { ...left, runs: [...left.runs, ...right.runs] };
  const plain = rectangleWinding(1.8, 1.8, { turns: 2 });

  it('answer to a plate over both halves far less than a plain loop of their size', () => {
    expect(share(VEHICLES.car, eight)).toBeLessThan(0);
    expect(share(VEHICLES.car, eight)).toBeGreaterThan(0.5 * share(VEHICLES.car, plain));
  });

  it('show a bicycle on the middle slot, which a plain loop does not', () => {
    expect(Math.abs(share(VEHICLES.bicycle, plain))).toBeLessThan(1e-6);
    expect(share(VEHICLES.bicycle, eight)).toBeLessThan(-1e-3);
  });

  it('answer alike on either side of the middle slot, and ΔM with a plain loop changes sign there', () => {
    // all but: in the middle slot the wires of one half lie over those of the other
    const at = (x: number) => ({ ...OVER, x });
    expect(
      relativeError(change(VEHICLES.car, eight, at(0.5)), change(VEHICLES.car, eight, at(-0.5)))
    ).toBeLessThan(0.03);
    const cross = (x: number) => change(VEHICLES.car, eight, at(x), plain);
    expect(cross(0.7) * cross(-0.7)).toBeLessThan(0);
    expect(relativeError(cross(0.7), -cross(-0.7))).toBeLessThan(0.05);
  });
});
