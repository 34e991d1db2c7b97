/** Two channels that run at the same time: how far they disturb each other. */
import { lockingRange, rippleOf, separationOf, type Tank } from '#physics/coupling/beat';
import type { Beat, BeatCoupling, BeatSide, BeatVerdict } from '../results';
import type { BeatTank } from './tank';

export type PairRating = Pick<
  Beat,
  'k' | 'separation_Hz' | 'lockingRange_Hz' | 'ripple' | 'ratio' | 'verdict' | 'sides'
>;

/** Ripple under a quarter of the trip threshold is clear; over the threshold it makes calls by itself. */
export const WATCH_FROM = 0.25;
export const verdictOf = (ratio: number): BeatVerdict =>
  ratio > 1 ? 'false calls likely' : ratio >= WATCH_FROM ? 'watch' : 'clear';

/** Channels that one unit scans in turn never run together; two circuits drawn on one channel share its oscillator. */
export const canRunTogether = (a: Running, b: Running): boolean =>
  a.unit.id !== b.unit.id || (!a.unit.scansInTurn && a.channel.number !== b.channel.number);
type Running = Pick<BeatTank, 'unit' | 'channel'>;

/**
 * Of all sources together, H, in the sense of the loops. What runs in a conduit has no known sign and counts against.
 */
export const mutualOf = ({ loops_H, steel_H, conduits_H }: BeatCoupling): number => {
  const laid = loops_H + steel_H;
  return laid + (laid < 0 ? -conduits_H : conduits_H);
};

type Rated = Pick<BeatTank, 'circuit' | 'channel' | 'unit' | 'sweep'> & {
  readonly solved: Pick<BeatTank['solved'], 'inductance'>;
};

const tankOf = ({ solved, unit, sweep }: Rated): Tank => ({
  inductance: solved.inductance,
  low: sweep.low_Hz,
  high: sweep.high_Hz,
  measuringTime: unit.measuringTime_s
});

const sideOf = (victim: Rated, other: Rated, k: number): BeatSide => {
  const ripple = rippleOf(tankOf(victim), tankOf(other), k);
  const { tripThreshold } = victim.channel;
  return {
    circuit: victim.circuit.id,
    ripple,
    tripThreshold,
    ratio: ripple / tripThreshold,
    measuringTime_s: victim.unit.measuringTime_s
  };
};

export const ratePair = (a: Rated, b: Rated, coupling: BeatCoupling): PairRating => {
  const k = mutualOf(coupling) / Math.sqrt(a.solved.inductance * b.solved.inductance);
  const sides = [sideOf(a, b, k), sideOf(b, a, k)] as const;
  const worse = sides[0].ratio >= sides[1].ratio ? sides[0] : sides[1];
  return {
    k,
    separation_Hz: separationOf(tankOf(a), tankOf(b)),
    lockingRange_Hz: lockingRange(tankOf(a), tankOf(b), k),
    ripple: worse.ripple,
    ratio: worse.ratio,
    verdict: verdictOf(worse.ratio),
    sides
  };
};
