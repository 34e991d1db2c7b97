/**
 * Interpolation of a smooth function between Chebyshev nodes (Berrut & Trefethen 2004, barycentric formula): the error falls
 * geometrically with their number.
 */
export interface Interpolation {
  readonly nodes: Float64Array;
  /** Weight of node k for target p at p·nodes.length + k. */
  readonly weights: Float64Array;
}

/** From `count` nodes on [low, high] to the targets inside. */
export const chebyshevTo = (
  targets: ArrayLike<number>,
  low: number,
  high: number,
  count: number
): Interpolation => {
  const angle = (k: number): number => ((2 * k + 1) * Math.PI) / (2 * count);
  const nodes = Float64Array.from(
    { length: count },
    (_, k) => (low + high) / 2 + ((high - low) / 2) * Math.cos(angle(k))
  );
  const factors = Array.from({ length: count }, (_, k) => (k % 2 === 0 ? 1 : -1) * Math.sin(angle(k)));
  const weights = new Float64Array(targets.length * count);
  for (let p = 0; p < targets.length; p++) {
    const hit = nodes.findIndex((node) => Math.abs(node - targets[p]!) < 1e-14 * (high - low));
    const terms = factors.map((factor, k) =>
      hit >= 0 ? (k === hit ? 1 : 0) : factor / (targets[p]! - nodes[k]!)
    );
    const sum = terms.reduce((total, term) => total + term, 0);
    terms.forEach((term, k) => (weights[p * count + k] = term / sum));
  }
  return { nodes, weights };
};
