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
  /** Quadrature points of the flux. */
  readonly pointX: Float64Array;
  readonly pointY: Float64Array;
  /** Four unknowns and four weights (area included) a point. */
  readonly pointIndex: Int32Array;
  readonly pointWeight: Float64Array;
}

/** Cells shorter than this share of the height get a single point: 0.05 % at most in trials, for three quarters of the points. */
const SHORT_CELL = 0.15;
/** The same for a quick mesh, which only has to find where a response is strongest. */
const QUICK_SHORT_CELL = 1;

/**
 * `step` is the largest cell's side in metres; see `gradedNodes` for the fineness. `clearance` is how near a wire may come,
 * metres: of a vehicle its height above the road.
 */
export const meshPlate = (
  plate: PlatePart,
  step: number,
  fineness: number,
  clearance = plate.height
): PlateMesh => {
  const across = gradedNodes(plate.width, step, fineness);
  const along = gradedNodes(plate.length, step, fineness);
  const xs = across.map((x) => x + plate.x);
  const ys = along.map((y) => y + plate.y);
  const index = new Int32Array(xs.length * ys.length).fill(-1);
  let unknowns = 0;
  for (let p = 1; p < xs.length - 1; p++)
    for (let q = 1; q < ys.length - 1; q++) index[p * ys.length + q] = unknowns++;

  const shortCell = fineness < 0.5 ? QUICK_SHORT_CELL : SHORT_CELL;
  const pointsAcross = axisRule(xs, shortCell * clearance);
  const pointsAlong = axisRule(ys, shortCell * clearance);
  const count = pointsAcross.length * pointsAlong.length;
  const pointX = new Float64Array(count);
  const pointY = new Float64Array(count);
  const pointIndex = new Int32Array(4 * count);
  const pointWeight = new Float64Array(4 * count);
  let point = 0;
  for (const u of pointsAcross)
    for (const v of pointsAlong) {
      pointX[point] = u.at;
      pointY[point] = v.at;
      const corner = u.cell * ys.length + v.cell;
      [corner, corner + 1, corner + ys.length, corner + ys.length + 1].forEach((node, k) => {
        pointIndex[4 * point + k] = index[node]!;
        pointWeight[4 * point + k] = (k < 2 ? u.near : u.far) * (k % 2 === 0 ? v.near : v.far);
      });
      point++;
    }
  return {
    plate,
    xs,
    ys,
    unknowns,
    index,
    pointX,
    pointY,
    pointIndex,
    pointWeight
  };
};

/** A quadrature point of one axis with its weight for the hats of its cell's near and far node. */
interface AxisPoint {
  readonly at: number;
  readonly cell: number;
  readonly near: number;
  readonly far: number;
}

/** Two Gauss points a cell; one where the cell is short against the height, over which the field hardly changes. */
const axisRule = (nodes: Float64Array, short: number): readonly AxisPoint[] =>
  Array.from({ length: nodes.length - 1 }, (_, cell) => {
    const side = nodes[cell + 1]! - nodes[cell]!;
    const rule = gaussLegendre(side < short ? 1 : 2);
    return rule.nodes.map((node, k) => {
      const far = (1 + node) / 2;
      const weight = (rule.weights[k]! * side) / 2;
      return { at: nodes[cell]! + far * side, cell, near: weight * (1 - far), far: weight * far };
    });
  }).flat();
