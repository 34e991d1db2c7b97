/** A circuit solved on the drawing as it is, and under other weather with the same loops and the same steel. */
import type { Circuit, Site } from '#plan/schema';
import type { Terminals } from '../results';
import { circuitDcResistance, circuitInput, type CircuitMeans, type ModelledLoop } from './circuit-input';
import { solveCircuit, type SolvedCircuit } from './circuit-model';

export interface Conditional {
  readonly solved: SolvedCircuit;
  readonly rest: Terminals;
  /** What a site of other temperature or pavement would show. */
  readonly under: (weather: Partial<Pick<Site, 'temperature_C' | 'pavement'>>) => Terminals;
}

/** Null if one of the circuit's loops cannot be wound. */
export const solveConditional = (
  circuit: Circuit,
  site: Site,
  loops: ReadonlyMap<string, ModelledLoop>,
  means: CircuitMeans
): Conditional | null => {
  const input = circuitInput(circuit, site, loops, means);
  if (!input) return null;
  const terminals = (there: Site, solved: SolvedCircuit): Terminals => ({
    frequency_Hz: solved.frequency,
    inductance_H: solved.inductance,
    resistance_ohm: solved.resistance,
    q: solved.q,
    resistanceDc_ohm: circuitDcResistance(circuit, there, loops)
  });
  // the steel is cold and wet as it is: its matrix is kept
  const steel = () => input.steel;
  const solved = solveCircuit(input);
  return {
    solved,
    rest: terminals(site, solved),
    under: (weather) => {
      const there = { ...site, ...weather };
      return terminals(there, solveCircuit(circuitInput(circuit, there, loops, { ...means, steel })!));
    }
  };
};
