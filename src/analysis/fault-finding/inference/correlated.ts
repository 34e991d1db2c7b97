/**
 * How likely a set of figures is whose errors hang together: a normal distribution with a covariance, of which each figure
 * may with a small probability be something else altogether (mistyped, a bad contact, another terminal).
 *
 * With P the inverse of the covariance and r what is off, some figures S given all others are normal with the precision
 * P_SS, and lie off by P_SS⁻¹·(P·r)_S; so the likelihood without them is that of all divided by theirs. Every single slip is
 * counted exactly; two at once where one of them is the likeliest single one. More are not: then another cause is meant.
 */
import { choleskyFactor, forwardSubstitute, type CholeskyFactor } from '#physics/numeric/cholesky';
import { LOG_TWO_PI } from './normal';

/** Of each figure. */
export interface Slip {
  /** Probability that it is none of the circuit's. */
  readonly share: number;
  /** Logarithm of its density where it is. */
  readonly logDensity: number;
}

export interface CorrelatedFit {
  /** With slips. */
  readonly logLikelihood: number;
  /** Without: what leads a search, since it has no flat parts. */
  readonly logNormal: number;
  /** Squared, in standard deviations. */
  readonly misfit: number;
  /** Of the covariance; null for no figures. */
  readonly factor: CholeskyFactor | null;
}

const IMPOSSIBLE: CorrelatedFit = {
  logLikelihood: -Infinity,
  logNormal: -Infinity,
  misfit: Infinity,
  factor: null
};

/** Of a lower triangle, row by row in full. */
const inverseOf = ({ size, lower }: CholeskyFactor): Float64Array => {
  const inverse = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let k = i; k < size; k++) {
      const row = (k * (k + 1)) / 2;
      let sum = k === i ? 1 : 0;
      for (let j = i; j < k; j++) sum -= lower[row + j]! * inverse[j * size + i]!;
      inverse[k * size + i] = sum / lower[row + k]!;
    }
  }
  return inverse;
};

/** P_ij. */
const precision = (inverse: Float64Array, size: number, i: number, j: number): number => {
  let sum = 0;
  for (let k = Math.max(i, j); k < size; k++) sum += inverse[k * size + i]! * inverse[k * size + j]!;
  return sum;
};

/** ln Σ exp, of the first `count`. */
const logSumOf = (values: Float64Array, count: number): number => {
  let most = -Infinity;
  for (let k = 0; k < count; k++) most = Math.max(most, values[k]!);
  let sum = 0;
  for (let k = 0; k < count; k++) sum += Math.exp(values[k]! - most);
  return most + Math.log(sum);
};

/**
 * Own standard deviations. Further out a figure is a slip whatever the others say, and squares of much more would swallow
 * what tells one cause from another.
 */
const FARTHEST = 1e4;

const within = (off: readonly number[], covariance: Float64Array): Float64Array =>
  Float64Array.from(off, (each, k) => {
    const most = FARTHEST * Math.sqrt(covariance[k * (off.length + 1)]!);
    return Math.min(most, Math.max(-most, each));
  });

/** `off`: what was read less what was predicted; `covariance` row by row. Minus infinity where it is none. */
export const correlatedFit = (
  off: readonly number[],
  covariance: Float64Array,
  slips: readonly Slip[]
): CorrelatedFit => {
  const size = off.length;
  if (size === 0) return { logLikelihood: 0, logNormal: 0, misfit: 0, factor: null };
  const factor = choleskyFactor(covariance, size);
  if (!factor) return IMPOSSIBLE;
  const whitened = forwardSubstitute(factor, within(off, covariance));
  let [logNormal, misfit, rights] = [-0.5 * size * LOG_TWO_PI, 0, 0];
  for (let i = 0; i < size; i++) {
    misfit += whitened[i]! * whitened[i]!;
    logNormal -= Math.log(factor.lower[(i * (i + 1)) / 2 + i]!);
    rights += Math.log1p(-slips[i]!.share);
  }
  logNormal -= misfit / 2;

  const inverse = inverseOf(factor);
  const own = new Float64Array(size);
  const pulled = new Float64Array(size);
  /** By how much likelier a slip alone makes the figure; without what its place among the others says. */
  const slipped = new Float64Array(size);
  const terms = new Float64Array(2 * size);
  let worst = 0;
  for (let i = 0; i < size; i++) {
    own[i] = precision(inverse, size, i, i);
    for (let k = i; k < size; k++) pulled[i]! += inverse[k * size + i]! * whitened[k]!;
    slipped[i] = Math.log(slips[i]!.share / (1 - slips[i]!.share)) + slips[i]!.logDensity;
    const logConditional = 0.5 * (Math.log(own[i]!) - LOG_TWO_PI - (pulled[i]! * pulled[i]!) / own[i]!);
    terms[i + 1] = slipped[i]! - logConditional;
    if (terms[i + 1]! > terms[worst + 1]!) worst = i;
  }
  let count = size + 1;
  // where no single slip gains anything, two gain nothing
  if (size > 2 && terms[worst + 1]! > 0) {
    for (let i = 0; i < size; i++) {
      if (i === worst) continue;
      const [a, b, c] = [own[worst]!, precision(inverse, size, worst, i), own[i]!];
      const determinant = a * c - b * b;
      const [x, y] = [pulled[worst]!, pulled[i]!];
      const quadratic = (c * x * x - 2 * b * x * y + a * y * y) / determinant;
      const logConditional = 0.5 * (Math.log(determinant) - quadratic) - LOG_TWO_PI;
      terms[count++] = slipped[worst]! + slipped[i]! - logConditional;
    }
  }
  return {
    logLikelihood: rights + logNormal + logSumOf(terms, count),
    logNormal: rights + logNormal,
    misfit,
    factor
  };
};
