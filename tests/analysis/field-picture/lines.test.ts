import { describe, expect, it } from 'vitest';
import { clipLine } from '#analysis/field-picture/clip';
import type { FieldPicture, FieldWish } from '#analysis/field-picture/results';
import { evenPlaces } from '#analysis/field-picture/seeds';
import { traceLines, type Directions } from '#analysis/field-picture/trace';
import { createAnswerer } from '#analysis/questions';
import { finish } from '#analysis/steps';
import type { Point } from '#plan/schema';
import { bigSite } from '../../support/big-site';

const GROUND = { left: -2, right: 2, low: -2, high: 2, walls: [] };

const along =
  (field: (u: number, v: number) => Point): Directions =>
  (count, u, v, alongU, alongV) => {
    for (let k = 0; k < count; k++) {
      const [a, b] = field(u[k]!, v[k]!);
      const size = Math.hypot(a, b);
      alongU[k] = size > 0 ? a / size : 0;
      alongV[k] = size > 0 ? b / size : 0;
    }
  };

describe('a traced line', () => {
  it('of a field that turns about a point is a circle, and closed', () => {
    for (const r of [0.003, 0.4, 1.9]) {
      const [line] = finish(
        traceLines(
          [[r, 0]],
          along((u, v) => [-v, u]),
          GROUND
        )
      );
      expect(line![0]).toEqual(line![line!.length - 1]);
      for (const [u, v] of line!) expect(Math.abs(Math.hypot(u, v) / r - 1)).toBeLessThan(2e-4);
    }
  });

  it('of x² − y² is a hyperbola from border to border, along the field', () => {
    // (u, −v) keeps u·v
    const [line] = finish(
      traceLines(
        [[1, 0.5]],
        along((u, v) => [u, -v]),
        GROUND
      )
    );
    for (const [u, v] of line!) expect(Math.abs(u * v - 0.5)).toBeLessThan(1e-4);
    expect(line![0]![1]).toBeGreaterThan(2);
    expect(line![line!.length - 1]![0]).toBeGreaterThan(2);
  });

  it('ends at a wall, on both sides of it', () => {
    const wall: readonly Point[] = [
      [-0.5, 1],
      [0.5, 1]
    ];
    const upwards = along(() => [0, 1]);
    const [under, over, beside] = finish(
      traceLines(
        [
          [0.2, 0],
          [0.2, 1.5],
          [0.7, 0]
        ],
        upwards,
        { ...GROUND, walls: [wall] }
      )
    );
    const ends = (line: readonly Point[]): readonly number[] => [line[0]![1], line[line.length - 1]![1]];
    expect(ends(under!)[1]).toBeCloseTo(1, 12);
    expect(ends(over!)[0]).toBeCloseTo(1, 12);
    expect(ends(beside!)[1]).toBeGreaterThan(2);
  });

  it('ends where the field comes from a point or a ring, and never runs on for ever', () => {
    const fields: readonly ((u: number, v: number) => Point)[] = [
      (u, v) => [u, v],
      // towards a circle of radius 1 from both sides
      (u, v) => [u * (1 - Math.hypot(u, v)), v * (1 - Math.hypot(u, v))],
      // a spiral
      (u, v) => [-v + 0.05 * u, u + 0.05 * v],
      () => [0, 0]
    ];
    for (const field of fields) {
      const [line] = finish(traceLines([[0.5, 0.3]], along(field), GROUND));
      expect(line!.length).toBeLessThan(200);
    }
  });
});

describe('places of equal flux', () => {
  it('have as much flux between one another, and half as much at both ends', () => {
    const flux = Array.from({ length: 400 }, (_, k) => ((k + 0.5) / 400) ** 2);
    const until = (place: number): number =>
      flux.reduce((sum, value, k) => sum + value * Math.min(1, Math.max(0, place - k)), 0);
    const all = until(400);
    evenPlaces(flux, 7).forEach((place, k) => expect(until(place) / all).toBeCloseTo((k + 0.5) / 7, 6));
  });

  it('are none where there is no flux', () => {
    expect(evenPlaces([0, 0], 5)).toEqual([]);
    expect(evenPlaces([0, 1, 0, 1, 0], 1)).toEqual([expect.closeTo(2, 6)]);
  });
});

describe('a line in a box', () => {
  const box = { left: 0, right: 1, low: 0, high: 1 };
  it('is cut where it leaves and begins anew where it comes back', () => {
    const pieces = clipLine(
      [
        [0.5, 0.5],
        [0.5, 1.5],
        [0.75, 1.5],
        [0.75, -1]
      ],
      box
    );
    expect(pieces).toEqual([
      [
        [0.5, 0.5],
        [0.5, 1]
      ],
      [
        [0.75, 1],
        [0.75, 0]
      ]
    ]);
  });

  it('is nothing outside', () => {
    expect(
      clipLine(
        [
          [2, 0],
          [3, 1]
        ],
        box
      )
    ).toEqual([]);
  });
});

describe('field lines of a picture', () => {
  const wish: FieldWish = {
    source: { kind: 'loop', id: 'L1' },
    plane: { kind: 'section', from: [-2.5, 0], to: [2.5, 0], low_m: -1, high_m: 1.5 },
    columns: 101,
    rows: 51,
    vehicle: null,
    lines: 12
  };
  const draw = (over: Partial<FieldWish>): FieldPicture =>
    finish(createAnswerer()('draw-field', bigSite(4), { ...wish, ...over }))!;
  const fieldAt = ({ field, columns }: FieldPicture, [u, v]: Point): Point => {
    const [p, q] = [Math.round(u / 0.05), Math.round((v + 1) / 0.05)];
    const at = 3 * (q * columns + p);
    return [field[at]!, field[at + 1]!];
  };

  it('stay in the picture and run along its field', () => {
    for (const vehicle of [null, { vehicle: 'car', at: [0.2, 0] as const, heading: 90 }]) {
      const picture = draw({ vehicle });
      expect(picture.lines.length).toBeGreaterThan(8);
      let [along, all] = [0, 0];
      for (const line of picture.lines)
        line.forEach(([u, v], k) => {
          expect(u >= -1e-9 && u <= 5 + 1e-9 && v >= -1 - 1e-9 && v <= 1.5 + 1e-9).toBe(true);
          const next = line[k + 1];
          // where the nodes resolve the field: away from the wires, and from the metal
          if (!next || Math.min(Math.abs(u - 1.6), Math.abs(u - 3.4)) < 0.3 || Math.abs(v - 0.45) < 0.15)
            return;
          const [a, b] = fieldAt(picture, [(u + next[0]) / 2, (v + next[1]) / 2]);
          const [du, dv] = [next[0] - u, next[1] - v];
          all++;
          if (a * du + b * dv > 0.98 * Math.hypot(a, b) * Math.hypot(du, dv)) along++;
        });
      expect(all).toBeGreaterThan(60);
      expect(along / all).toBeGreaterThan(0.95);
    }
  });

  it('in the plane of symmetry close round the wires, as many on the left as on the right', () => {
    const { lines } = draw({});
    const closed = lines.filter((line) => line[0]![0] === line[line.length - 1]![0]);
    expect(closed.length).toBeGreaterThan(3);
    const sides = closed.map((line) => line.reduce((sum, [u]) => sum + u - 2.5, 0) > 0);
    expect(sides.filter((side) => side).length * 2).toBe(sides.length);
    for (const line of closed) {
      const [low, high] = [Math.min(...line.map(([u]) => u)), Math.max(...line.map(([u]) => u))];
      const isRound = (wire: number): boolean => low < wire && high > wire;
      expect(isRound(1.6) || isRound(3.4)).toBe(true);
    }
  });

  it('on a plan lead from the middle over the wires and outwards', () => {
    const { lines } = draw({ plane: { kind: 'plan', z_m: 0.3, from: [-2, -2], to: [2, 2] } });
    expect(lines).toHaveLength(12);
    for (const line of lines) {
      expect(Math.hypot(...line[0]!)).toBeLessThan(0.3);
      expect(Math.max(...line[line.length - 1]!.map(Math.abs))).toBeCloseTo(2, 9);
    }
  });

  it('on a plan without a wire in sight come in over its border, or go out', () => {
    const { lines } = draw({ plane: { kind: 'plan', z_m: 0.3, from: [0.2, 0.2], to: [0.6, 0.5] } });
    expect(lines.length).toBeGreaterThan(8);
    const beside = draw({ plane: { kind: 'plan', z_m: 0.3, from: [-3, 3], to: [-2, 4] } }).lines;
    expect(beside.length).toBeGreaterThan(8);
    for (const line of [...lines, ...beside]) expect(line.length).toBeGreaterThan(1);
  });
});
