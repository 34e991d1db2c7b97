/** Every pair of circuits whose channels run at the same time, rated. */
import { rippleOf, separationOf, type Tank } from '#physics/coupling/beat';
import type { Channel, Circuit, Unit } from '#plan/schema';
import type { SolvedCircuit } from '../electrical/circuit-model';
import type { Beat, BeatVerdict } from '../results';
import type { Survey } from '../survey';

interface BeatSide {
  readonly circuit: Circuit;
  readonly channel: Channel;
  readonly unit: Unit;
  readonly solved: SolvedCircuit;
  /** Deepest ΔL/L that traffic causes on it (negative or 0): the frequency sweeps up by half of it. */
  readonly deepest: number;
}

/** Every pair of circuits that can run at the same time. */
export const beatsOf = (
  { site, circuits, modelled, means }: Survey,
  deepestOf: (circuit: string) => number
): Beat[] => {
  const sides = site.circuits.flatMap((circuit): BeatSide[] => {
    const unit = site.units.find(({ id }) => id === circuit.channel?.unit);
    const solved = circuits.get(circuit.id)?.solved;
    if (!circuit.channel || !unit || !solved || !(solved.inductance > 0)) return [];
    return [{ circuit, channel: circuit.channel, unit, solved, deepest: deepestOf(circuit.id) }];
  });
  const mutual = (a: BeatSide, b: BeatSide): number => {
    let sum = 0;
    a.solved.input.loops.forEach((loop, m) =>
      b.solved.input.loops.forEach((other, n) => {
        const henries = means.mutual(modelled.get(loop.id)!.model, modelled.get(other.id)!.model);
        sum += a.solved.shares[m]! * b.solved.shares[n]! * henries;
      })
    );
    return sum;
  };
  return sides.flatMap((a, i) =>
    sides
      .slice(i + 1)
      .filter((b) => canRunTogether(a, b))
      .map((b) => beatOf(a, b, mutual(a, b)))
  );
};

/** Ripple under a quarter of the trip threshold is clear; over the threshold it makes calls by itself. */
const WATCH_FROM = 0.25;
const verdictOf = (ratio: number): BeatVerdict =>
  ratio > 1 ? 'false calls likely' : ratio >= WATCH_FROM ? 'watch' : 'clear';

const tankOf = ({ solved, unit, deepest }: BeatSide): Tank => ({
  inductance: solved.inductance,
  low: solved.frequency,
  high: solved.frequency * (1 - deepest / 2),
  measuringTime: unit.measuringTime_s
});

/** Channels that one unit scans in turn never run together. */
const canRunTogether = (a: BeatSide, b: BeatSide): boolean => a.unit.id !== b.unit.id || !a.unit.scansInTurn;

/** `mutual` is the inductance between the two circuits' terminals, H. */
const beatOf = (a: BeatSide, b: BeatSide, mutual: number): Beat => {
  const tankA = tankOf(a);
  const tankB = tankOf(b);
  const k = mutual / Math.sqrt(a.solved.inductance * b.solved.inductance);
  const sides = [
    { ripple: rippleOf(tankA, tankB, k), threshold: a.channel.tripThreshold },
    { ripple: rippleOf(tankB, tankA, k), threshold: b.channel.tripThreshold }
  ].map(({ ripple, threshold }) => ({ ripple, ratio: ripple / threshold }));
  const worse = sides[0]!.ratio >= sides[1]!.ratio ? sides[0]! : sides[1]!;
  return {
    a: a.circuit.id,
    b: b.circuit.id,
    k,
    separation_Hz: separationOf(tankA, tankB),
    ripple: worse.ripple,
    ratio: worse.ratio,
    verdict: verdictOf(worse.ratio)
  };
};
