/**
 * Points spread as evenly as independent normal deviates can be, the same every time.
 *
 * In each dimension k the fractions of n·φ⁻ᵏ, φ the positive root of x^(d+1) = x + 1: the golden ratio's way of spreading
 * points evenly, carried to d dimensions (Kronecker sequence); then the inverse of the normal distribution (rational
 * approximation by P. J. Acklam, relative error under 1.2e-9).
 */

const ratio = (dimensions: number): number => {
  let root = 1.5;
  for (let step = 0; step < 60; step++) root = (1 + root) ** (1 / (dimensions + 1));
  return root;
};

const A = [-3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.38357751867269e2, -3.066479806614716e1, 2.506628277459239] as const; // prettier-ignore
const B = [-5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1, -1.328068155288572e1, 1] as const; // prettier-ignore
const C = [-7.784894002430293e-3, -3.223964580411365e-1, -2.400758277161838, -2.549732539343734, 4.374664141464968, 2.938163982698783] as const; // prettier-ignore
const D = [7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416, 1] as const; // prettier-ignore
const TAIL = 0.02425;

const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);

/** The value below which the share `p` of a normal distribution lies, in standard deviations; 0 < p < 1. */
export const normalQuantile = (p: number): number => {
  if (p > 0.5) return -normalQuantile(1 - p);
  if (p < TAIL) {
    const q = Math.sqrt(-2 * Math.log(p));
    return polynomial(C, q) / polynomial(D, q);
  }
  const q = p - 0.5;
  const r = q * q;
  return (polynomial(A, r) * q) / polynomial(B, r);
};

/** `count` points of `dimensions` standard deviations each, one after the other. */
export const normalPoints = (count: number, dimensions: number): Float64Array => {
  const root = ratio(dimensions);
  const points = new Float64Array(count * dimensions);
  for (let k = 0; k < dimensions; k++) {
    const step = root ** -(k + 1);
    // starting at a half keeps the first point from the corner
    for (let n = 0; n < count; n++) points[n * dimensions + k] = normalQuantile((0.5 + (n + 1) * step) % 1);
  }
  return points;
};
