/**
 * Circular filaments in parallel planes.
 *
 * Coaxial circles: Maxwell's formula with complete elliptic integrals (Rosa & Grover 1912, formula 1).
 * A circle with anything else: the closed-form vector potential of the one, taken along the other by the trapezoidal
 * rule with doubling, which converges geometrically on a closed smooth curve.
 */
import { MU0 } from '../constants';
import { completeElliptic } from '../numeric/elliptic';

/** Mutual inductance, H, of two coaxial circles of radii `a` and `b` whose planes are `z` apart (not both a = b, z = 0). */
export const coaxialCircles = (a: number, b: number, z: number): number => {
  const square = (a + b) * (a + b) + z * z;
  const m = (4 * a * b) / square;
  const { K, E } = completeElliptic(m);
  const k = Math.sqrt(m);
  return MU0 * Math.sqrt(a * b) * ((2 / k - k) * K - (2 / k) * E);
};

/** External self-inductance, H, of a circle of radius `r` of wire of radius `a` ≪ r: µ0·r·(ln(8r/a) − 2). */
export const circleExternal = (r: number, a: number): number => MU0 * r * (Math.log((8 * r) / a) - 2);

/** Azimuthal vector potential, T·m per ampere, of a circle of radius `r` at distance `rho` from its axis, `z` above it. */
export const circlePotential = (r: number, rho: number, z: number): number => {
  if (rho === 0) return 0;
  const square = (r + rho) * (r + rho) + z * z;
  const m = (4 * r * rho) / square;
  // near the axis the closed form is a difference of nearly equal terms; its series there is πm²/32·(1 + 3m/4 + …)
  if (m < 1e-4) return (MU0 / 32) * Math.sqrt(r / rho) * m ** 1.5 * (1 + 0.75 * m);
  const { K, E } = completeElliptic(m);
  return (MU0 / (Math.PI * Math.sqrt(m))) * Math.sqrt(r / rho) * ((1 - m / 2) * K - E);
};

const MOST_POINTS = 8_192;

/**
 * ∮ f dφ over a full circle to a relative change of 1e-8 between doublings (or 8192 points, where a wire of another
 * loop passes within millimetres; the figure is then good to about 1e-4).
 */
export const roundTrip = (f: (angle: number) => number): number => {
  let count = 16;
  const sample = (n: number, shift: number): number => {
    let sum = 0;
    for (let k = 0; k < n; k++) sum += f((2 * Math.PI * (k + shift)) / n);
    return sum;
  };
  let sum = sample(count, 0);
  let value = sum / count;
  for (;;) {
    sum += sample(count, 0.5);
    count *= 2;
    const next = sum / count;
    if (Math.abs(next - value) <= 1e-8 * Math.abs(next) || count >= MOST_POINTS) return 2 * Math.PI * next;
    value = next;
  }
};

/** Mutual inductance, H, of two circles in parallel planes, axes `distance` apart, planes `z` apart. */
export const parallelCircles = (a: number, b: number, distance: number, z: number): number => {
  if (distance < 1e-9 * (a + b)) return coaxialCircles(a, b, z);
  return roundTrip((angle) => {
    const x = distance + b * Math.cos(angle);
    const y = b * Math.sin(angle);
    const rho = Math.hypot(x, y);
    // A is azimuthal about the first axis; its share along the second circle
    const along = rho === 0 ? 0 : (x * Math.cos(angle) + y * Math.sin(angle)) / rho;
    return circlePotential(a, rho, z) * along * b;
  });
};

/** Vector potential over µ0/4π, per ampere, of a straight filament of length `l`: at `u` along it and `w` beside it. */
const straightPotential = (u: number, l: number, w: number): number =>
  w > 0 ? Math.asinh(u / w) - Math.asinh((u - l) / w) : Math.abs(Math.log(Math.abs(u / (u - l))));

/**
 * Mutual inductance, H, of a counter-clockwise circle and a straight filament in parallel planes `z` apart. The filament
 * starts at (x, y) from the circle's centre, runs in the unit direction (ux, uy) and is `l` long.
 */
export const circleAndSegment = (
  r: number,
  x: number,
  y: number,
  ux: number,
  uy: number,
  l: number,
  z: number
): number =>
  roundTrip((angle) => {
    const px = r * Math.cos(angle) - x;
    const py = r * Math.sin(angle) - y;
    const along = px * ux + py * uy;
    const beside = px * uy - py * ux;
    const tangent = -Math.sin(angle) * ux + Math.cos(angle) * uy;
    return (
      (MU0 / (4 * Math.PI)) * straightPotential(along, l, Math.sqrt(beside * beside + z * z)) * tangent * r
    );
  });
