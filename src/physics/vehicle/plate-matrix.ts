/**
 * Galerkin matrix between two parallel plates (or one plate and itself):
 * A_ij = (µ0/4π)·∬∬ K_i·K_j/|r−r'|, K of the bilinear hats.
 *
 * The inner integral over each cell of the second plate is closed form, with densities constant and linear along one
 * side; all corners of the mesh are evaluated once per outer point and shared by the cells around them. The outer
 * integral is Gauss–Legendre, 2 × 2 a cell. Two plates whose middles lie in one line along or across mirror onto
 * themselves there: only the rows of one half are integrated (of a plate with itself, or with its image, of one quarter),
 * the others follow by reflection.
 */
import { MU0 } from '../constants';
import { gaussLegendre } from '../numeric/gauss-legendre';
import type { PlateMesh } from './plate-mesh';
import { cornerRoom, cornersOf, CORNER_VALUES } from './rectangle-potential';

const OUTER_POINTS = 2;

/**
 * Writes the block of one plate with itself, or with its image at another height, into the square, zeroed `matrix` of
 * `size` at row and column `first`. The outer quadrature leaves it unsymmetric by its error: both orders are averaged.
 */
export const addOwnBlock = (
  matrix: Float64Array,
  size: number,
  plate: PlateMesh,
  first: number,
  image = plate
): void => {
  addPlateBlock(matrix, size, plate, image, first, first);
  for (let i = first; i < first + plate.unknowns; i++)
    for (let j = first; j < i; j++) {
      const mean = (matrix[i * size + j]! + matrix[j * size + i]!) / 2;
      matrix[i * size + j] = mean;
      matrix[j * size + i] = mean;
    }
};

/** Writes the block of `outer` × `inner` into the square, zeroed `matrix` of `size`, at the given first row and column. */
export const addPlateBlock = (
  matrix: Float64Array,
  size: number,
  outer: PlateMesh,
  inner: PlateMesh,
  firstRow: number,
  firstColumn: number
): void => {
  const mirrors = {
    across: outer.plate.x === inner.plate.x,
    along: outer.plate.y === inner.plate.y
  };
  integrateRows(matrix, size, outer, inner, firstRow, firstColumn, {
    across: mirrors.across ? (outer.xs.length - 1) / 2 : Infinity,
    along: mirrors.along ? (outer.ys.length - 1) / 2 : Infinity
  });
  if (mirrors.across || mirrors.along)
    reflectRows(matrix, size, outer, inner, firstRow, firstColumn, mirrors);
};

/** The rows beyond the middle, from those that mirror onto them. */
const reflectRows = (
  matrix: Float64Array,
  size: number,
  outer: PlateMesh,
  inner: PlateMesh,
  firstRow: number,
  firstColumn: number,
  mirrors: { readonly across: boolean; readonly along: boolean }
): void => {
  const [nx, ny] = [outer.xs.length - 1, outer.ys.length - 1];
  const [mx, my] = [inner.xs.length - 1, inner.ys.length - 1];
  const row = (p: number, q: number): number => (firstRow + outer.index[p * (ny + 1) + q]!) * size;
  const column = (r: number, s: number): number => firstColumn + inner.index[r * (my + 1) + s]!;
  for (let p = 1; p < nx; p++)
    for (let q = 1; q < ny; q++) {
      const flipX = mirrors.across && p > nx / 2;
      const flipY = mirrors.along && q > ny / 2;
      if (!flipX && !flipY) continue;
      const from = row(flipX ? nx - p : p, flipY ? ny - q : q);
      const to = row(p, q);
      for (let r = 1; r < mx; r++)
        for (let s = 1; s < my; s++)
          matrix[to + column(r, s)] = matrix[from + column(flipX ? mx - r : r, flipY ? my - s : s)]!;
    }
};

/**
 * Adds the block of `outer` × `inner` into the square `matrix` of `size`, at the given first row and column; rows of
 * nodes beyond `upTo` (counted in cells from the plate's corner) are left out.
 */
const integrateRows = (
  matrix: Float64Array,
  size: number,
  outer: PlateMesh,
  inner: PlateMesh,
  firstRow: number,
  firstColumn: number,
  upTo: { readonly across: number; readonly along: number }
): void => {
  const { nodes, weights } = gaussLegendre(OUTER_POINTS);
  const h = Math.abs(outer.plate.height - inner.plate.height);
  const room = cornerRoom(inner.xs.length, inner.ys.length);
  const slopes = [new Float64Array(inner.index.length), new Float64Array(inner.index.length)] as const;
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
          cornersOf(inner.xs, inner.ys, x, y, h, room);
          slopePotentials(inner, room.corners, x, y, slopes);
          for (let node = 0; node < inner.index.length; node++) {
            const k = inner.index[node]!;
            if (k < 0) continue;
            const alongY = slopes[0][node]! * area;
            const alongX = slopes[1][node]! * area;
            byY[0][k]! += alongY * (1 - s);
            byY[1][k]! += alongY * s;
            byX[0][k]! += alongX * (1 - t);
            byX[1][k]! += alongX * t;
          }
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

/** Of the slopes ∂ψ/∂y and ∂ψ/∂x of the hat at every node, also those on the rim, at one point (x, y). */
const slopePotentials = (
  { xs, ys }: PlateMesh,
  corners: Float64Array,
  x: number,
  y: number,
  [byY, byX]: readonly [Float64Array, Float64Array]
): void => {
  const ny = ys.length;
  const step = CORNER_VALUES;
  byY.fill(0);
  byX.fill(0);
  for (let c = 0; c < xs.length - 1; c++) {
    const x0 = xs[c]! - x;
    const width = xs[c + 1]! - xs[c]!;
    for (let d = 0; d < ny - 1; d++) {
      const y0 = ys[d]! - y;
      const length = ys[d + 1]! - ys[d]!;
      const node = c * ny + d;
      const low = node * step;
      const high = low + ny * step;
      const one = corners[high + step]! - corners[high]! - corners[low + step]! + corners[low]!;
      const alongX =
        corners[high + step + 1]! - corners[high + 1]! - corners[low + step + 1]! + corners[low + 1]!;
      const alongY =
        corners[high + step + 2]! - corners[high + 2]! - corners[low + step + 2]! + corners[low + 2]!;
      // share of the hats at the far side: ∬ (u−x0)/width·1/r, and at the near side the rest
      const farX = (alongX - x0 * one) / width;
      const farY = (alongY - y0 * one) / length;
      const [nearByY, farByY] = [(one - farX) / length, farX / length];
      const [nearByX, farByX] = [(one - farY) / width, farY / width];
      byY[node]! -= nearByY;
      byY[node + 1]! += nearByY;
      byY[node + ny]! -= farByY;
      byY[node + ny + 1]! += farByY;
      byX[node]! -= nearByX;
      byX[node + 1]! -= farByX;
      byX[node + ny]! += nearByX;
      byX[node + ny + 1]! += farByX;
    }
  }
};
