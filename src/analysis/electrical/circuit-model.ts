/** One circuit, solved at its operating frequency, and again with whatever a vehicle changes in its loops. */
import { oscillatorFrequency } from '#physics/coupling/beat';
import { shuntCapacitance, THROUGH, type Chain } from '#physics/circuit/line';
import {
  loopImpedances,
  solveNetwork,
  terminalFigures,
  type Branch,
  type Network,
  type NetworkSolution
} from '#physics/circuit/network';
import type { WindingLeakage } from '#physics/circuit/slot-capacitance';
import type { Dipoles } from '#physics/field/dipoles';
import { add, complex, type Complex } from '#physics/numeric/complex';
import type { ComplexMatrix } from '#physics/numeric/complex-matrix';
import type { Steel } from '#plan/schema';
import { LOSS_CAUSES, type CircuitReadout, type LossCause, type LossShare } from '../results';
import {
  impedanceOf,
  type Conditions,
  type LoopImpedance,
  type LoopModel,
  type LoopResistances
} from './loop-model';

/** What the solver needs of a loop in a circuit. */
interface CircuitLoop {
  readonly id: string;
  readonly model: LoopModel;
  readonly string: number;
  readonly reversed: boolean;
  /** The user's own series resistance, Ω. */
  readonly added: number;
  readonly leakage: (frequency: number) => WindingLeakage;
  readonly tail: (frequency: number) => Chain;
}

/** What steel adds to the inductances of a circuit's loops at a frequency, H; the imaginary part is its loss. */
export interface SteelMatrix {
  at(frequency: number): ComplexMatrix;
  /** The currents that each loop drives in the steel, as dipoles; null for a loop with no steel near it. */
  dipolesAt(frequency: number): readonly (Dipoles | null)[];
  readonly pieces: readonly SteelPiece[];
}

/** A piece of steel near the loops. */
export interface SteelPiece {
  readonly steel: Steel;
  /** Of each loop, the share of its wire that runs over the piece. */
  readonly covers: readonly number[];
}

export interface CircuitInput {
  readonly id: string;
  readonly loops: readonly CircuitLoop[];
  /** External mutual inductance of two of its loops, H, as drawn. */
  readonly mutual: (i: number, j: number) => number;
  readonly steel: SteelMatrix | null;
  readonly leadIn: (frequency: number) => readonly Chain[];
  readonly conditions: Conditions;
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
  readonly inductanceWith: (change: (i: number, j: number) => number | Complex) => number;
  /** The steel near its loops, and the currents that each of them drives in it. */
  readonly steel: {
    readonly pieces: readonly SteelPiece[];
    readonly dipoles: () => readonly (Dipoles | null)[];
  } | null;
  /** What steel adds to each loop's own inductance, H. */
  readonly steelOf: (loop: number) => Complex;
  /** The causes of the terminal resistance, which is their sum. */
  readonly losses: () => readonly LossShare[];
  /** Terminal inductance, H, if nothing had capacitance. */
  readonly magneticInductance: () => number;
}

/** A loop in no circuit, and a circuit without a unit, is reported here. */
export const ASSUMED_FREQUENCY = 50_000;

const NO_CHANGE = (): number => 0;

/** The network of a circuit at one frequency, ready to be solved with changed inductances. */
const networkAt = (input: CircuitInput, frequency: number) => {
  const loops = input.loops.map(({ model, added }) => impedanceOf(model, frequency, input.conditions, added));
  const leakages = input.loops.map(({ leakage }) => leakage(frequency));
  const tails = input.loops.map(({ tail }) => tail(frequency));
  const branches: Branch[] = input.loops.map(({ string, reversed }, i) => {
    const { turns, ground } = leakages[i]!;
    return {
      chains: [shuntCapacitance(turns + ground.capacitance, frequency, ground.conductance), tails[i]!],
      string,
      reversed
    };
  });
  const leadIn = input.leadIn(frequency);
  const steel = input.steel?.at(frequency);
  const base = input.loops.map((_, i) =>
    input.loops.map((_, j) => {
      const henries = i === j ? loops[i]!.inductance : input.mutual(i, j);
      return steel ? add(complex(henries), steel[i]![j]!) : complex(henries);
    })
  );
  const resistances = loops.map(({ resistance }) => resistance);
  const solve = (
    change: (i: number, j: number) => number | Complex,
    network: Network = { branches, leadIn }
  ): NetworkSolution => {
    const inductance = base.map((row, i) =>
      row.map((value, j) => {
        const by = change(i, j);
        return typeof by === 'number' ? complex(value.re + by, value.im) : add(value, by);
      })
    );
    return solveNetwork(loopImpedances(resistances, inductance, frequency), network);
  };
  return { loops, branches, leadIn, steel, solve };
};

export const solveCircuit = (input: CircuitInput): SolvedCircuit => {
  const { frequency, from } = operatingFrequency(input, (f) =>
    terminalFigures(networkAt(input, f).solve(NO_CHANGE).impedance, f)
  );
  const { loops, branches, leadIn, steel, solve } = networkAt(input, frequency);
  const rest = solve(NO_CHANGE);
  return {
    input,
    frequency,
    frequencyFrom: from,
    ...terminalFigures(rest.impedance, frequency),
    loops,
    shares: rest.currents.map(({ re }) => re),
    weights: rest.currents.map((a) => rest.currents.map((b) => a.re * b.re - a.im * b.im)),
    inductanceWith: (change) => terminalFigures(solve(change).impedance, frequency).inductance,
    steel: input.steel && {
      pieces: input.steel.pieces,
      dipoles: once(() => input.steel!.dipolesAt(frequency))
    },
    steelOf: (loop) => (steel ? steel[loop]![loop]! : complex(0)),
    losses: () => lossShares(loops, rest),
    magneticInductance: () => {
      const bare = {
        branches: branches.map((branch) => ({
          ...branch,
          chains: branch.chains.map(withoutCapacitance)
        })),
        leadIn: leadIn.map(withoutCapacitance)
      };
      return terminalFigures(solve(NO_CHANGE, bare).impedance, frequency).inductance;
    }
  };
};

/** Made when first asked for. */
const once = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
};

/** The series part of a line alone: with no current lost on the way, what goes in comes out. */
const withoutCapacitance = ({ series }: Chain): Chain => (series ? { ...THROUGH, b: series } : THROUGH);

const lossShares = (loops: readonly LoopImpedance[], { currents, losses }: NetworkSolution): LossShare[] => {
  const dissipated = (cause: keyof LoopResistances): number =>
    loops.reduce((sum, { resistances }, i) => {
      const { re, im } = currents[i]!;
      return sum + resistances[cause] * (re * re + im * im);
    }, 0);
  const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
  const own = {
    copper: dissipated('copper'),
    skin: dissipated('skin'),
    proximity: dissipated('proximity'),
    pavement: dissipated('pavement'),
    added: dissipated('added')
  };
  const resistances: Record<LossCause, number> = {
    ...own,
    tail: total(losses.branches.map((chains) => chains[TAIL]!)),
    'lead-in': total(losses.leadIn),
    pavement: own.pavement + total(losses.branches.map((chains) => chains[LEAKAGE]!)),
    steel: losses.loops - total(Object.values(own))
  };
  return LOSS_CAUSES.map((cause) => ({ cause, resistance_ohm: resistances[cause] }));
};

/** Places of a branch's chains. */
const LEAKAGE = 0;
const TAIL = 1;

/** The oscillator settles where f = 1/(2π√(L(f)·C)): mostly L changes little with f, and a few substitutions suffice. */
const operatingFrequency = (
  { frequency, setting }: CircuitInput,
  figuresAt: (frequency: number) => { readonly inductance: number; readonly q: number }
): { frequency: number; from: CircuitReadout['frequencyFrom'] } => {
  if (frequency !== null) return { frequency, from: 'given' };
  if (setting === null) return { frequency: ASSUMED_FREQUENCY, from: 'assumed' };
  /** NaN where the terminals look capacitive. */
  const aim = (f: number): number => {
    const { inductance, q } = figuresAt(f);
    return inductance > 0 ? oscillatorFrequency(inductance, setting, q) : NaN;
  };
  const settled = settledFrequency(aim, ASSUMED_FREQUENCY);
  return settled === null
    ? { frequency: ASSUMED_FREQUENCY, from: 'assumed' }
    : { frequency: settled, from: 'setting' };
};

/** Where `aim`, at f, is f itself, Hz: found by substitution from `start`, or else the lowest there is; null for none. */
export const settledFrequency = (aim: (frequency: number) => number, start: number): number | null => {
  let f = start;
  for (let step = 0; step < MOST_SUBSTITUTIONS; step++) {
    const next = aim(f);
    if (!(next > 0)) break;
    if (Math.abs(next - f) < 1e-9 * f) return next;
    f = next;
  }
  return lowestCrossing(aim);
};

const MOST_SUBSTITUTIONS = 20;

/** Where it is looked for, Hz. */
const LOWEST = 500;
const HIGHEST = 2e6;

/**
 * Substitution overshoots where the lead-in's capacitance is of the order of the setting's: L climbs steeply towards the
 * resonance, and past it the terminals look capacitive. From below the aim falls as f rises: the first f above its aim, by halving.
 */
const lowestCrossing = (aim: (frequency: number) => number): number | null => {
  let low: number | null = null;
  for (let f = LOWEST; f < HIGHEST; f *= 1.25) {
    if (aim(f) > f) low = f;
    else if (low !== null) return halved(aim, low, f);
  }
  return null;
};

const halved = (aim: (frequency: number) => number, below: number, above: number): number => {
  let [low, high] = [below, above];
  while (high - low > 1e-9 * low) {
    const middle = (low + high) / 2;
    if (aim(middle) > middle) low = middle;
    else high = middle;
  }
  return low;
};
