import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxImpedance, eliminateRings, type FlatBranch } from '#physics/circuit/flat';
import { lineChain, shuntCapacitance } from '#physics/circuit/line';
import { cascade, loopImpedances, solveNetwork } from '#physics/circuit/network';
import { complex, magnitude, subtract, type Complex } from '#physics/numeric/complex';
import { solve } from '#physics/numeric/complex-matrix';
import { between, SEED } from '../support/arbitraries';

const flattened = (matrix: readonly (readonly Complex[])[]): Float64Array =>
  Float64Array.from(matrix.flatMap((row) => row.flatMap(({ re, im }) => [re, im])));

const apart = (a: Complex, b: Complex): number => magnitude(subtract(a, b)) / magnitude(b);

const FREQUENCY = 40_000;

interface Drawn {
  readonly inductance: number;
  readonly resistance: number;
  readonly capacitance: number;
  readonly tail: number;
  readonly string: number;
  readonly reversed: boolean;
  /** Coupling with the loop before it. */
  readonly coupling: number;
}

const drawn: fc.Arbitrary<readonly Drawn[]> = fc.array(
  fc.record({
    inductance: between(2e-5, 4e-4),
    resistance: between(0.05, 3),
    capacitance: between(1e-11, 1e-9),
    tail: between(0.5, 20),
    string: fc.integer({ min: 0, max: 2 }),
    reversed: fc.boolean(),
    coupling: between(-0.2, 0.2)
  }),
  { minLength: 1, maxLength: 6 }
);

/** Strings numbered from 0 without gaps, as a drawing has them. */
const numbered = (loops: readonly Drawn[]): readonly Drawn[] => {
  const order = [...new Set(loops.map(({ string }) => string))];
  return loops.map((each) => ({ ...each, string: order.indexOf(each.string) }));
};

describe('the network on flat arrays', () => {
  it('has the impedance of the network that is solved with all its currents', () => {
    fc.assert(
      fc.property(drawn, (random) => {
        const loops = numbered(random);
        const inductance = loops.map((a, i) =>
          loops.map((b, j) => {
            if (i === j) return a.inductance;
            const k = Math.abs(i - j) === 1 ? loops[Math.max(i, j)]!.coupling : 0;
            return k * Math.sqrt(a.inductance * b.inductance);
          })
        );
        const z = loopImpedances(
          loops.map(({ resistance }) => resistance),
          inductance,
          FREQUENCY
        );
        const chains = loops.map(({ capacitance, tail }) => [
          shuntCapacitance(capacitance, FREQUENCY),
          lineChain({ resistance: 0.02, inductance: 6e-7, capacitance: 5e-11 }, tail, FREQUENCY)
        ]);
        const whole = solveNetwork(z, {
          branches: loops.map(({ string, reversed }, k) => ({ chains: chains[k]!, string, reversed })),
          leadIn: []
        });
        const lean = boxImpedance(
          flattened(z),
          loops.length,
          loops.map(({ string, reversed }, k): FlatBranch => ({
            chain: cascade(chains[k]!),
            string,
            reversed
          }))
        );
        expect(apart(lean!, whole.impedance)).toBeLessThan(1e-9);
      }),
      { seed: SEED, numRuns: 200 }
    );
  });

  it('leaves a loop without current out, and has no impedance where none carries any', () => {
    const z = loopImpedances([1, 2], [[1e-4, 1e-5], [1e-5, 2e-4]], FREQUENCY); // prettier-ignore
    const chain = cascade([]);
    const branches = (first: number, second: number): FlatBranch[] => [
      { chain, string: first, reversed: false },
      { chain, string: second, reversed: false }
    ];
    expect(apart(boxImpedance(flattened(z), 2, branches(-1, 0))!, z[1]![1]!)).toBeLessThan(1e-12);
    expect(boxImpedance(flattened(z), 2, branches(-1, -1))).toBeNull();
  });
});

describe('shorted turns as closed rings', () => {
  const omega = 2 * Math.PI * FREQUENCY;
  /** A winding of two parts in series, a contact across the second; the ring's own row holds the contact. */
  const eliminated = (
    [la, lb, m]: readonly [number, number, number],
    [ra, rb]: readonly [number, number],
    contact: number
  ): Complex => {
    const z = flattened([
      [complex(ra + rb, omega * (la + lb + 2 * m)), complex(rb, omega * (lb + m))],
      [complex(rb, omega * (lb + m)), complex(rb + contact, omega * lb)]
    ]);
    eliminateRings(z, 2, 1);
    return complex(z[0]!, z[1]);
  };

  it('is what the two meshes of the parts and the contact give', () => {
    fc.assert(
      fc.property(
        fc.tuple(between(2e-5, 2e-4), between(2e-6, 1e-4), between(0.1, 0.9)),
        fc.tuple(between(0.01, 1), between(0.01, 1)),
        between(1e-3, 100),
        ([la, lb, k], resistances, contact) => {
          const m = k * Math.sqrt(la * lb);
          const [ra, rb] = resistances;
          // currents: through the first part, 1 A; through the second, x. V_second = contact·(1 − x)
          const [[second]] = solve(
            [[complex(rb + contact, omega * lb)]],
            [[complex(contact, -omega * m)]]
          ) as [[Complex]];
          const wanted = complex(
            ra - omega * m * second.im + contact * (1 - second.re),
            omega * la + omega * m * second.re - contact * second.im
          );
          expect(apart(eliminated([la, lb, m], resistances, contact), wanted)).toBeLessThan(1e-9);
        }
      ),
      { seed: SEED, numRuns: 200 }
    );
  });

  it('is the whole winding behind an endless contact, and a perfect ring L·(1 − k²) of it', () => {
    const [la, lb, m] = [6e-5, 1.5e-5, 2e-5];
    const whole = la + lb + 2 * m;
    const open = eliminated([la, lb, m], [0.1, 0.05], 1e9);
    expect(open.im / omega / whole).toBeCloseTo(1, 6);
    expect(open.re).toBeCloseTo(0.15, 6);
    const squareOfCoupling = (lb + m) ** 2 / (whole * lb);
    const perfect = eliminated([la, lb, m], [0, 0], 0);
    expect(perfect.im / omega / (whole * (1 - squareOfCoupling))).toBeCloseTo(1, 12);
    expect(perfect.re).toBeCloseTo(0, 12);
  });

  it('is the same whichever of two rings goes first', () => {
    const rows = [
      [complex(0.3, 30), complex(0.05, 6), complex(0.04, 5)],
      [complex(0.05, 6), complex(0.2, 4), complex(0, 1)],
      [complex(0.04, 5), complex(0, 1), complex(0.1, 3)]
    ];
    const order = [0, 2, 1];
    const swapped = order.map((i) => order.map((j) => rows[i]![j]!));
    const results = [rows, swapped].map((matrix) => {
      const z = flattened(matrix);
      eliminateRings(z, 3, 1);
      return complex(z[0]!, z[1]);
    });
    expect(apart(results[0]!, results[1]!)).toBeLessThan(1e-12);
  });
});
