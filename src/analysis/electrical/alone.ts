/**
 * One circuit modelled and solved by itself, outside the survey of the drawing and its caches: for variants of a circuit
 * that nobody asks for twice.
 */
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import type { Winding } from '#physics/inductance/winding';
import { wireOf, type Wire } from '#plan/catalogue/wires';
import type { Circuit, Loop, Site } from '#plan/schema';
import { centreOf, moveShape } from '#plan/shapes/index';
import { circuitDcResistance, circuitInput, type CircuitMeans, type ModelledLoop } from './circuit-input';
import { solveCircuit, type SolvedCircuit } from './circuit-model';
import { drawnOf, modelLoop, type LoopModel } from './loop-model';
import { createSteelStore } from './steel';

export interface Alone {
  readonly solved: SolvedCircuit;
  readonly resistanceDc: number;
  readonly loops: ReadonlyMap<string, ModelledLoop>;
}

export interface AloneMeans {
  /** Equal texts have equal numbers: steel keeps its answers under them. */
  readonly numberOf: (text: string) => number;
  readonly steel: CircuitMeans['steel'];
}

/** Means that nobody else uses. */
export const ownMeans = (): AloneMeans => {
  const numbers = new Map<string, number>();
  const steel = createSteelStore();
  return {
    numberOf: (text) => {
      const number = numbers.get(text) ?? numbers.size + 1;
      numbers.set(text, number);
      return number;
    },
    steel: (loops, site) => (site.steel.length === 0 ? null : steel.matrixFor(loops, site))
  };
};

/** Null for a loop that cannot be wound. */
export type Modeller = (loop: Loop, wire: Wire | undefined) => LoopModel | null;

/** A loop's own inductance hangs neither on its place nor on its depth: equal loops of one array are computed once. */
const formOf = ({ shape, turns }: Loop, wire: Wire): string => {
  const [x, y] = centreOf(shape);
  return JSON.stringify([moveShape(shape, [-x, -y]), turns, wire.conductorDiameter, wire.insulatedDiameter]);
};

export const createModeller = ({ numberOf }: Pick<AloneMeans, 'numberOf'>): Modeller => {
  const externals = new Map<string, number>();
  return (loop, wire) => {
    if (!wire) return null;
    const external = (winding: Winding): number => {
      const form = formOf(loop, wire);
      const known = externals.get(form);
      if (known !== undefined) return known;
      const made = externalInductance(winding);
      externals.set(form, made);
      return made;
    };
    return modelLoop(loop, wire, numberOf(drawnOf(loop, wire)), external);
  };
};

/** The network asks for each pair at every frequency that it tries. */
const oncePerPair = (mutual: CircuitMeans['mutual']): CircuitMeans['mutual'] => {
  const known = new Map<LoopModel, Map<LoopModel, number>>();
  const keep = (a: LoopModel, b: LoopModel, value: number): void => {
    const row = known.get(a) ?? new Map<LoopModel, number>();
    known.set(a, row.set(b, value));
  };
  return (a, b) => {
    const found = known.get(a)?.get(b);
    if (found !== undefined) return found;
    const made = mutual(a, b);
    keep(a, b, made);
    keep(b, a, made);
    return made;
  };
};

export const mutualOf: CircuitMeans['mutual'] = (a, b) => mutualInductance(a.winding, b.winding);

/** Null if one of the circuit's loops is missing or cannot be wound. `mutual` as for `CircuitMeans`. */
export const solveAlone = (
  site: Site,
  circuit: Circuit,
  means: AloneMeans = ownMeans(),
  modeller: Modeller = createModeller(means),
  mutual: CircuitMeans['mutual'] = mutualOf
): Alone | null => {
  const loops = new Map<string, ModelledLoop>();
  for (const { loop: id } of circuit.strings.flat()) {
    const loop = site.loops.find((each) => each.id === id);
    const model = loop && modeller(loop, wireOf(loop.wire, site));
    if (!loop || !model) return null;
    loops.set(id, { loop, model });
  }
  const input = circuitInput(circuit, site, loops, { mutual: oncePerPair(mutual), steel: means.steel });
  if (!input) return null;
  return {
    solved: solveCircuit(input),
    resistanceDc: circuitDcResistance(circuit, site, loops),
    loops
  };
};
