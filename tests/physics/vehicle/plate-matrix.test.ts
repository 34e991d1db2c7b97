import { describe, expect, it } from 'vitest';
import { choleskyFactor, dot, forwardSubstitute } from '#physics/numeric/cholesky';
import { gaussLegendre } from '#physics/numeric/gauss-legendre';
import { addOwnBlock, addPlateBlock } from '#physics/vehicle/plate-matrix';
import { meshPlate, type PlateMesh } from '#physics/vehicle/plate-mesh';
import { relativeError } from '../support/reference';

const MU0 = 4e-7 * Math.PI;
const plate = (width: number, length: number, height: number, x = 0, y = 0) => ({
  kind: 'plate' as const,
  x,
  y,
  height,
  width,
  length
});

/** K = (∂ψ/∂y, −∂ψ/∂x) of the hat at node (p, q), at every quadrature point of the cells around it, weighted. */
const currentOf = ({ xs, ys, plate: { height } }: PlateMesh, p: number, q: number) => {
  const { nodes, weights } = gaussLegendre(6);
  const points: { x: number; y: number; z: number; kx: number; ky: number }[] = [];
  for (const [c, nearX] of [
    [p - 1, 0],
    [p, 1]
  ] as const)
    for (const [d, nearY] of [
      [q - 1, 0],
      [q, 1]
    ] as const) {
      const dx = xs[c + 1]! - xs[c]!;
      const dy = ys[d + 1]! - ys[d]!;
      nodes.forEach((u, i) =>
        nodes.forEach((v, j) => {
          const s = (1 + u) / 2;
          const t = (1 + v) / 2;
          const hatX = nearX ? 1 - s : s;
          const hatY = nearY ? 1 - t : t;
          const area = (weights[i]! * weights[j]! * dx * dy) / 4;
          const kx = (hatX * (nearY ? -1 : 1)) / dy;
          const ky = (-hatY * (nearX ? -1 : 1)) / dx;
          points.push({ x: xs[c]! + s * dx, y: ys[d]! + t * dy, z: height, kx: kx * area, ky: ky * area });
        })
      );
    }
  return points;
};

const byQuadrature = (a: ReturnType<typeof currentOf>, b: ReturnType<typeof currentOf>): number => {
  let sum = 0;
  for (const m of a)
    for (const n of b) sum += (m.kx * n.kx + m.ky * n.ky) / Math.hypot(m.x - n.x, m.y - n.y, m.z - n.z);
  return (MU0 / (4 * Math.PI)) * sum;
};

/** ∬ψ of the answer to a uniform field of 1 T, times µ0: the plate's moment over its field. */
const moment = (width: number, length: number, step: number, fineness = 1): number => {
  const mesh = meshPlate(plate(width, length, 1), step, fineness);
  const size = mesh.unknowns;
  const matrix = new Float64Array(size * size);
  addOwnBlock(matrix, size, mesh, 0);
  const b = new Float64Array(size);
  mesh.pointIndex.forEach((index, k) => {
    if (index >= 0) b[index]! += mesh.pointWeight[k]!;
  });
  const y = forwardSubstitute(choleskyFactor(matrix, size)!, b);
  return MU0 * dot(y, y);
};

describe('two plates', () => {
  const one = meshPlate(plate(0.8, 0.6, 0.3), 0.4, 1);
  const other = meshPlate(plate(0.5, 0.9, 0.75, 0.4, -0.3), 0.4, 1);
  const size = one.unknowns + other.unknowns;
  const block = new Float64Array(size * size);
  addPlateBlock(block, size, other, one, one.unknowns, 0);

  it('have in common what quadrature over all four dimensions finds', () => {
    for (const [p, q, r, s] of [
      [1, 1, 3, 4],
      [7, 6, 5, 2],
      [4, 9, 8, 10]
    ] as const) {
      const row = one.unknowns + other.index[r * other.ys.length + s]!;
      const column = one.index[p * one.ys.length + q]!;
      const wanted = byQuadrature(currentOf(other, r, s), currentOf(one, p, q));
      expect(relativeError(block[row * size + column]!, wanted)).toBeLessThan(2e-3);
    }
  });

  it('have it wherever they are in the matrix, and nothing outside their block', () => {
    const swapped = new Float64Array(size * size);
    addPlateBlock(swapped, size, other, one, 0, other.unknowns);
    for (let i = 0; i < other.unknowns; i += 7)
      for (let j = 0; j < one.unknowns; j += 5)
        expect(swapped[i * size + other.unknowns + j]).toBe(block[(one.unknowns + i) * size + j]);
    const inside = block.subarray(one.unknowns * size).length;
    expect(block.subarray(0, block.length - inside).every((value) => value === 0)).toBe(true);
  });
});

describe('one plate', () => {
  it('has a symmetric matrix that no turning over changes', () => {
    const mesh = meshPlate(plate(0.8, 1.3, 0.3), 0.4, 1);
    const size = mesh.unknowns;
    const matrix = new Float64Array(size * size);
    addOwnBlock(matrix, size, mesh, 0);
    const [nx, ny] = [mesh.xs.length - 1, mesh.ys.length - 1];
    const at = (p: number, q: number): number => mesh.index[p * (ny + 1) + q]!;
    for (let p = 1; p < nx; p += 2)
      for (let q = 1; q < ny; q += 3)
        for (let r = 1; r < nx; r++)
          for (let s = 1; s < ny; s++) {
            const value = matrix[at(p, q) * size + at(r, s)]!;
            expect(matrix[at(r, s) * size + at(p, q)]).toBe(value);
            const turned = matrix[at(nx - p, ny - q) * size + at(nx - r, ny - s)]!;
            expect(Math.abs(turned - value)).toBeLessThan(1e-12 * matrix[at(p, q) * size + at(p, q)]!);
          }
  });

  it('has the moment of a strip per length: π·w²/4 times H (conformal map of a strip in a uniform field)', () => {
    // the difference of two lengths leaves the ends out
    const perLength = (fineness: number): number =>
      (moment(0.5, 5, 0.3, fineness) - moment(0.5, 3.5, 0.3, fineness)) / 1.5;
    const error = (fineness: number): number => relativeError(perLength(fineness), (Math.PI * 0.25) / 4);
    expect(error(1)).toBeLessThan(6e-3);
    expect(error(2)).toBeLessThan(2e-3);
  });

  it('if square has the moment 0.4548·s³·H, from memory of de Meulenaere & Van Bladel 1977 (0.1137 for an aperture)', () => {
    expect(relativeError(moment(1, 1, 0.1), 4 * 0.1137)).toBeLessThan(3e-3);
  });

  it('has a moment that grows with the cube of its size', () => {
    expect(relativeError(moment(2, 3, 0.6), 8 * moment(1, 1.5, 0.3))).toBeLessThan(1e-9);
  });
});
