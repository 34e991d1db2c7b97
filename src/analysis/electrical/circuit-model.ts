/** One circuit, solved at its operating frequency, and again with whatever a vehicle changes in its loops. */
import { oscillatorFrequency } from '#physics/coupling/beat';
import { shuntCapacitance, type Chain } from '#physics/circuit/line';
import {
  loopImpedances,
  solveNetwork,
  terminalFigures,
  type Branch,
  type NetworkSolution
} from '#physics/circuit/network';
import type { CircuitReadout } from '../results';
import { impedanceOf, type LoopImpedance, type LoopModel } from './loop-model';

/** What the solver needs of a loop in a circuit. */
interface CircuitLoop {
  readonly id: string;
  readonly model: LoopModel;
  readonly string: number;
  readonly reversed: boolean;
  readonly capacitance: number;
  readonly tail: (frequency: number) => Chain;
}

export interface CircuitInput {
  readonly id: string;
  readonly loops: readonly CircuitLoop[];
  /** External mutual inductance of two of its loops, H, as drawn. */
  readonly mutual: (i: number, j: number) => number;
  readonly leadIn: (frequency: number) => readonly Chain[];
  readonly temperature: number;
  /** Given frequency in Hz, or the setting's capacitance in F, or neither. */
  readonly frequency: number | null;
  readonly setting: number | null;
}

export interface SolvedCircuit {
  readonly input: CircuitInput;
  readonly frequency: number;
  readonly frequencyFrom: CircuitReadout['frequencyFrom'];
  readonly inductance: number;
  readonly resistance: number;
  readonly q: number;
  readonly loops: readonly LoopImpedance[];
  /** Current of each loop per terminal ampere, real part, in its winding sense as drawn. */
  readonly shares: readonly number[];
  /** ∂L/∂L_ij at the terminals: the product of the loops' currents, real part. First order in ΔL. */
  readonly weights: readonly (readonly number[])[];
  /** Terminal inductance, H, with ΔL (H) added to the loops' matrix; exact. */
  readonly inductanceWith: (change: (i: number, j: number) => number) => number;
}

/** A loop in no circuit, and a circuit without a unit, is reported here. */
export const ASSUMED_FREQUENCY = 50_000;

export const solveCircuit = (input: CircuitInput): SolvedCircuit => {
  const at = (frequency: number) => {
    const loops = input.loops.map(({ model }) => impedanceOf(model, frequency, input.temperature));
    const branches: Branch[] = input.loops.map(({ string, reversed, capacitance, tail }) => ({
      chains: [shuntCapacitance(capacitance, frequency), tail(frequency)],
      string,
      reversed
    }));
    const leadIn = input.leadIn(frequency);
    const base = input.loops.map((_, i) =>
      input.loops.map((_, j) => (i === j ? loops[i]!.inductance : input.mutual(i, j)))
    );
    const resistances = loops.map(({ resistance }) => resistance);
    const solve = (change: (i: number, j: number) => number): NetworkSolution =>
      solveNetwork(
        loopImpedances(
          resistances,
          base.map((row, i) => row.map((value, j) => value + change(i, j))),
          frequency
        ),
        { branches, leadIn }
      );
    const rest = solve(() => 0);
    return { loops, rest, figures: terminalFigures(rest.impedance, frequency), solve };
  };

  const { frequency, from } = operatingFrequency(input, (f) => at(f).figures);
  const { loops, rest, figures, solve } = at(frequency);
  return {
    input,
    frequency,
    frequencyFrom: from,
    ...figures,
    loops,
    shares: rest.currents.map(({ re }) => re),
    weights: rest.currents.map((a) => rest.currents.map((b) => a.re * b.re - a.im * b.im)),
    inductanceWith: (change) => terminalFigures(solve(change).impedance, frequency).inductance
  };
};

/** The oscillator settles where f = 1/(2π√(L(f)·C)): L changes little with f, a few substitutions suffice. */
const operatingFrequency = (
  { frequency, setting }: CircuitInput,
  figuresAt: (frequency: number) => { readonly inductance: number; readonly q: number }
): { frequency: number; from: CircuitReadout['frequencyFrom'] } => {
  if (frequency !== null) return { frequency, from: 'given' };
  if (setting === null) return { frequency: ASSUMED_FREQUENCY, from: 'assumed' };
  let f = ASSUMED_FREQUENCY;
  for (let step = 0; step < 40; step++) {
    const { inductance, q } = figuresAt(f);
    const next = oscillatorFrequency(inductance, setting, q);
    // a lead-in so long that the terminals look capacitive has no such frequency
    if (!Number.isFinite(next) || inductance <= 0) return { frequency: ASSUMED_FREQUENCY, from: 'assumed' };
    if (Math.abs(next - f) < 1e-9 * f) return { frequency: next, from: 'setting' };
    f = next;
  }
  return { frequency: f, from: 'setting' };
};
