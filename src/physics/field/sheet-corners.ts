/**
 * The field of a flat sheet's current in closed form. Its stream function ψ is bilinear between the nodes of a rectangular
 * mesh and 0 on the rim, K = (∂ψ/∂y, −∂ψ/∂x). In the cells ψ bends by its mixed derivative alone, and what is constant or
 * linear in one cell goes on into the next: the law of Biot and Savart over all cells becomes a sum over the nodes, of how
 * much the mixed derivative jumps there (alternately over the four cells around) times one antiderivative,
 *   B·4π/µ0 = Σ D·(h·b + v·t, h·a + u·t, 2r − u·b − v·a),
 * u and v from the point to the node, h its height over the sheet, r² = u² + v² + h², a = asinh(v/√(u² + h²)),
 * b = asinh(u/√(v² + h²)), t = arctan(uv/hr). From ∬1/r³ = t/h, ∬u/r³ = −a, ∬v/r³ = −b, ∬uv/r³ = −r; tests hold it
 * against quadrature.
 *
 * A sheet of metal at these frequencies is a tenth of a millimetre thick: nearer than that counts as that far, so that the
 * field is finite; in the sheet itself it is the mean of both sides.
 */
import { MU0 } from '../constants';

export interface Corners {
  /** Where the nodes stand, metres. */
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Of node (p, q) at p·ys.length + q, A/m². */
  readonly jumps: Float64Array;
  /** Working memory, one number a node of either side. */
  readonly logX: Float64Array;
  readonly logY: Float64Array;
}

const THINNEST = 1e-4;

/** `psi` of node (p, q) at p·ys.length + q, amperes; 0 on the rim. */
export const cornersOf = (xs: Float64Array, ys: Float64Array, psi: Float64Array): Corners => {
  const ny = ys.length;
  const jumps = new Float64Array(xs.length * ny);
  for (let p = 0; p < xs.length - 1; p++)
    for (let q = 0; q < ny - 1; q++) {
      const at = p * ny + q;
      const bent = psi[at + ny + 1]! - psi[at + ny]! - psi[at + 1]! + psi[at]!;
      const mixed = bent / ((xs[p + 1]! - xs[p]!) * (ys[q + 1]! - ys[q]!));
      jumps[at + ny + 1]! += mixed;
      jumps[at + ny]! -= mixed;
      jumps[at + 1]! -= mixed;
      jumps[at]! += mixed;
    }
  return { xs, ys, jumps, logX: new Float64Array(xs.length), logY: new Float64Array(ny) };
};

/** Adds the field at (x, y), `height` over the sheet, to the three numbers in `into`, tesla. */
export const addCorners = (
  { xs, ys, jumps, logX, logY }: Corners,
  x: number,
  y: number,
  height: number,
  into: Float64Array
): void => {
  const h = Math.abs(height) < THINNEST ? (height < 0 ? -THINNEST : THINNEST) : height;
  const hh = h * h;
  const ny = ys.length;
  for (let p = 0; p < xs.length; p++) logX[p] = 0.5 * Math.log((xs[p]! - x) ** 2 + hh);
  for (let q = 0; q < ny; q++) logY[q] = 0.5 * Math.log((ys[q]! - y) ** 2 + hh);
  let alongX = 0;
  let alongY = 0;
  let upwards = 0;
  for (let p = 0, at = 0; p < xs.length; p++) {
    const u = xs[p]! - x;
    const uu = u * u + hh;
    for (let q = 0; q < ny; q++, at++) {
      const jump = jumps[at]!;
      if (jump === 0) continue;
      const v = ys[q]! - y;
      const r = Math.sqrt(uu + v * v);
      const logA = Math.log((v < 0 ? -v : v) + r) - logX[p]!;
      const logB = Math.log((u < 0 ? -u : u) + r) - logY[q]!;
      const a = v < 0 ? -logA : logA;
      const b = u < 0 ? -logB : logB;
      const t = Math.atan((u * v) / (h * r));
      alongX += jump * (h * b + v * t);
      alongY += jump * (h * a + u * t);
      upwards += jump * (2 * r - u * b - v * a);
    }
  }
  const level = height === 0 ? 0 : MU0 / (4 * Math.PI);
  into[0]! += level * alongX;
  into[1]! += level * alongY;
  into[2]! += (MU0 / (4 * Math.PI)) * upwards;
};
