import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradedNodes } from '#physics/vehicle/mesh';
import { meshPlate } from '#physics/vehicle/plate-mesh';
import { between, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';

const cellsOf = (nodes: Float64Array): number[] =>
  Array.from({ length: nodes.length - 1 }, (_, k) => nodes[k + 1]! - nodes[k]!);

describe('nodes along a side', () => {
  it('run from rim to rim, exactly symmetric, crowded towards both, no cell much over the wanted step', () => {
    fc.assert(
      fc.property(between(0.02, 60), between(0.05, 8), between(0.4, 3), (side, step, fineness) => {
        const nodes = gradedNodes(side, step, fineness);
        const last = nodes.length - 1;
        expect(nodes[0]).toBe(-side / 2);
        expect(nodes[last]).toBe(side / 2);
        nodes.forEach((x, k) => expect(nodes[last - k]).toBe(-x === 0 ? 0 : -x));
        const cells = cellsOf(nodes);
        expect(Math.min(...cells)).toBeGreaterThan(0);
        expect(Math.max(...cells)).toBeLessThan(1.3 * step);
        expect(cells[0]).toBe(Math.min(...cells.slice(0, Math.ceil(cells.length / 2))));
      }),
      { seed: SEED, numRuns: 200 }
    );
  });

  it('become more as the step shrinks or the fineness grows', () => {
    const count = (step: number, fineness: number): number => gradedNodes(4.2, step, fineness).length;
    expect(count(0.1, 1)).toBeGreaterThan(count(0.3, 1));
    expect(count(0.3, 3)).toBeGreaterThan(count(0.3, 1));
    expect(count(0.3, 0.45)).toBeLessThan(count(0.3, 1));
  });
});

describe('a meshed plate', () => {
  const plate = { kind: 'plate' as const, x: 0.3, y: -0.5, height: 0.4, width: 1.2, length: 2.5 };
  const mesh = meshPlate(plate, 0.3, 1);

  it('lies where the part says', () => {
    expect([mesh.xs[0], mesh.xs.at(-1)]).toEqual([0.3 - 0.6, 0.3 + 0.6]);
    expect([mesh.ys[0], mesh.ys.at(-1)]).toEqual([-0.5 - 1.25, -0.5 + 1.25]);
  });

  it('has an unknown at every inner node and none on the rim', () => {
    const [nx, ny] = [mesh.xs.length, mesh.ys.length];
    expect(mesh.unknowns).toBe((nx - 2) * (ny - 2));
    for (let p = 0; p < nx; p++)
      for (let q = 0; q < ny; q++) {
        const rim = p === 0 || q === 0 || p === nx - 1 || q === ny - 1;
        expect(mesh.index[p * ny + q]! < 0).toBe(rim);
      }
  });

  it('integrates hats: x·y of a plane, and the volume of the pyramid at each node', () => {
    const volume = new Float64Array(mesh.unknowns);
    let all = 0;
    mesh.pointIndex.forEach((index, k) => {
      all += mesh.pointWeight[k]!;
      if (index >= 0) volume[index]! += mesh.pointWeight[k]!;
    });
    expect(relativeError(all, 1.2 * 2.5)).toBeLessThan(1e-12);
    const ny = mesh.ys.length;
    for (let p = 1; p < mesh.xs.length - 1; p++)
      for (let q = 1; q < ny - 1; q++) {
        const wanted = ((mesh.xs[p + 1]! - mesh.xs[p - 1]!) * (mesh.ys[q + 1]! - mesh.ys[q - 1]!)) / 4;
        expect(relativeError(volume[mesh.index[p * ny + q]!]!, wanted)).toBeLessThan(1e-12);
      }
  });
});
