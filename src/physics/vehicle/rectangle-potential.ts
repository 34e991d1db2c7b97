/**
 * Potential of a rectangle with constant and linear density, closed form.
 *
 * For a field point above the corner (u, v are the corner's coordinates from the point, h its height over the plane) the
 * functions below are antiderivatives of 1/r, u/r and v/r with r² = u² + v² + h²; the integral over a rectangle is their
 * alternating sum over its corners (Wilton et al., IEEE Trans. Antennas Propag. 32, 1984, from memory of the reference;
 * tests check them against quadrature).
 */
export const CORNER_VALUES = 3;

/** What `cornersOf` works in. */
interface CornerRoom {
  /** Three values a corner, the second direction first. */
  readonly corners: Float64Array;
  readonly logs: Float64Array;
}

export const cornerRoom = (across: number, along: number): CornerRoom => ({
  corners: new Float64Array(across * along * CORNER_VALUES),
  logs: new Float64Array(along)
});

/**
 * Writes the antiderivatives of 1/r, u/r and v/r at every corner of a grid as seen from (x, y), `h` above or below it.
 * asinh(v/√(u²+h²)) and asinh(u/√(v²+h²)) stand as logarithms, of which every other one is that of a whole row or column;
 * both have a factor that vanishes where they do not exist.
 */
export const cornersOf = (
  xs: Float64Array,
  ys: Float64Array,
  x: number,
  y: number,
  h: number,
  { corners, logs }: CornerRoom
): void => {
  const square = h * h;
  for (let d = 0; d < ys.length; d++) {
    const v = ys[d]! - y;
    logs[d] = 0.5 * Math.log(v * v + square);
  }
  for (let c = 0, at = 0; c < xs.length; c++) {
    const u = xs[c]! - x;
    const uu = u * u + square;
    const log = 0.5 * Math.log(uu);
    for (let d = 0; d < ys.length; d++, at += CORNER_VALUES) {
      const v = ys[d]! - y;
      const vv = v * v + square;
      const r = Math.sqrt(u * u + vv);
      const a = uu > 0 ? Math.sign(v) * (Math.log(Math.abs(v) + r) - log) : 0;
      const b = vv > 0 ? Math.sign(u) * (Math.log(Math.abs(u) + r) - logs[d]!) : 0;
      corners[at] = u * a + v * b - (h > 0 ? h * Math.atan2(u * v, h * r) : 0);
      corners[at + 1] = 0.5 * (v * r + uu * a);
      corners[at + 2] = 0.5 * (u * r + vv * b);
    }
  }
};
