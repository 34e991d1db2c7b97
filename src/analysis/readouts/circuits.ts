/** A circuit at the unit's terminals: as designed, on a cold and a hot day, and with the pavement dry and wet. */
import { temperaturesOf } from '#plan/catalogue/tolerances';
import type { Circuit, Site } from '#plan/schema';
import type { CircuitMeans, ModelledLoop } from '../electrical/circuit-input';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { solveConditional } from '../electrical/conditional';
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
  const conditional = solveConditional(circuit, site, loops, means);
  if (!conditional) return null;
  const { solved, rest, under } = conditional;
  const wetness = (relativePermittivity: number): Terminals =>
    under({ pavement: { ...site.pavement, relativePermittivity } });
  const weather = (temperature_C: number) => ({ temperature_C, ...under({ temperature_C }) });
  const [cold, hot] = temperaturesOf(site);
  const [dry, wet] = permittivities(site);
  return {
    solved,
    readout: {
      id: circuit.id,
      frequencyFrom: solved.frequencyFrom,
      ...rest,
      magneticInductance_H: solved.magneticInductance(),
      losses: solved.losses(),
      cold: weather(cold),
      hot: weather(hot),
      dry: wetness(dry),
      wet: wetness(wet)
    }
  };
};
