/** Limits of a whole circuit [C]: coupling, lead-in and capacitance let go to nothing, each as fast as its first order says. */
import { describe, expect, it } from 'vitest';
import { lineChain, shuntCapacitance } from '#physics/circuit/line';
import { loopImpedances, solveNetwork } from '#physics/circuit/network';
import { complex, magnitude, subtract, type Complex } from '#physics/numeric/complex';

const F = 5e4;
const LOOP = { resistance: 0.3, inductance: 7.5e-5, capacitance: 5e-10 };
const CABLE = { resistance: 0.03, inductance: 6.7e-7, capacitance: 8e-11 };

interface Share {
  readonly coupling?: number;
  readonly cable?: number;
  readonly capacitance?: number;
}

/** Four equal loops in strings of the given lengths; each part as a share of its usual size. */
const terminals = (
  strings: readonly number[],
  { coupling = 0, cable = 0, capacitance = 0 }: Share
): Complex => {
  const places = strings.flatMap((count, string) => Array.from({ length: count }, () => string));
  const mutual = -0.06 * LOOP.inductance * coupling;
  const { impedance } = solveNetwork(
    loopImpedances(
      places.map(() => LOOP.resistance),
      places.map((_, i) => places.map((__, j) => (i === j ? LOOP.inductance : mutual))),
      F
    ),
    {
      branches: places.map((string) => ({
        chains: [shuntCapacitance(capacitance * LOOP.capacitance, F), lineChain(CABLE, cable * 5, F)],
        string,
        reversed: false
      })),
      leadIn: [lineChain(CABLE, cable * 60, F)]
    }
  );
  return impedance;
};

const WIRINGS = [
  ['in series: 4L', [4], 4],
  ['in parallel: L/4', [1, 1, 1, 1], 1 / 4],
  ['series-parallel: L', [2, 2], 1]
] as const;

describe.each(WIRINGS)('four equal loops %s', (_, strings, factor) => {
  const limit = complex(factor * LOOP.resistance, 2 * Math.PI * F * factor * LOOP.inductance);
  const off = (share: Share): number => magnitude(subtract(terminals(strings, share), limit));

  it('with neither coupling nor cable nor capacitance', () => {
    expect(off({})).toBeLessThan(1e-12 * magnitude(limit));
  });

  it.each(['coupling', 'cable', 'capacitance'] as const)('as the %s goes to nothing', (part) => {
    const errors = [1e-3, 1e-4, 1e-5].map((share) => off({ [part]: share }));
    expect(errors[0]!).toBeGreaterThan(0);
    expect(errors[1]! / errors[0]!).toBeCloseTo(0.1, 3);
    expect(errors[2]! / errors[1]!).toBeCloseTo(0.1, 3);
  });
});
