/** What a vehicle's matrix does not depend on is made once: where the vehicle is, and in what order it was asked about. */
import { describe, expect, it } from 'vitest';
import { atNought, fillMatrix, imagesIn } from '#physics/vehicle/body-matrix';
import { buildBody } from '#physics/vehicle/body';
import type { Part } from '#physics/vehicle/parts';
import { meshPlate } from '#physics/vehicle/plate-mesh';
import { addPlateBlock } from '#physics/vehicle/plate-matrix';
import { ringPath } from '#physics/vehicle/ring';
import { PATIENCE } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { change, OVER, plate, rim } from '../support/vehicles';
import { rectangleWinding } from '../support/windings';

const loop = rectangleWinding(1.8, 1.8, { turns: 3 });
const lorry = (by = 0): Part[] => [
  plate(2, 5, 0.9 + by, 0, -1),
  plate(0.9, 1, 0.55 + by, 0, 2),
  plate(1.8, 0.5, 0.42 + by, 0, -2),
  rim({ x: 0.8, y: 1, height: 0.5 + by })
];
const meshed = (parts: readonly Part[]) => ({
  plates: parts.flatMap((part) => (part.kind === 'plate' ? [meshPlate(part, 0.5, 1)] : [])),
  rings: parts.flatMap((part) => (part.kind === 'ring' ? [ringPath(part, 1)] : []))
});
/** As far as a vehicle reads it. */
const lower = (matrix: Float64Array): number[] => {
  const size = Math.sqrt(matrix.length);
  return [...matrix].filter((_, k) => k % size <= Math.floor(k / size));
};

describe('a vehicle lifted as a whole', () => {
  it('has the same matrix, to the last bit, wherever heights leave crumbs', () => {
    const [low, high] = [0, 0.3 + 1e-16].map((by) => {
      const parts = lorry(by);
      const meshes = meshed(lorry());
      const lifted = {
        plates: meshes.plates.map((mesh, k) => ({ ...mesh, plate: parts[k] as typeof mesh.plate })),
        rings: meshed(parts).rings
      };
      return atNought(lifted, 1);
    });
    expect(lorry(0.3).map((part) => part.height)).not.toEqual(lorry().map((part) => part.height));
    expect(high!.key).toBe(low!.key);
    expect(fillMatrix(high!.meshed)).toEqual(fillMatrix(low!.meshed));
  });

  it('is another one for parts that lie otherwise above one another', () => {
    const [first, ...rest] = lorry();
    const other = [{ ...first!, height: first!.height + 2e-9 }, ...rest];
    const same = [{ ...first!, height: first!.height + 1e-12 }, ...rest];
    const keyOf = (parts: readonly Part[]): string => atNought(meshed(parts), 1).key;
    expect(keyOf(other)).not.toBe(keyOf(lorry()));
    expect(keyOf(same)).not.toBe(keyOf(other));
  });

  it('answers as one that was never built at another height', { timeout: PATIENCE }, () => {
    // mirrored about no line, nothing of it was built before
    const parts = (by: number, hair: number) => lorry(by).map((part) => ({ ...part, y: part.y + hair }));
    const after = change(buildBody(parts(0.02, 0), 0.6), loop);
    change(buildBody(parts(0, 1e-7), 0.6), loop);
    const before = change(buildBody(parts(0.02, 1e-7), 0.6), loop);
    expect(relativeError(before, after)).toBeLessThan(1e-6);
  });
});

describe('what mirrors onto itself is reflected', () => {
  /** Moved aside by so little that nothing mirrors any more: every row is integrated. */
  const hair = 1e-9;
  const pair = (x: number, y: number, height: number) => {
    const outer = meshPlate(plate(0.9, 1, 0.55, x, y), 0.4, 0.7);
    const inner = meshPlate(plate(2, 3, height, 0, 0), 0.5, 0.7);
    const size = outer.unknowns + inner.unknowns;
    const matrix = new Float64Array(size * size);
    addPlateBlock(matrix, size, outer, inner, inner.unknowns, 0);
    return matrix;
  };

  it.each([
    ['of two plates in one line along', 0, 1.2],
    ['of two plates side by side', 0.7, 0],
    ['of one over the other', 0, 0]
  ])('%s', (_, x, y) => {
    const [half, whole] = [pair(x, y, 0.9), pair(x + hair, y + hair, 0.9)];
    const most = whole.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0);
    expect(most).toBeGreaterThan(0);
    half.forEach((value, k) => expect(Math.abs(value - whole[k]!)).toBeLessThan(1e-6 * most));
  });

  it('the images of a plate in a plane, whose two orders are averaged: less than a thousandth of a response', () => {
    const one = meshed([plate(1.6, 3.5, 0.45)]);
    const [mesh] = one.plates;
    const size = mesh!.unknowns;
    const image = { ...mesh!, plate: { ...mesh!.plate, x: hair, y: hair, height: -0.4 - 0.45 } };
    const whole = new Float64Array(size * size);
    addPlateBlock(whole, size, mesh!, image, 0, 0);
    const found = lower(imagesIn(one, 0.2));
    const most = Math.max(...found.map(Math.abs));
    lower(whole).forEach((value, k) => expect(Math.abs(value - found[k]!)).toBeLessThan(1e-3 * most));
  });
});

it('over a plane a body is the same whatever was built before it', { timeout: PATIENCE }, () => {
  const parts = lorry().map((part) => ({ ...part, y: part.y + 0.013 }));
  const first = change(buildBody(parts, 0.6, 0.2), loop, OVER);
  change(buildBody(parts, 0.6), loop, OVER);
  change(buildBody(lorry(0.1), 0.6, 0.3), loop, OVER);
  expect(change(buildBody(parts, 0.6, 0.2), loop, OVER)).toBe(first);
  // currents that have their images beneath them store less, and so more of them flow
  expect(-first).toBeGreaterThan(-change(buildBody(parts, 0.6), loop, OVER));
});
