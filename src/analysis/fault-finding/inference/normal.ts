/** The normal distribution, and sums of probabilities that are kept as logarithms. */

export const LOG_TWO_PI = 1.8378770664093453;
const HALF_LOG_TWO_PI = LOG_TWO_PI / 2;
const SERIES_UP_TO = 3;
const MOST_TERMS = 200;

export const logDensity = (value: number, mean: number, deviation: number): number => {
  const off = (value - mean) / deviation;
  return -0.5 * off * off - Math.log(deviation) - HALF_LOG_TWO_PI;
};

/** Laplace's continued fraction of Mills' ratio (1 − Φ(x))/φ(x), for x well above nought. */
const millsRatio = (x: number): number => {
  let below = x;
  for (let k = 60; k > 0; k--) below = x + k / below;
  return 1 / below;
};

/** Φ(x): Σ x^(2k+1)/(1·3·5…(2k+1)) times the density near the middle (Abramowitz and Stegun 26.2.11), Mills' ratio in the tails. */
export const normalShare = (x: number): number => {
  const density = Math.exp(-0.5 * x * x - HALF_LOG_TWO_PI);
  if (Math.abs(x) > SERIES_UP_TO) {
    const tail = density * millsRatio(Math.abs(x));
    return x > 0 ? 1 - tail : tail;
  }
  let term = x;
  let sum = x;
  for (let k = 1; k < MOST_TERMS && Math.abs(term) > 1e-17 * Math.abs(sum); k++) {
    term *= (x * x) / (2 * k + 1);
    sum += term;
  }
  return 0.5 + density * sum;
};

/** ln Φ(x), also where Φ itself is next to nothing. */
export const logNormalShare = (x: number): number =>
  x < -SERIES_UP_TO ? -0.5 * x * x - HALF_LOG_TWO_PI + Math.log(millsRatio(-x)) : Math.log(normalShare(x));

/** ln Σ exp(values). */
export const logSum = (values: readonly number[]): number => {
  const most = values.reduce((a, b) => Math.max(a, b), -Infinity);
  if (most === -Infinity) return -Infinity;
  return most + Math.log(values.reduce((sum, value) => sum + Math.exp(value - most), 0));
};
