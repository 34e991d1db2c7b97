import { describe, expect, it } from 'vitest';
import { gaussLegendre } from '#physics/numeric/gauss-legendre';

describe('Gauss–Legendre rules', () => {
  it('have the two and three points of the textbook', () => {
    const [a, b] = gaussLegendre(2).nodes;
    expect(a).toBeCloseTo(-1 / Math.sqrt(3), 14);
    expect(b).toBeCloseTo(1 / Math.sqrt(3), 14);
    const three = gaussLegendre(3);
    [-Math.sqrt(0.6), 0, Math.sqrt(0.6)].forEach((x, k) => expect(three.nodes[k]).toBeCloseTo(x, 14));
    [5 / 9, 8 / 9, 5 / 9].forEach((w, k) => expect(three.weights[k]).toBeCloseTo(w, 14));
  });

  it.each([1, 2, 3, 4, 5, 8, 12, 20])('of %i points is exact for every power below twice as many', (n) => {
    const { nodes, weights } = gaussLegendre(n);
    for (let power = 0; power < 2 * n; power++) {
      const found = nodes.reduce((sum, x, k) => sum + weights[k]! * x ** power, 0);
      expect(found).toBeCloseTo(power % 2 === 0 ? 2 / (power + 1) : 0, 12);
    }
  });

  it('of n points is not exact for the power 2n', () => {
    for (const n of [1, 2, 4]) {
      const { nodes, weights } = gaussLegendre(n);
      const found = nodes.reduce((sum, x, k) => sum + weights[k]! * x ** (2 * n), 0);
      expect(Math.abs(found - 2 / (2 * n + 1))).toBeGreaterThan(1e-3);
    }
  });
});
