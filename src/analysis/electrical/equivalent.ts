/**
 * A circuit at one frequency as plain numbers, for programs that solve networks: coupled coils with their losses and what
 * lies across them, uniform lines for tails and lead-in, and how all of it is wired.
 */
import type { LineConstants } from '#physics/circuit/line';
import { complex, type Complex } from '#physics/numeric/complex';
import type { Circuit, Site } from '#plan/schema';
import { solveAlone } from './alone';
import { solveCircuit } from './circuit-model';
import { cableConstants, cablesInRow, tailConstants } from './lead';
import { impedanceOf } from './loop-model';

/** Per metre of run, go and return together: Ω/m, H/m, F/m; `length` in metres. */
export interface EquivalentLine extends LineConstants {
  readonly length: number;
}

interface EquivalentLoop {
  readonly id: string;
  /** Position of its string among those in parallel; loops of a string are in series in the order of the list. */
  readonly string: number;
  readonly reversed: boolean;
  /** Across the loop's own ends, F and S. */
  readonly capacitance: number;
  readonly conductance: number;
  /** From the loop's ends to the pull box. */
  readonly tail: EquivalentLine;
}

export interface EquivalentCircuit {
  readonly id: string;
  /** Hz */
  readonly frequency: number;
  readonly loops: readonly EquivalentLoop[];
  /** Between every two loops wound as drawn, H: magnetic, with the internal part and what steel takes away. */
  readonly inductance: readonly (readonly number[])[];
  /** In series with the loops, Ω; off the diagonal what the currents of one lose in the steel of another. */
  readonly resistance: readonly (readonly number[])[];
  /** From the pull box to the terminals. */
  readonly leadIn: readonly EquivalentLine[];
  /** At the terminals, Ω: what this program makes of it. */
  readonly impedance: Complex;
}

/** `frequency` in hertz, the circuit's own where it is not given. Null if one of its loops is missing or cannot be wound. */
export const equivalentCircuit = (
  site: Site,
  circuit: Circuit,
  frequency?: number
): EquivalentCircuit | null => {
  const alone = solveAlone(site, circuit);
  if (!alone) return null;
  const { input } = alone.solved;
  const at = frequency ?? alone.solved.frequency;
  const solved = frequency === undefined ? alone.solved : solveCircuit({ ...input, frequency });
  const { temperature } = input.conditions;
  const own = input.loops.map(({ model, added }) => impedanceOf(model, at, input.conditions, added));
  const steel = input.steel?.at(at);
  const omega = 2 * Math.PI * at;
  const table = (entry: (i: number, j: number) => number): number[][] =>
    own.map((_, i) => own.map((__, j) => entry(i, j)));
  return {
    id: circuit.id,
    frequency: at,
    loops: input.loops.map(({ id, model, string, reversed, leakage }) => {
      const { turns, ground } = leakage(at);
      const { length } = alone.loops.get(id)!.loop.tail;
      return {
        id,
        string,
        reversed,
        capacitance: turns + ground.capacitance,
        conductance: ground.conductance,
        tail: { ...tailConstants(model.wire, at, temperature), length }
      };
    }),
    inductance: table(
      (i, j) => (i === j ? own[i]!.inductance : input.mutual(i, j)) + (steel ? steel[i]![j]!.re : 0)
    ),
    // jω times an inductance with a negative imaginary part: a loss
    resistance: table((i, j) => (i === j ? own[i]!.resistance : 0) - (steel ? omega * steel[i]![j]!.im : 0)),
    leadIn: cablesInRow(circuit, site).map(({ cable, length }) => ({
      ...cableConstants(cable, at, temperature),
      length
    })),
    impedance: complex(solved.resistance, omega * solved.inductance)
  };
};
