/**
 * Mutual inductance of two straight filaments anywhere in space, closed form.
 *
 * With s and t measured along the two lines from the feet of their common perpendicular d, and ε the angle between
 * them, M = (µ0/4π)·cos ε·[F]: F(s,t) is the double antiderivative of 1/R, R² = d² + s² + t² − 2st·cos ε, taken over the
 * four pairs of ends (Campbell 1915; Grover, *Inductance Calculations*, 1946, ch. 6 and 7). Logarithms are written as
 * asinh, which does not cancel. Parallel filaments have their own antiderivative. Touching ends, meeting lines and
 * collinear filaments are limits that the forms below reach without division by zero; overlapping collinear filaments
 * have no finite mutual inductance and give Infinity.
 */
import { MU0 } from '../constants';

export type Vector = readonly [number, number, number];

/**
 * Below this angle the feet of the common perpendicular lie so far away that the skew form loses what it subtracts: 7 %
 * at 1e-7, 4e-6 at 1e-5. There the second filament is cut into pieces, each parallel at the distance of its middle; the
 * error falls with the square of their number, so two numbers of pieces give the limit.
 */
const PARALLEL_SINE = 3e-5;
const PIECES = 16;
/** Below this angle filaments are parallel but for rounding. */
const ROUNDING_SINE = 1e-10;

/** v·asinh(u/w), with its limit 0 where v = 0. */
const term = (v: number, u: number, w: number): number => (v === 0 ? 0 : v * Math.asinh(u / w));

const skewPrimitive = (s: number, t: number, d: number, cosine: number, sine: number): number => {
  const square = d * d;
  const value =
    term(s, t - s * cosine, Math.sqrt(square + s * s * sine * sine)) +
    term(t, s - t * cosine, Math.sqrt(square + t * t * sine * sine));
  if (d === 0) return value;
  const r = Math.sqrt(Math.max(0, square + s * s + t * t - 2 * s * t * cosine));
  return value - (d / sine) * Math.atan2(square * cosine + s * t * sine * sine, d * r * sine);
};

const parallelPrimitive = (u: number, d: number): number => {
  if (d > 0) return u * Math.asinh(u / d) - Math.sqrt(u * u + d * d);
  const size = Math.abs(u);
  return size === 0 ? 0 : size * Math.log(size) - size;
};

/**
 * Neumann integral ∬ ds·dt/|r−r'| of two parallel filaments of lengths `l` and `m` at distance `d`; the second starts
 * `offset` further along (all metres; the second runs in the direction of the first).
 */
export const parallelIntegral = (l: number, m: number, d: number, offset: number): number =>
  parallelPrimitive(offset + m, d) -
  parallelPrimitive(offset, d) -
  parallelPrimitive(offset + m - l, d) +
  parallelPrimitive(offset - l, d);

/** Mutual inductance, henries, of the filaments a0→a1 and b0→b1 (metres). */
export const mutualOfSegments = (a0: Vector, a1: Vector, b0: Vector, b1: Vector): number => {
  const ax = a1[0] - a0[0];
  const ay = a1[1] - a0[1];
  const az = a1[2] - a0[2];
  const bx = b1[0] - b0[0];
  const by = b1[1] - b0[1];
  const bz = b1[2] - b0[2];
  const l = Math.sqrt(ax * ax + ay * ay + az * az);
  const m = Math.sqrt(bx * bx + by * by + bz * bz);
  if (l === 0 || m === 0) return 0;
  const cosine = (ax * bx + ay * by + az * bz) / (l * m);
  if (cosine === 0) return 0;
  const cx = (ay * bz - az * by) / (l * m);
  const cy = (az * bx - ax * bz) / (l * m);
  const cz = (ax * by - ay * bx) / (l * m);
  const sine = Math.sqrt(cx * cx + cy * cy + cz * cz);
  const wx = b0[0] - a0[0];
  const wy = b0[1] - a0[1];
  const wz = b0[2] - a0[2];
  if (sine < PARALLEL_SINE) {
    const inPieces = (pieces: number): number => {
      let sum = 0;
      for (let k = 0; k < pieces; k++) {
        const share = (k + 0.5) / pieces;
        const mx = wx + bx * share - ax / 2;
        const my = wy + by * share - ay / 2;
        const mz = wz + bz * share - az / 2;
        const along = (mx * ax + my * ay + mz * az) / l;
        const px = my * az - mz * ay;
        const py = mz * ax - mx * az;
        const pz = mx * ay - my * ax;
        sum += parallelPair(l, m / pieces, Math.sqrt(px * px + py * py + pz * pz) / l, along);
      }
      return Math.sign(cosine) * sum;
    };
    if (sine < ROUNDING_SINE) return inPieces(1);
    return (4 * inPieces(2 * PIECES) - inPieces(PIECES)) / 3;
  }
  const alongA = (wx * ax + wy * ay + wz * az) / l;
  const alongB = (wx * bx + wy * by + wz * bz) / m;
  const sineSquare = sine * sine;
  const footA = (alongA - alongB * cosine) / sineSquare;
  const footB = (alongA * cosine - alongB) / sineSquare;
  const gap = Math.abs(wx * cx + wy * cy + wz * cz) / sine;
  const size = l + m;
  const d = gap > 1e-13 * size ? gap : 0;
  const zeroed = (value: number): number => (Math.abs(value) > 1e-13 * size ? value : 0);
  const s0 = zeroed(-footA);
  const s1 = zeroed(l - footA);
  const t0 = zeroed(-footB);
  const t1 = zeroed(m - footB);
  const integral =
    skewPrimitive(s1, t1, d, cosine, sine) -
    skewPrimitive(s1, t0, d, cosine, sine) -
    skewPrimitive(s0, t1, d, cosine, sine) +
    skewPrimitive(s0, t0, d, cosine, sine);
  return (MU0 / (4 * Math.PI)) * cosine * integral;
};

/** Parallel filaments of lengths `l` and `m` in one direction, their middles `beside` and `along` apart: H. */
const parallelPair = (l: number, m: number, beside: number, along: number): number => {
  // a distance that is nothing but rounding would turn touching collinear filaments into overlapping ones
  const d = beside > 1e-12 * (l + m + Math.abs(along)) ? beside : 0;
  const offset = along + (l - m) / 2;
  if (d === 0 && offset < l - 1e-12 * l && offset + m > 1e-12 * l) return Infinity;
  return (MU0 / (4 * Math.PI)) * parallelIntegral(l, m, d, d === 0 ? snapEnds(offset, l, m) : offset);
};

/** Exact contact for collinear filaments that touch end to end but for rounding. */
const snapEnds = (offset: number, l: number, m: number): number => {
  const near = 1e-12 * (l + m);
  if (Math.abs(offset - l) < near) return l;
  return Math.abs(offset + m) < near ? -m : offset;
};
