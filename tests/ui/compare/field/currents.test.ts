import { describe, expect, it } from 'vitest';
import type { PlateCurrents } from '#analysis/field-picture/results';
import type { Point } from '#plan/schema';
import {
  currentLines,
  inVehicle,
  lineStep,
  lyingDown,
  mostAround,
  partOutline
} from '#ui/compare/field/currents';

/** A hill over a plate 2 m wide and 4 m long: ψ = height · cos(πx/2) · cos(πy/4), zero on the rim; nodes crowd at the rim. */
function hill(height: number): PlateCurrents {
  const nodes = (half: number): number[] =>
    Array.from({ length: 41 }, (_, k) => half * Math.sin((Math.PI / 2) * ((k - 20) / 20)));
  const [xs, ys] = [nodes(1), nodes(2)];
  const psi = Float64Array.from(
    ys.flatMap((y) => xs.map((x) => height * Math.cos((Math.PI * x) / 2) * Math.cos((Math.PI * y) / 4)))
  );
  return { xs, ys, psi, z_m: 0.5 };
}

const turns = (line: readonly Point[]): number =>
  line.reduce((sum, [x, y], k) => {
    const [a, b] = line[(k + 1) % line.length]!;
    return sum + x * b - y * a;
  }, 0);

describe('lines of current', () => {
  it('lie where the stream function has their level', () => {
    const lines = currentLines(hill(1), 0.2);
    expect(lines).toHaveLength(4);
    lines.forEach((line, n) => {
      for (const [x, y] of line)
        expect(Math.cos((Math.PI * x) / 2) * Math.cos((Math.PI * y) / 4)).toBeCloseTo(0.2 * (n + 1), 2);
    });
  });

  it('go round counter-clockwise about a hill and clockwise about a hollow', () => {
    for (const line of currentLines(hill(1), 0.2)) expect(turns(line)).toBeGreaterThan(0);
    for (const line of currentLines(hill(-1), 0.2)) expect(turns(line)).toBeLessThan(0);
  });

  it('are one step apart in every plate, which follows from the strongest', () => {
    const picture = { vehicle: { vehicle: 'car', at: [0, 0] as Point, heading: 90 }, rings: [] };
    expect(lineStep({ ...picture, plates: [hill(-0.8), hill(0.1)] })).toBe(0.1);
    expect(mostAround(hill(-0.8))).toBeCloseTo(0.8, 9);
    expect(lineStep({ ...picture, plates: [] })).toBe(0);
    expect(currentLines(hill(1), 0)).toEqual([]);
  });
});

describe('a vehicle from above', () => {
  it('has what lies ahead of it ahead, and on the screen to the right', () => {
    const east = { vehicle: 'car', at: [10, 5] as Point, heading: 0 };
    const [x, y] = inVehicle(east, [12, 4]);
    expect([x, y]).toEqual([1, 2]);
    expect(lyingDown([1, 2])).toEqual([2, -1]);
  });

  it('shows a wheel that stands as a line and a ring that lies as a circle', () => {
    const ring = { kind: 'ring' as const, radius: 0.3, conductorRadius: 0.01 };
    const wheel = partOutline({ ...ring, centre: [0, 0, 0.3], axis: [1, 0, 0] });
    for (const [x] of wheel) expect(x).toBeCloseTo(0, 9);
    expect(Math.max(...wheel.map(([, y]) => y))).toBeCloseTo(0.3, 9);
    const lying = partOutline({ ...ring, centre: [1, 2, 0.3], axis: [0, 0, 1] });
    for (const [x, y] of lying) expect(Math.hypot(x - 1, y - 2)).toBeCloseTo(0.3, 9);
  });
});
