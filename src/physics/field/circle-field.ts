/**
 * The field of a circular current by complete elliptic integrals (Smythe, Static and Dynamic Electricity, §7.10). In the
 * circle's own frame, at ρ from its axis and z over its plane,
 *   Bρ = µ0·I/(2π)·z/(ρ·s)·(−K + (r² + ρ² + z²)/d²·E),
 *   Bz = µ0·I/(2π·s)·(K + (r² − ρ² − z²)/d²·E),
 * s² = (r + ρ)² + z², d² = (r − ρ)² + z², m = 4rρ/s².
 *
 * Close to the axis Bρ is a difference of nearly equal terms, and the first term of its series stands for it. Within the
 * conductor the field falls evenly to nothing on its axis, see `straight-field.ts`.
 */
import { MU0 } from '../constants';
import { completeElliptic } from '../numeric/elliptic';

/** Below this share of the distance the series is good to 1e-8, and the closed form no better. */
const NEAR_AXIS = 1e-4;

export interface CircleField {
  /** Away from the axis, tesla. */
  readonly outwards: number;
  /** Along the axis. */
  readonly upwards: number;
}

/**
 * Tesla per ampere that runs counter-clockwise as seen from above: `radius` of the circle, `thickness` the conductor's
 * radius (more than 0), at `rho` from the axis and `z` over the circle's plane, metres.
 */
export const circleField = (radius: number, thickness: number, rho: number, z: number): CircleField => {
  const apart = Math.hypot(rho - radius, z);
  if (apart < thickness) {
    const [aside, above] = apart > 0 ? [(rho - radius) / apart, z / apart] : [1, 0];
    const onIt = outside(radius, radius + aside * thickness, above * thickness);
    const share = apart / thickness;
    return { outwards: share * onIt.outwards, upwards: share * onIt.upwards };
  }
  return outside(radius, rho, z);
};

const outside = (r: number, rho: number, z: number): CircleField => {
  const sum = (r + rho) * (r + rho) + z * z;
  const difference = (r - rho) * (r - rho) + z * z;
  const { K, E } = completeElliptic((4 * r * rho) / sum);
  const size = r * r + z * z;
  const root = Math.sqrt(sum);
  const upwards = (MU0 / (2 * Math.PI * root)) * (K + ((r * r - rho * rho - z * z) / difference) * E);
  const outwards =
    rho * rho < NEAR_AXIS * NEAR_AXIS * size
      ? (0.75 * MU0 * r * r * z * rho) / (size * size * Math.sqrt(size))
      : (MU0 / (2 * Math.PI)) * (z / (rho * root)) * (((size + rho * rho) / difference) * E - K);
  return { outwards, upwards };
};
