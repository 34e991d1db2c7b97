/**
 * The bilinear stream function of one plate: ψ on the inner nodes of a rectangular mesh, zero on the rim; surface
 * current K = (∂ψ/∂y, −∂ψ/∂x). Quadrature points carry, for each of a cell's four nodes, the value of its hat function.
 */
import { gaussLegendre } from '../numeric/gauss-legendre';
import { gradedNodes } from './mesh';
import type { PlatePart } from './parts';

export interface PlateMesh {
  readonly plate: PlatePart;
  /** Node coordinates in the vehicle's frame, metres. */
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly unknowns: number;
  /** Index of the unknown at node (p, q), or −1 on the rim; stored p·ys.length + q. */
  readonly index: Int32Array;
  /** Quadrature points of the flux: 2 × 2 a cell. */
  readonly pointX: Float64Array;
  readonly pointY: Float64Array;
  /** Four unknowns and four weights (area included) a point. */
  readonly pointIndex: Int32Array;
  readonly pointWeight: Float64Array;
}

const FLUX_POINTS = 2;

/** `step` is the largest cell's side in metres; see `gradedNodes` for the fineness. */
export const meshPlate = (plate: PlatePart, step: number, fineness: number): PlateMesh => {
  const across = gradedNodes(plate.width, step, fineness);
  const along = gradedNodes(plate.length, step, fineness);
  const xs = across.map((x) => x + plate.x);
  const ys = along.map((y) => y + plate.y);
  const index = new Int32Array(xs.length * ys.length).fill(-1);
  let unknowns = 0;
  for (let p = 1; p < xs.length - 1; p++)
    for (let q = 1; q < ys.length - 1; q++) index[p * ys.length + q] = unknowns++;

  const { nodes, weights } = gaussLegendre(FLUX_POINTS);
  const count = (xs.length - 1) * (ys.length - 1) * FLUX_POINTS * FLUX_POINTS;
  const pointX = new Float64Array(count);
  const pointY = new Float64Array(count);
  const pointIndex = new Int32Array(4 * count);
  const pointWeight = new Float64Array(4 * count);
  let point = 0;
  for (let p = 0; p < xs.length - 1; p++)
    for (let q = 0; q < ys.length - 1; q++)
      for (let i = 0; i < FLUX_POINTS; i++)
        for (let j = 0; j < FLUX_POINTS; j++) {
          const u = (1 + nodes[i]!) / 2;
          const v = (1 + nodes[j]!) / 2;
          const dx = xs[p + 1]! - xs[p]!;
          const dy = ys[q + 1]! - ys[q]!;
          const area = (weights[i]! * weights[j]! * dx * dy) / 4;
          pointX[point] = xs[p]! + u * dx;
          pointY[point] = ys[q]! + v * dy;
          const corner = p * ys.length + q;
          [corner, corner + 1, corner + ys.length, corner + ys.length + 1].forEach((node, k) => {
            pointIndex[4 * point + k] = index[node]!;
            pointWeight[4 * point + k] = area * (k < 2 ? 1 - u : u) * (k % 2 === 0 ? 1 - v : v);
          });
          point++;
        }
  return { plate, xs, ys, unknowns, index, pointX, pointY, pointIndex, pointWeight };
};
