/**
 * Galerkin matrix between two parallel plates (or one plate and itself):
 * A_ij = (µ0/4π)·∬∬ K_i·K_j/|r−r'|, K of the bilinear hats.
 *
 * The inner integral over each cell of the second plate is closed form, with densities constant and linear along one
 * side; all corners of the mesh are evaluated once per outer point and shared by the cells around them. The outer
 * integral is Gauss–Legendre, 2 × 2 a cell. Of a plate with itself only the rows of one quarter are integrated, the
 * others follow by reflection.
 */
import { MU0 } from '../constants';
import { gaussLegendre } from '../numeric/gauss-legendre';
import type { PlateMesh } from './plate-mesh';
import { CORNER_VALUES, cornerPotentials } from './rectangle-potential';

const OUTER_POINTS = 2;

/**
 * Writes the block of one plate with itself into the square, zeroed `matrix` of `size` at row and column `first`. The
 * outer quadrature leaves it unsymmetric by its error: both orders are averaged.
 */
export const addOwnBlock = (matrix: Float64Array, size: number, plate: PlateMesh, first: number): void => {
  const { xs, ys, index, unknowns } = plate;
  const nx = xs.length - 1;
  const ny = ys.length - 1;
  addPlateBlock(matrix, size, plate, plate, first, first, { across: nx / 2, along: ny / 2 });
  const at = (p: number, q: number): number => first + index[p * (ny + 1) + q]!;
  for (let p = 1; p < nx; p++)
    for (let q = 1; q < ny; q++) {
      const flipX = p > nx / 2;
      const flipY = q > ny / 2;
      if (!flipX && !flipY) continue;
      const from = at(flipX ? nx - p : p, flipY ? ny - q : q) * size;
      const to = at(p, q) * size;
      for (let r = 1; r < nx; r++)
        for (let s = 1; s < ny; s++)
          matrix[to + at(r, s)] = matrix[from + at(flipX ? nx - r : r, flipY ? ny - s : s)]!;
    }
  for (let i = first; i < first + unknowns; i++)
    for (let j = first; j < i; j++) {
      const mean = (matrix[i * size + j]! + matrix[j * size + i]!) / 2;
      matrix[i * size + j] = mean;
      matrix[j * size + i] = mean;
    }
};

/**
 * Adds the block of `outer` × `inner` into the square `matrix` of `size`, at the given first row and column; rows of
 * nodes beyond `upTo` (counted in cells from the plate's corner) are left out.
 */
export const addPlateBlock = (
  matrix: Float64Array,
  size: number,
  outer: PlateMesh,
  inner: PlateMesh,
  firstRow: number,
  firstColumn: number,
  upTo: { readonly across: number; readonly along: number } = { across: Infinity, along: Infinity }
): void => {
  const { nodes, weights } = gaussLegendre(OUTER_POINTS);
  const nx = inner.xs.length;
  const ny = inner.ys.length;
  const h = Math.abs(outer.plate.height - inner.plate.height);
  const corners = new Float64Array(nx * ny * CORNER_VALUES);
  const rows = outer.ys.length;
  // per outer cell: potentials of ∂ψ/∂y and ∂ψ/∂x of every inner unknown, weighted with the outer cell's two hats a side
  const byY = [new Float64Array(inner.unknowns), new Float64Array(inner.unknowns)] as const;
  const byX = [new Float64Array(inner.unknowns), new Float64Array(inner.unknowns)] as const;
  for (let p = 0; p < outer.xs.length - 1 && p <= upTo.across; p++)
    for (let q = 0; q < rows - 1 && q <= upTo.along; q++) {
      const dx = outer.xs[p + 1]! - outer.xs[p]!;
      const dy = outer.ys[q + 1]! - outer.ys[q]!;
      for (const sums of [...byY, ...byX]) sums.fill(0);
      for (let i = 0; i < OUTER_POINTS; i++)
        for (let j = 0; j < OUTER_POINTS; j++) {
          const s = (1 + nodes[i]!) / 2;
          const t = (1 + nodes[j]!) / 2;
          const area = (weights[i]! * weights[j]! * dx * dy) / 4;
          const x = outer.xs[p]! + s * dx;
          const y = outer.ys[q]! + t * dy;
          for (let c = 0, at = 0; c < nx; c++)
            for (let d = 0; d < ny; d++, at += CORNER_VALUES)
              cornerPotentials(inner.xs[c]! - x, inner.ys[d]! - y, h, corners, at);
          gatherPotentials(inner, corners, x, y, area, s, t, byY, byX);
        }
      // K_i·K_j = ∂ψi/∂y·∂ψj/∂y + ∂ψi/∂x·∂ψj/∂x; on this cell ∂ψ/∂y of a node is hat(x)·(±1/dy)
      for (let a = 0; a < 2; a++)
        for (let b = 0; b < 2; b++) {
          const row = outer.index[(p + a) * rows + q + b]!;
          if (row < 0 || p + a > upTo.across || q + b > upTo.along) continue;
          const slopeY = (b === 0 ? -1 : 1) / dy;
          const slopeX = (a === 0 ? -1 : 1) / dx;
          const start = (firstRow + row) * size + firstColumn;
          const sumY = byY[a]!;
          const sumX = byX[b]!;
          for (let k = 0; k < inner.unknowns; k++)
            matrix[start + k]! += (MU0 / (4 * Math.PI)) * (slopeY * sumY[k]! + slopeX * sumX[k]!);
        }
    }
};

/** Adds, for one outer point, the potential of every inner hat's slopes, times the outer hats at that point. */
const gatherPotentials = (
  inner: PlateMesh,
  corners: Float64Array,
  x: number,
  y: number,
  area: number,
  s: number,
  t: number,
  byY: readonly [Float64Array, Float64Array],
  byX: readonly [Float64Array, Float64Array]
): void => {
  const ny = inner.ys.length;
  const step = CORNER_VALUES;
  for (let c = 0; c < inner.xs.length - 1; c++) {
    const x0 = inner.xs[c]! - x;
    const width = inner.xs[c + 1]! - inner.xs[c]!;
    for (let d = 0; d < ny - 1; d++) {
      const y0 = inner.ys[d]! - y;
      const length = inner.ys[d + 1]! - inner.ys[d]!;
      const low = (c * ny + d) * step;
      const high = low + ny * step;
      const one = corners[high + step]! - corners[high]! - corners[low + step]! + corners[low]!;
      const alongX =
        corners[high + step + 1]! - corners[high + 1]! - corners[low + step + 1]! + corners[low + 1]!;
      const alongY =
        corners[high + step + 2]! - corners[high + 2]! - corners[low + step + 2]! + corners[low + 2]!;
      // share of the hats at the far side: ∬ (u−x0)/width·1/r, and at the near side the rest
      const farX = (alongX - x0 * one) / width;
      const farY = (alongY - y0 * one) / length;
      for (let a = 0; a < 2; a++)
        for (let b = 0; b < 2; b++) {
          const column = inner.index[(c + a) * ny + d + b]!;
          if (column < 0) continue;
          const slopeY = ((b === 0 ? -1 : 1) / length) * (a === 0 ? one - farX : farX) * area;
          const slopeX = ((a === 0 ? -1 : 1) / width) * (b === 0 ? one - farY : farY) * area;
          byY[0][column]! += slopeY * (1 - s);
          byY[1][column]! += slopeY * s;
          byX[0][column]! += slopeX * (1 - t);
          byX[1][column]! += slopeX * t;
        }
    }
  }
};
