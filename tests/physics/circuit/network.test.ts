import { describe, expect, it } from 'vitest';
import { inputImpedance, lineChain, shuntCapacitance, type Chain } from '#physics/circuit/line';
import {
  loopImpedances,
  solveNetwork,
  terminalFigures,
  type Network,
  type NetworkSolution
} from '#physics/circuit/network';
import { complex, magnitude, subtract } from '#physics/numeric/complex';
import { referenceOf, relativeError } from '../support/reference';

interface LineCase {
  readonly resistancePerMetre: number;
  readonly inductancePerMetre: number;
  readonly capacitancePerMetre: number;
  readonly length: number;
}

interface NetworkCase {
  readonly name: string;
  readonly frequency: number;
  readonly loops: readonly {
    readonly resistance: number;
    readonly inductance: number;
    readonly capacitance: number;
    readonly tail: LineCase;
  }[];
  readonly mutuals: readonly (readonly [number, number, number])[];
  readonly strings: readonly (readonly { readonly loop: number; readonly reversed: boolean }[])[];
  readonly leadIn: LineCase;
  readonly impedance: readonly [number, number];
  readonly inductance_H: number;
  readonly resistance_ohm: number;
  readonly q: number;
}

const { cases, tolerance, generator } = referenceOf<NetworkCase>('lines');

const chainOf = (line: LineCase, frequency: number): Chain =>
  lineChain(
    {
      resistance: line.resistancePerMetre,
      inductance: line.inductancePerMetre,
      capacitance: line.capacitancePerMetre
    },
    line.length,
    frequency
  );

const solved = ({ frequency, loops, mutuals, strings, leadIn }: NetworkCase): NetworkSolution => {
  const order = strings.flatMap((string, index) => string.map((each) => ({ ...each, string: index })));
  const mutual = (i: number, j: number): number =>
    mutuals.find(([a, b]) => (a === i && b === j) || (a === j && b === i))?.[2] ?? 0;
  const inductance = order.map((a) =>
    order.map((b) => (a.loop === b.loop ? loops[a.loop]!.inductance : mutual(a.loop, b.loop)))
  );
  return solveNetwork(
    loopImpedances(
      order.map(({ loop }) => loops[loop]!.resistance),
      inductance,
      frequency
    ),
    {
      branches: order.map(({ loop, string, reversed }) => ({
        chains: [
          shuntCapacitance(loops[loop]!.capacitance, frequency),
          chainOf(loops[loop]!.tail, frequency)
        ],
        string,
        reversed
      })),
      leadIn: [chainOf(leadIn, frequency)]
    }
  );
};

describe(`circuits (${generator})`, () => {
  it.each(cases)('$name at $frequency Hz', (row) => {
    const { impedance } = solved(row);
    const [re, im] = row.impedance;
    expect(magnitude(subtract(impedance, complex(re, im)))).toBeLessThan(tolerance * Math.hypot(re, im));
    const figures = terminalFigures(impedance, row.frequency);
    const ofResistance = tolerance * (1 + Math.abs(im / re));
    expect(relativeError(figures.inductance, row.inductance_H)).toBeLessThan(
      tolerance * (1 + Math.abs(re / im))
    );
    expect(Math.abs(figures.resistance - re)).toBeLessThan(ofResistance * Math.abs(re));
    expect(relativeError(figures.q, row.q)).toBeLessThan(2 * ofResistance + tolerance);
  });
});

const F = 5e4;
const EQUAL = { resistance: 0.3, inductance: 7.5e-5 };

/** Strings of equal loops, all directly on the terminals; `mutual` between every two. */
const plain = (lengths: readonly number[], mutual = 0, reversed: readonly number[] = []): NetworkSolution => {
  const strings = lengths.flatMap((length, string) => Array.from({ length }, () => string));
  const network: Network = {
    branches: strings.map((string, k) => ({ chains: [], string, reversed: reversed.includes(k) })),
    leadIn: []
  };
  const inductance = strings.map((_, i) => strings.map((__, j) => (i === j ? EQUAL.inductance : mutual)));
  return solveNetwork(
    loopImpedances(
      strings.map(() => EQUAL.resistance),
      inductance,
      F
    ),
    network
  );
};
const inductanceOf = (solution: NetworkSolution): number => terminalFigures(solution.impedance, F).inductance;

describe('four equal loops with the coupling switched off', () => {
  it.each([
    ['in series', [4], 4],
    ['in parallel', [1, 1, 1, 1], 1 / 4],
    ['series-parallel', [2, 2], 1]
  ] as const)('%s', (_, strings, factor) => {
    const { inductance, resistance } = terminalFigures(plain(strings).impedance, F);
    expect(relativeError(inductance, factor * EQUAL.inductance)).toBeLessThan(1e-12);
    expect(relativeError(resistance, factor * EQUAL.resistance)).toBeLessThan(1e-12);
  });
});

describe('two coupled loops', () => {
  const M = 5e-6;

  it('in series have 2L + 2M, and 2L − 2M with one reversed', () => {
    expect(relativeError(inductanceOf(plain([2], M)), 2 * EQUAL.inductance + 2 * M)).toBeLessThan(1e-12);
    expect(relativeError(inductanceOf(plain([2], M, [1])), 2 * EQUAL.inductance - 2 * M)).toBeLessThan(1e-12);
    expect(relativeError(inductanceOf(plain([2], M, [0, 1])), 2 * EQUAL.inductance + 2 * M)).toBeLessThan(
      1e-12
    );
  });

  it('in parallel have (L + M)/2, and (L − M)/2 with one reversed', () => {
    expect(relativeError(inductanceOf(plain([1, 1], M)), (EQUAL.inductance + M) / 2)).toBeLessThan(1e-12);
    expect(relativeError(inductanceOf(plain([1, 1], M, [0])), (EQUAL.inductance - M) / 2)).toBeLessThan(
      1e-12
    );
  });

  it('carry the current that their wiring gives them, with the sign of their sense', () => {
    const series = plain([2], M, [1]).currents;
    expect(series[0]!.re).toBeCloseTo(1, 12);
    expect(series[1]!.re).toBeCloseTo(-1, 12);
    plain([1, 1], M).currents.forEach(({ re }) => expect(re).toBeCloseTo(0.5, 12));
  });
});

it('elements one behind the other act in turn, the nearest to the loop first', () => {
  const line = { resistance: 0.03, inductance: 7e-7, capacitance: 9e-11 };
  const chains = [
    shuntCapacitance(3e-9, F),
    lineChain(line, 120, F),
    shuntCapacitance(5e-9, F),
    lineChain(line, 300, F)
  ];
  const load = complex(0.3, 2 * Math.PI * F * 7.5e-5);
  const wanted = chains.reduce((seen, chain) => inputImpedance(chain, seen), load);
  const loops = loopImpedances([0.3], [[7.5e-5]], F);
  for (const split of [0, 2, 4]) {
    const { impedance } = solveNetwork(loops, {
      branches: [{ chains: chains.slice(0, split), string: 0, reversed: false }],
      leadIn: chains.slice(split)
    });
    expect(magnitude(subtract(impedance, wanted))).toBeLessThan(1e-12 * magnitude(wanted));
  }
});

it('figures at the terminals: L = Im Z/ω, R = Re Z, Q = Im Z/Re Z', () => {
  const { inductance, resistance, q } = terminalFigures(complex(0.5, 20), F);
  expect(inductance).toBeCloseTo(20 / (2 * Math.PI * F), 15);
  expect(resistance).toBe(0.5);
  expect(q).toBe(40);
});
