/** A circuit on a channel, as an oscillator among others. */
import { oscillatorFrequency } from '#physics/coupling/beat';
import type { Channel, Circuit, Unit } from '#plan/schema';
import type { SolvedCircuit } from '../electrical/circuit-model';
import type { Sweep, Terminals, VehicleResponse } from '../results';

export interface BeatTank {
  readonly circuit: Circuit;
  readonly channel: Channel;
  readonly unit: Unit;
  readonly solved: SolvedCircuit;
  readonly sweep: Sweep;
}

/** The vehicle that shifts a circuit most: ΔL/L, negative, or 0 without one. */
export interface Deepest {
  readonly deltaLOverL: number;
  readonly vehicle: string | null;
}

export const deepestOf = (responses: readonly Pick<VehicleResponse, 'vehicle' | 'best'>[]): Deepest =>
  responses.reduce<Deepest>(
    (deepest, { vehicle, best }) => (best < deepest.deltaLOverL ? { deltaLOverL: best, vehicle } : deepest),
    { deltaLOverL: 0, vehicle: null }
  );

type Tuned = Pick<Terminals, 'frequency_Hz' | 'inductance_H' | 'q'>;

/**
 * `cold` and `hot` are the circuit solved at those temperatures. Where the frequency is given it holds at the site's
 * temperature; the capacitance that this means stays, and the frequency follows the inductance.
 */
export const sweepOf = (
  rest: Tuned,
  cold: Tuned,
  hot: Tuned,
  isGiven: boolean,
  { deltaLOverL, vehicle }: Deepest
): Sweep => {
  const tuned = ({ inductance_H, q }: Tuned): number => oscillatorFrequency(inductance_H, 1, q);
  const at = (other: Tuned): number =>
    isGiven ? (rest.frequency_Hz * tuned(other)) / tuned(rest) : other.frequency_Hz;
  const frequencies = [rest.frequency_Hz, at(cold), at(hot)];
  return {
    rest_Hz: rest.frequency_Hz,
    cold_Hz: at(cold),
    hot_Hz: at(hot),
    deepest: deltaLOverL,
    vehicle,
    low_Hz: Math.min(...frequencies),
    // f = 1/(2π√(LC)) with L·(1 + ΔL/L): to first order half of the drop
    high_Hz: Math.max(...frequencies) / Math.sqrt(1 + deltaLOverL)
  };
};
