/** A circuit at the unit's terminals: as designed, on a cold and a hot day, and with the pavement dry and wet. */
import { temperaturesOf } from '#plan/catalogue/tolerances';
import type { Circuit, Site } from '#plan/schema';
import {
  circuitDcResistance,
  circuitInput,
  type CircuitMeans,
  type ModelledLoop
} from '../electrical/circuit-input';
import { solveCircuit, type SolvedCircuit } from '../electrical/circuit-model';
import type { CircuitReadout, Terminals } from '../results';
import { permittivities } from './loops';

/** What the drawing alone decides; the passes of vehicles and the ranges come beside it. */
export type TerminalReadout = Omit<
  CircuitReadout,
  'isFollowing' | 'responses' | 'neighbours' | 'ranges' | 'classes' | 'steel' | 'selfResonance_Hz'
>;

export interface StudiedCircuit {
  readonly solved: SolvedCircuit;
  readonly readout: TerminalReadout;
}

/** Null if one of the circuit's loops cannot be wound. */
export const studyCircuit = (
  circuit: Circuit,
  site: Site,
  loops: ReadonlyMap<string, ModelledLoop>,
  means: CircuitMeans
): StudiedCircuit | null => {
  const input = circuitInput(circuit, site, loops, means);
  if (!input) return null;
  const terminals = (under: Site, solved: SolvedCircuit): Terminals => ({
    frequency_Hz: solved.frequency,
    inductance_H: solved.inductance,
    resistance_ohm: solved.resistance,
    q: solved.q,
    resistanceDc_ohm: circuitDcResistance(circuit, under, loops)
  });
  // the steel is cold and wet as it is: its matrix is kept
  const steel = () => input.steel;
  const variant = (change: Partial<Site>): Terminals => {
    const under = { ...site, ...change };
    return terminals(under, solveCircuit(circuitInput(circuit, under, loops, { ...means, steel })!));
  };
  const wetness = (relativePermittivity: number): Terminals =>
    variant({ pavement: { ...site.pavement, relativePermittivity } });
  const weather = (temperature_C: number) => ({ temperature_C, ...variant({ temperature_C }) });
  const [cold, hot] = temperaturesOf(site);
  const [dry, wet] = permittivities(site);
  const solved = solveCircuit(input);
  return {
    solved,
    readout: {
      id: circuit.id,
      frequencyFrom: solved.frequencyFrom,
      ...terminals(site, solved),
      magneticInductance_H: solved.magneticInductance(),
      losses: solved.losses(),
      cold: weather(cold),
      hot: weather(hot),
      dry: wetness(dry),
      wet: wetness(wet)
    }
  };
};
