/**
 * Potential of a rectangle with constant and linear density, closed form.
 *
 * For a field point above the corner (u, v are the corner's coordinates from the point, h its height over the plane) the
 * functions below are antiderivatives of 1/r, u/r and v/r with r² = u² + v² + h²; the integral over a rectangle is their
 * alternating sum over its corners (Wilton et al., IEEE Trans. Antennas Propag. 32, 1984, from memory of the reference;
 * tests check them against quadrature).
 */
export const CORNER_VALUES = 3;

/** Writes the antiderivatives of 1/r, u/r and v/r at (u, v) into `into` from `at`. */
export const cornerPotentials = (u: number, v: number, h: number, into: Float64Array, at: number): void => {
  const uu = u * u + h * h;
  const vv = v * v + h * h;
  const r = Math.sqrt(u * u + vv);
  // asinh(v/√(u²+h²)) and asinh(u/√(v²+h²)) as logarithms, which cost half; both stand with a factor that vanishes
  // where they do not exist
  const a = uu > 0 ? Math.sign(v) * (Math.log(Math.abs(v) + r) - 0.5 * Math.log(uu)) : 0;
  const b = vv > 0 ? Math.sign(u) * (Math.log(Math.abs(u) + r) - 0.5 * Math.log(vv)) : 0;
  into[at] = u * a + v * b - (h > 0 ? h * Math.atan2(u * v, h * r) : 0);
  into[at + 1] = 0.5 * (v * r + uu * a);
  into[at + 2] = 0.5 * (u * r + vv * b);
};
