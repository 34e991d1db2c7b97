import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineChain, shuntCapacitance } from '#physics/circuit/line';
import { loopImpedances, solveNetwork, type Network, type NetworkSolution } from '#physics/circuit/network';
import { magnitude, subtract } from '#physics/numeric/complex';
import { between, SEED } from '../support/arbitraries';

const F = 5e4;

describe('currents', () => {
  it('give ∂Z/∂Z_ij at the terminals as their product: what a change of one loop does to the whole', () => {
    fc.assert(
      fc.property(
        fc.array(between(-4e-6, 4e-6), { minLength: 6, maxLength: 6 }),
        fc.array(between(2e-5, 3e-4), { minLength: 4, maxLength: 4 }),
        fc.constantFrom([0, 0, 1, 1], [0, 1, 1, 1], [0, 0, 0, 0], [0, 1, 2, 3]),
        fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
        (mutuals, own, strings, senses) => {
          const at = (i: number, j: number): number => {
            if (i === j) return own[i]!;
            const [a, b] = [Math.min(i, j), Math.max(i, j)];
            return mutuals[a === 0 ? b - 1 : a + b]!;
          };
          const change = 1e-9;
          const network: Network = {
            branches: strings.map((string, k) => ({
              chains: [
                shuntCapacitance(1e-9, F),
                lineChain({ resistance: 0.03, inductance: 7e-7, capacitance: 5e-11 }, 5 + k, F)
              ],
              string,
              reversed: senses[k]!
            })),
            leadIn: [lineChain({ resistance: 0.03, inductance: 7e-7, capacitance: 8e-11 }, 80, F)]
          };
          const solve = (extra: (i: number, j: number) => number): NetworkSolution =>
            solveNetwork(
              loopImpedances(
                [0.3, 0.4, 0.2, 0.5],
                own.map((_, i) => own.map((__, j) => at(i, j) + extra(i, j))),
                F
              ),
              network
            );
          const rest = solve(() => 0);
          for (const [i, j] of [
            [0, 0],
            [2, 2],
            [1, 3]
          ] as const) {
            const with1 = solve((a, b) => ((a === i && b === j) || (a === j && b === i) ? change : 0));
            const found = (with1.impedance.im - rest.impedance.im) / (2 * Math.PI * F * change);
            const [a, b] = [rest.currents[i]!, rest.currents[j]!];
            const wanted = (a.re * b.re - a.im * b.im) * (i === j ? 1 : 2);
            expect(Math.abs(found - wanted)).toBeLessThan(1e-3);
          }
        }
      ),
      { seed: SEED, numRuns: 40 }
    );
  });

  it('do not depend on the order in which the loops are named', () => {
    const inductance = [
      [7e-5, 2e-6, -1e-6],
      [2e-6, 9e-5, 3e-6],
      [-1e-6, 3e-6, 5e-5]
    ];
    const solve = (order: readonly number[]): NetworkSolution =>
      solveNetwork(
        loopImpedances(
          order.map((k) => 0.2 + 0.1 * k),
          order.map((i) => order.map((j) => inductance[i]![j]!)),
          F
        ),
        {
          branches: order.map((k) => ({ chains: [], string: k === 2 ? 1 : 0, reversed: k === 1 })),
          leadIn: []
        }
      );
    const one = solve([0, 1, 2]);
    const other = solve([2, 0, 1]);
    expect(magnitude(subtract(one.impedance, other.impedance))).toBeLessThan(
      1e-12 * magnitude(one.impedance)
    );
    [0, 1, 2].forEach((loop) =>
      expect(magnitude(subtract(one.currents[loop]!, other.currents[[1, 2, 0][loop]!]!))).toBeLessThan(1e-12)
    );
  });
});
