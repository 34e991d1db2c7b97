import { describe, expect, it } from 'vitest';
import { deepestColumn, windingOf } from '#analysis/electrical/winding-of';
import { externalInductance } from '#physics/inductance/loop';
import { runLength, type StraightRun, type Winding } from '#physics/inductance/winding';
import type { Loop, Shape } from '#plan/schema';

const WIRE = { conductor: 0.0016, insulated: 0.004 };
const wound = (shape: Shape, turns = 2): Winding => {
  const loop: Loop = {
    id: 'L',
    name: '',
    turns,
    wire: 'awg14',
    slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
    tail: { length: 4 },
    shape
  };
  return windingOf(loop, WIRE);
};
const box = { centre: [1, 2] as const, width: 1.8, length: 3, rotation: 0 };
const rectangle: Shape = { kind: 'rectangle', ...box, cornerCut: 0 };
const straight = (winding: Winding): StraightRun[] =>
  winding.runs.filter((run): run is StraightRun => run.kind === 'straight');
const heightsOf = (run: { readonly heights: readonly number[] }): string[] =>
  run.heights.map((height) => height.toFixed(4));

describe('a rectangle', () => {
  it('is four columns of wires, stacked from the bottom of the slot by the insulated diameter', () => {
    const winding = wound(rectangle, 3);
    expect(winding.runs).toHaveLength(4);
    // −depth + D·(i + ½): −50 + 2, 6, 10 mm
    for (const run of winding.runs) expect(heightsOf(run)).toEqual(['-0.0480', '-0.0440', '-0.0400']);
    expect(winding.columns).toEqual(
      [1.8, 3, 1.8, 3].map((length) => ({ length: expect.closeTo(length, 12) as number, wires: 3 }))
    );
    expect(winding.wireRadius).toBe(0.0008);
    expect(winding.pitch).toBe(0.004);
    expect(winding.wireLength).toBeCloseTo(3 * 9.6, 12);
    expect(deepestColumn(winding)).toBe(3);
  });

  it('runs counter-clockwise in unit directions', () => {
    const sides = straight(wound(rectangle));
    expect(sides.map(({ ux, uy }) => [Math.round(ux), Math.round(uy)])).toEqual([
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1]
    ]);
    for (const { ux, uy } of straight(wound({ ...rectangle, rotation: 33 })))
      expect(Math.hypot(ux, uy)).toBeCloseTo(1, 14);
  });

  it('with a corner cut of next to nothing is the one without', () => {
    const plain = externalInductance(wound(rectangle));
    for (const cornerCut of [5e-324, 1e-20, 1e-17, 1e-15]) {
      const winding = wound({ ...rectangle, cornerCut });
      expect(externalInductance(winding) / plain).toBeCloseTo(1, 10);
      expect(winding.wireLength).toBeCloseTo(2 * 9.6, 10);
    }
  });
});

describe('a quadrupole', () => {
  const winding = wound({ kind: 'quadrupole', ...box });
  const middle = straight(winding).filter(({ x, length }) => Math.abs(x - 1) < 1e-9 && length > 2.9);

  it('has both halves in the middle slot, interleaved and in one direction', () => {
    // turn i of the first half at position 2i, of the second at 2i + 1
    expect(middle.map(heightsOf)).toEqual([
      ['-0.0480', '-0.0400'],
      ['-0.0440', '-0.0360']
    ]);
    expect(middle.map(({ uy }) => Math.round(uy))).toEqual([1, 1]);
  });

  it('has single stacks in the outer slots', () => {
    const outer = straight(winding).filter((run) => !middle.includes(run));
    expect(outer).toHaveLength(6);
    for (const run of outer) expect(heightsOf(run)).toEqual(['-0.0480', '-0.0440']);
  });

  it('counts the middle slot once, with all its wires, for what the wires do to one another', () => {
    expect(winding.columns.filter(({ wires }) => wires === 4)).toEqual([{ length: 3, wires: 4 }]);
    const slots = winding.columns.reduce((sum, { length }) => sum + length, 0);
    expect(slots).toBeCloseTo(2 * (1.8 + 3) + 3, 12);
    expect(winding.wireLength).toBeCloseTo(2 * (2 * (1.8 + 3) + 2 * 3), 12);
    expect(deepestColumn(winding)).toBe(4);
  });
});

describe('a diagonal', () => {
  const winding = wound({ kind: 'diagonal', ...box });
  const hypotenuse = Math.hypot(1.8, 3);

  it('has both triangles in the slot from (−w/2, −l/2) to (+w/2, +l/2), in one direction', () => {
    const shared = straight(winding).filter(({ length }) => Math.abs(length - hypotenuse) < 1e-9);
    expect(shared.map(heightsOf)).toEqual([
      ['-0.0480', '-0.0400'],
      ['-0.0440', '-0.0360']
    ]);
    for (const { ux, uy, x, y } of shared) {
      expect([ux * hypotenuse, uy * hypotenuse]).toEqual([expect.closeTo(1.8, 9), expect.closeTo(3, 9)]);
      expect([x, y]).toEqual([expect.closeTo(0.1, 9), expect.closeTo(0.5, 9)]);
    }
  });

  it('has its wire and its slots', () => {
    expect(winding.wireLength).toBeCloseTo(2 * (2 * 4.8 + 2 * hypotenuse), 12);
    const total = winding.columns.reduce((sum, { length, wires }) => sum + length * wires, 0);
    expect(total).toBeCloseTo(winding.wireLength, 12);
  });
});

describe('a circle', () => {
  it('is one round column', () => {
    const winding = wound({ kind: 'circle', centre: [3, -1], diameter: 1.8 }, 4);
    expect(winding.runs).toEqual([expect.objectContaining({ kind: 'round', x: 3, y: -1, radius: 0.9 })]);
    expect(winding.columns).toEqual([{ length: runLength(winding.runs[0]!), wires: 4 }]);
    expect(winding.wireLength).toBeCloseTo(4 * Math.PI * 1.8, 12);
  });
});

describe('a polygon', () => {
  it('keeps the order of its points', () => {
    const points = [
      [0, 0],
      [0, 2],
      [2, 0]
    ] as const;
    const [first] = straight(wound({ kind: 'polygon', points }));
    expect([first!.ux, first!.uy]).toEqual([0, 1]);
  });
});
