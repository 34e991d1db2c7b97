import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { windingSource } from '#physics/field/winding-field';
import { mutualInductance } from '#physics/inductance/loop';
import { between, SEED, windings } from '../support/arbitraries';
import { fieldAt, fluxUp, integral, relativeDivergence, type Vector } from '../support/fields';
import { relativeError } from '../support/reference';
import { circleWinding, placed, polygonWinding, rectangleWinding, reversed } from '../support/windings';

const MU0 = 4e-7 * Math.PI;
const TURNS = { turns: 3, bottom: -0.0538 };

describe('closed forms of any text on electromagnetism', () => {
  it('in the middle of a square of side a: 2√2·µ0·I/(π·a)', () => {
    const [, , up] = fieldAt([windingSource(rectangleWinding(1.8, 1.8, { bottom: 0 }), 2)], [0, 0, 0]);
    expect(relativeError(up, (2 * 2 * Math.SQRT2 * MU0) / (Math.PI * 1.8))).toBeLessThan(1e-14);
  });

  it('on the axis of a circle: µ0·I·R²/(2·(R² + z²)^1.5)', () => {
    const source = windingSource(circleWinding(0.9, { bottom: -0.05 }), 1);
    for (const z of [0, 0.2, 0.9, 5]) {
      const [x, y, up] = fieldAt([source], [0, 0, z - 0.05]);
      expect(relativeError(up, (MU0 * 0.81) / (2 * (0.81 + z * z) ** 1.5))).toBeLessThan(1e-14);
      expect(Math.hypot(x, y)).toBe(0);
    }
  });

  it('beside the axis of a circle: outwards by −ρ/2·dBz/dz, since nothing diverges', () => {
    const source = windingSource(circleWinding(0.9, { bottom: -0.05 }), 1);
    for (const rho of [2e-5, 7e-5, 3e-4])
      for (const z of [0.2, 0.9]) {
        const [outwards] = fieldAt([source], [rho, 0, z - 0.05]);
        const slope = (-3 * MU0 * 0.81 * z) / (2 * (0.81 + z * z) ** 2.5);
        expect(relativeError(outwards, (-rho / 2) * slope)).toBeLessThan(1e-6);
      }
  });

  it('near a long wire: µ0·I/(2π·r), round it', () => {
    const wire = polygonWinding(
      [
        [-500, 0],
        [500, 0],
        [500, 2000],
        [-500, 2000]
      ],
      { bottom: 0 }
    );
    for (const r of [0.05, 0.3]) {
      const [x, y, z] = fieldAt([windingSource(wire, 1)], [0, 0, r]);
      expect(relativeError(-y, MU0 / (2 * Math.PI * r))).toBeLessThan(1e-6);
      expect(Math.abs(x)).toBeLessThan(1e-6 * -y);
      // what the far sides send through
      expect(relativeError(z, fieldAt([windingSource(wire, 1)], [0, 0, 0])[2])).toBeLessThan(1e-3);
    }
  });

  it('far away: that of a dipole N·I·A, along its axis twice that beside it', () => {
    for (const winding of [
      rectangleWinding(1.2, 1.2, { turns: 3, bottom: 0, pitch: 1e-4 }),
      circleWinding(0.7, { turns: 3, bottom: 0, pitch: 1e-4 })
    ]) {
      const area = winding.runs[0]!.kind === 'round' ? Math.PI * 0.49 : 1.44;
      const source = windingSource(winding, 1);
      const dipole = (MU0 * 3 * area) / (4 * Math.PI * 100 ** 3);
      expect(relativeError(fieldAt([source], [0, 0, 100])[2], 2 * dipole)).toBeLessThan(5e-4);
      expect(relativeError(fieldAt([source], [100, 0, 0])[2], -dipole)).toBeLessThan(5e-4);
    }
  });
});

describe("Ampère's law: the field round N wires is µ0·N·I", () => {
  it.each([
    ['a rectangle', rectangleWinding(1.8, 2.4, TURNS), 0.9],
    ['a circle', circleWinding(0.9, TURNS), 0.9]
  ])('of a side of %s', (_, winding, x) => {
    const source = windingSource(winding, 2);
    const count = 128;
    let round = 0;
    for (let k = 0; k < count; k++) {
      const angle = (2 * Math.PI * k) / count;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const [bx, , bz] = fieldAt([source], [x + 0.05 * c, 0.1, -0.05 + 0.05 * s]);
      round += ((2 * Math.PI * 0.05) / count) * (-s * bx + c * bz);
    }
    // on this side the current runs along +y, about which the path turns clockwise
    expect(relativeError(-round, 3 * 2 * MU0)).toBeLessThan(1e-9);
  });
});

describe('a field without sources', () => {
  const grid: Vector[] = [];
  for (let x = -2; x <= 2; x += 0.37)
    for (let y = -2; y <= 2; y += 0.41) for (let z = 0.1; z <= 1.5; z += 0.35) grid.push([x, y, z]);

  it.each([
    ['a rectangle', rectangleWinding(1.8, 2.4, TURNS)],
    ['a circle', circleWinding(0.9, TURNS)]
  ])('of %s diverges nowhere on a grid, to 1e-6', (_, winding) => {
    const worst = Math.max(...grid.map((at) => relativeDivergence([windingSource(winding, 1)], at, 0.008)));
    expect(worst).toBeLessThan(1e-6);
  });

  it('no flux comes out of a box that wires run through', () => {
    const source = windingSource(rectangleWinding(1.8, 1.8, TURNS), 1);
    const [low, high] = [-0.2, 0.15];
    const up =
      fluxUp([source], [0.5, 1.3, -0.3, 0.4], high, 10) - fluxUp([source], [0.5, 1.3, -0.3, 0.4], low, 10);
    const through = (axis: 0 | 1, at: number, from: number, to: number): number =>
      integral(
        (t) => integral((z) => fieldAt([source], axis === 0 ? [at, t, z] : [t, at, z])[axis], low, high, 12),
        from,
        to,
        12
      );
    const out = through(0, 1.3, -0.3, 0.4) - through(0, 0.5, -0.3, 0.4);
    const along = through(1, 0.4, 0.5, 1.3) - through(1, -0.3, 0.5, 1.3);
    expect(Math.abs(up + out + along)).toBeLessThan(1e-6 * (Math.abs(up) + Math.abs(out)));
  });
});

describe('flux through another loop', () => {
  const other = rectangleWinding(0.8, 1.1, { bottom: 0.1 }, [0.3, -0.2]);
  const box = [-0.1, 0.7, -0.75, 0.35] as const;
  it.each([
    ['a rectangle', rectangleWinding(1.8, 2.4, TURNS)],
    ['a turned rectangle', placed(rectangleWinding(1.8, 2.4, TURNS), 0.4, 0.2, 0.5)],
    ['a circle', circleWinding(0.9, TURNS)],
    ['one beside it', rectangleWinding(1.8, 1.8, TURNS, [3, 0])]
  ])('of %s is their mutual inductance within 0.1 %%', (_, winding) => {
    const flux = fluxUp([windingSource(winding, 1)], box, 0.1, 12);
    expect(relativeError(flux, mutualInductance(winding, other))).toBeLessThan(1e-3);
  });
});

describe('any loop that can be drawn', () => {
  const places = fc.tuple(between(-4, 4), between(-4, 4), between(-0.3, 1));

  it('has a finite field everywhere, also in its wires and at their ends', () => {
    fc.assert(
      fc.property(windings(1), places, fc.nat(), between(0, 1), (winding, at, which, share) => {
        const source = windingSource(winding, 1);
        const run = winding.runs[which % winding.runs.length]!;
        const along = run.kind === 'straight' ? share * run.length : 0;
        const inWire: Vector[] =
          run.kind === 'straight'
            ? [
                [run.x, run.y, run.heights[0]!],
                [run.x + along * run.ux, run.y + along * run.uy, run.heights[0]!]
              ]
            : [
                [run.x + run.radius, run.y, run.heights[0]!],
                [run.x, run.y, run.heights[0]!]
              ];
        for (const place of [at, ...inWire])
          for (const value of fieldAt([source], place)) expect(Number.isFinite(value)).toBe(true);
      }),
      { seed: SEED, numRuns: 200 }
    );
  });

  it('adds to that of others, and turns round with its current', () => {
    fc.assert(
      fc.property(windings(1), windings(1), places, (a, b, at) => {
        const [one, two] = [windingSource(a, 1), windingSource(b, -0.5)];
        const both = fieldAt([one, two], at);
        const [first, second] = [fieldAt([one], at), fieldAt([windingSource(b, 0.5)], at)];
        const size = Math.hypot(...first) + Math.hypot(...second);
        both.forEach((value, k) =>
          expect(Math.abs(value - first[k]! + second[k]!)).toBeLessThan(1e-12 * size)
        );
      }),
      { seed: SEED, numRuns: 100 }
    );
  });

  it('is the mirror image of that of its mirror image', () => {
    fc.assert(
      fc.property(between(0.5, 3), between(0.5, 3), places, (width, length, [x, y, z]) => {
        const source = windingSource(rectangleWinding(width, length, TURNS), 1);
        const [bx, by, bz] = fieldAt([source], [x, y, z]);
        const other = fieldAt([source], [-x, y, z]);
        const size = Math.hypot(bx, by, bz);
        [-bx, by, bz].forEach((value, k) => expect(Math.abs(other[k]! - value)).toBeLessThan(1e-9 * size));
      }),
      { seed: SEED, numRuns: 100 }
    );
  });

  it('turns round when it is wound the other way', () => {
    const winding = rectangleWinding(1.8, 2.4, TURNS);
    const at: Vector = [0.4, 0.3, 0.3];
    const other = fieldAt([windingSource(reversed(winding), 1)], at);
    fieldAt([windingSource(winding, 1)], at).forEach((value, k) =>
      expect(relativeError(-other[k]!, value)).toBeLessThan(1e-9)
    );
  });
});

describe('inside a wire', () => {
  it('falls evenly to nothing on the axis but for what the rest of the loop sends there', () => {
    const winding = rectangleWinding(20, 20, { bottom: 0, wireRadius: 0.01 });
    const source = windingSource(winding, 1);
    const above = (r: number): number => fieldAt([source], [10, 0, r])[0];
    expect(above(0)).toBe(0);
    expect(relativeError(above(0.005), above(0.01) / 2)).toBeLessThan(1e-9);
    expect(relativeError(Math.abs(above(0.01)), MU0 / (2 * Math.PI * 0.01))).toBeLessThan(1e-5);
    const circle = windingSource(circleWinding(2, { bottom: 0, wireRadius: 0.01 }), 1);
    const radial = (r: number): number => fieldAt([circle], [2, 0, r])[0];
    expect(Math.abs(radial(0))).toBeLessThan(1e-20);
    expect(relativeError(radial(0.005), radial(0.01) / 2)).toBeLessThan(1e-9);
  });
});
