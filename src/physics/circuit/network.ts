/**
 * Several loops, coupled, on one pair of terminals.
 *
 * Each loop is a branch of the full impedance matrix Z = diag(R) + jωM. A loop's own capacitance and its tail are chain
 * matrices between the loop and the pull box: with diagonal matrices A, B, C, D of their elements the impedances seen at
 * the box are Z_box = (A·Z + B)·(C·Z + D)⁻¹. There the loops of a string are joined in series, each with its sense
 * of winding (incidence matrix S of ±1), and strings in parallel; the lead-in follows. Exact for a linear network; no
 * short cuts such as 4L or L/4. What is left out: currents that flow between circuits of different channels.
 */
import { add, complex, divide, multiply, ONE, ZERO, type Complex } from '../numeric/complex';
import { matrixOf, product, solve, type ComplexMatrix } from '../numeric/complex-matrix';
import { inputImpedance, type Chain } from './line';

export interface Branch {
  /** Between the loop and the pull box, loop first: own capacitance, then the tail. */
  readonly chains: readonly Chain[];
  readonly string: number;
  readonly reversed: boolean;
}

export interface Network {
  readonly branches: readonly Branch[];
  /** From the pull box to the terminals, in that order. */
  readonly leadIn: readonly Chain[];
}

export interface NetworkSolution {
  /** At the terminals, Ω. */
  readonly impedance: Complex;
  /** Current in each loop, in its winding sense as drawn, per ampere into the terminals. */
  readonly currents: readonly Complex[];
  /** Where the terminal resistance comes from, Ω: power over the square of the terminal current. */
  readonly losses: {
    /** Of all bare loops together. */
    readonly loops: number;
    /** Of each branch's chains, in their order. */
    readonly branches: readonly (readonly number[])[];
    /** Of each element of the lead-in. */
    readonly leadIn: readonly number[];
  };
}

/** Voltage and current at one end of a chain element. */
interface Port {
  readonly voltage: Complex;
  readonly current: Complex;
}

const powerAt = ({ voltage, current }: Port): number => voltage.re * current.re + voltage.im * current.im;

/** From the far end through each element: what each takes, and the near end. */
const walk = (chains: readonly Chain[], far: Port): { readonly losses: number[]; readonly near: Port } => {
  let port = far;
  const losses = chains.map(({ a, b, c, d }) => {
    const near = {
      voltage: add(multiply(a, port.voltage), multiply(b, port.current)),
      current: add(multiply(c, port.voltage), multiply(d, port.current))
    };
    const loss = powerAt(near) - powerAt(port);
    port = near;
    return loss;
  });
  return { losses, near: port };
};

/** Several chain elements as one; the first is nearest to the load. */
export const cascade = (chains: readonly Chain[]): Chain =>
  chains.reduce(
    (inner, outer) => ({
      a: add(multiply(outer.a, inner.a), multiply(outer.b, inner.c)),
      b: add(multiply(outer.a, inner.b), multiply(outer.b, inner.d)),
      c: add(multiply(outer.c, inner.a), multiply(outer.d, inner.c)),
      d: add(multiply(outer.c, inner.b), multiply(outer.d, inner.d))
    }),
    { a: ONE, b: ZERO, c: ZERO, d: ONE }
  );

/** `loops` is the impedance matrix of the bare loops as drawn, Ω, in the order of the branches. */
export const solveNetwork = (loops: ComplexMatrix, network: Network): NetworkSolution => {
  const { branches } = network;
  const size = branches.length;
  const chains = branches.map((branch) => cascade(branch.chains));
  const onDiagonal = (i: number, j: number, value: Complex) => (i === j ? value : ZERO);
  const top = matrixOf(size, size, (i, j) =>
    add(multiply(chains[i]!.a, loops[i]![j]!), onDiagonal(i, j, chains[i]!.b))
  );
  const bottom = matrixOf(size, size, (i, j) =>
    add(multiply(chains[i]!.c, loops[i]![j]!), onDiagonal(i, j, chains[i]!.d))
  );
  const strings = 1 + Math.max(...branches.map((branch) => branch.string));
  const incidence = matrixOf(size, strings, (i, s) =>
    branches[i]!.string === s ? complex(branches[i]!.reversed ? -1 : 1) : ZERO
  );
  // loop currents that give each string one ampere: I = (C·Z + D)⁻¹·S, and the voltages at the box (A·Z + B)·I
  const perString = solve(bottom, incidence);
  const voltages = product(top, perString);
  const stringImpedance = matrixOf(strings, strings, (s, t) =>
    voltages.reduce((sum, row, i) => add(sum, multiply(incidence[i]![s]!, row[t]!)), ZERO)
  );
  const shares = solve(
    stringImpedance,
    matrixOf(strings, 1, () => ONE)
  ).map((row) => row[0]!);
  const total = shares.reduce(add, ZERO);
  const atBox = divide(ONE, total);
  const leadIn = cascade(network.leadIn);
  // one ampere into the terminals leaves 1/(C·Z + D) amperes at the far end of the lead-in
  const delivered = divide(ONE, add(multiply(leadIn.c, atBox), leadIn.d));
  const currents = perString.map((row) =>
    multiply(
      delivered,
      row.reduce((sum, value, s) => add(sum, multiply(value, divide(shares[s]!, total))), ZERO)
    )
  );
  const ports = loops.map((row, i) => ({
    voltage: row.reduce((sum, value, j) => add(sum, multiply(value, currents[j]!)), ZERO),
    current: currents[i]!
  }));
  const boxPort = { voltage: multiply(delivered, atBox), current: delivered };
  return {
    impedance: inputImpedance(leadIn, atBox),
    currents,
    losses: {
      loops: ports.reduce((sum, port) => sum + powerAt(port), 0),
      branches: branches.map((branch, i) => walk(branch.chains, ports[i]!).losses),
      leadIn: walk(network.leadIn, boxPort).losses
    }
  };
};

/** Apparent inductance, series resistance and quality factor of an impedance at `frequency`. */
export const terminalFigures = (
  impedance: Complex,
  frequency: number
): { readonly inductance: number; readonly resistance: number; readonly q: number } => ({
  inductance: impedance.im / (2 * Math.PI * frequency),
  resistance: impedance.re,
  q: impedance.im / impedance.re
});

/** diag(R) + jω·L, Ω: `inductance` in henries, row by row; a loss in it has a negative imaginary part. */
export const loopImpedances = (
  resistance: readonly number[],
  inductance: readonly (readonly (number | Complex)[])[],
  frequency: number
): Complex[][] =>
  matrixOf(resistance.length, resistance.length, (i, j) => {
    const value = inductance[i]![j]!;
    const henries = typeof value === 'number' ? complex(value) : value;
    return add(multiply(complex(0, 2 * Math.PI * frequency), henries), complex(i === j ? resistance[i]! : 0));
  });
