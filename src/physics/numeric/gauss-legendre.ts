/** Nodes and weights of Gauss–Legendre quadrature on [−1, 1], by Newton's method on the Legendre recurrence. */
export interface Rule {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

const rules = new Map<number, Rule>();

const legendre = (n: number, x: number): { value: number; slope: number } => {
  let previous = 1;
  let value = x;
  for (let k = 2; k <= n; k++) {
    const next = ((2 * k - 1) * x * value - (k - 1) * previous) / k;
    previous = value;
    value = next;
  }
  return { value, slope: (n * (x * value - previous)) / (x * x - 1) };
};

export const gaussLegendre = (n: number): Rule => {
  const known = rules.get(n);
  if (known) return known;
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let k = 0; k < n; k++) {
    let x = -Math.cos((Math.PI * (k + 0.75)) / (n + 0.5));
    for (let step = 0; step < 100; step++) {
      const { value, slope } = legendre(n, x);
      const next = x - value / slope;
      const settled = Math.abs(next - x) < 1e-15;
      x = next;
      if (settled) break;
    }
    const { slope } = legendre(n, x);
    nodes.push(x);
    weights.push(2 / ((1 - x * x) * slope * slope));
  }
  const rule = { nodes, weights };
  rules.set(n, rule);
  return rule;
};
