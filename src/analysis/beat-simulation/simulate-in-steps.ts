/**
 * Two channels of a drawing let run in time: their tanks with the L, Q and frequency that the drawing gives them, coupled
 * as their loops are, integrated as a circuit (`physics/coupling/oscillators`). What comes out stands beside what the law
 * of ripple says, which the verdicts use.
 */
import { averagingOf, driveOf } from '#physics/coupling/beat';
import { cycleFrequencies, swingOf } from '#physics/coupling/frequency-meter';
import { tuned } from '#physics/coupling/tuning';
import type { Site } from '#plan/schema';
import type { BeatTank } from '../beating/tank';
import type { Steps } from '../steps';
import { createSurveyor } from '../survey';
import { amplitudeOf, averagedSwing, cyclesOf, meanFrequency, meanOverBeats, readingsOf } from './heard';
import { simulatedPair } from './pair';
import { courseOf, runInSteps } from './run';
import {
  LONGEST_MEASURED,
  type BeatSimulation,
  type SimulatedSide,
  type SimulationWish,
  type Swing
} from './simulation';

/** Of what is drawn. */
const BEATS_SHOWN = 4;
const MOST_READINGS = 60;
/** s; a beat that is slower than this shows, or none, is cut off. */
const SHORTEST_SHOWN = 0.001;
const LONGEST_SHOWN = 0.02;
/** Volts; nothing hangs on it but the numbers' size. */
const AMPLITUDE = 1;
/** Of the law's swing, under which the two run in step. */
const AT_REST = 0.05;
/** With more loss than that the resistance in series with the coil lets nothing oscillate, or barely. */
const LEAST_Q = 2;

const swingFrom = (swing_Hz: number, averaged_Hz: number, frequency: number): Swing => ({
  swing_Hz,
  // f goes with 1/√L: a share of L moves it by half of that
  ripple: (2 * swing_Hz) / frequency,
  averaged_Hz,
  averaged: (2 * averaged_Hz) / frequency
});

/** The drawing's tank by its frequency: the second's is moved to the separation that is asked for, to its own side. */
const frequenciesOf = (
  [a, b]: readonly [BeatTank, BeatTank],
  separation: number | null
): readonly [number, number] => {
  const [f1, f2] = [a.sweep.rest_Hz, b.sweep.rest_Hz];
  return separation === null ? [f1, f2] : [f1, f2 < f1 ? f1 - separation : f1 + separation];
};

export type BeatSimulator = (site: Site, wish: SimulationWish) => Steps<BeatSimulation | null>;

/** Keeps what it has solved of the drawing: a slider that moves changes one thing at a time. */
export const createBeatSimulator = (): BeatSimulator => {
  const surveyor = createSurveyor();

  return function* (site, wish) {
    const pair = simulatedPair(site, wish, surveyor);
    if (!pair) return null;
    yield;
    const { tanks, k } = pair;
    if (tanks.some(({ solved }) => solved.q < LEAST_Q)) return null;
    const frequencies = frequenciesOf(tanks, wish.separation_Hz);
    const [f1, f2] = frequencies;
    if (!(f2 > 0)) return null;
    const times = tanks.map(({ unit }) =>
      Math.min(LONGEST_MEASURED, wish.measuringTime_s ?? unit.measuringTime_s)
    );
    const wanted = tanks.map(({ solved: { inductance, q } }, side) => ({
      inductance,
      q,
      frequency: frequencies[side]!,
      amplitude: AMPLITUDE
    }));
    const oscillators = tuned(wanted[0]!, wanted[1]!);
    yield;
    const separation = Math.abs(f2 - f1);
    const laws = frequencies.map((f, side) => {
      const other = 1 - side;
      const drive = driveOf(wanted[side]!.inductance, wanted[other]!.inductance, f, frequencies[other]!);
      return (Math.abs(k) / 2) * f * drive;
    });
    const strength = Math.max(...laws.map((law) => (2 * law) / separation));
    const heard = yield* runInSteps(oscillators, k, courseOf(wanted, separation, strength, times));
    const swings = heard.map(({ crossings }) => swingOf(cycleFrequencies(crossings)));
    const isLocked = swings.every((swing, side) => swing < AT_REST * laws[side]!);
    const beat = isLocked ? 0 : Math.abs(meanFrequency(heard[1]) - meanFrequency(heard[0]));
    const shownCycles = Math.min(
      LONGEST_SHOWN,
      Math.max(SHORTEST_SHOWN, BEATS_SHOWN / (beat > 0 ? beat : separation))
    );

    const sideOf = (side: 0 | 1): SimulatedSide => {
      const { circuit, channel } = tanks[side];
      const { inductance, q, frequency } = wanted[side]!;
      const time = times[side]!;
      // as in the rating of pairs: where the two may lock nothing is taken to be averaged away
      const averaging = strength > 1 ? 1 : averagingOf(separation, time);
      const own = heard[side];
      const mean = meanOverBeats(own, beat);
      const seen = swingFrom(swings[side]!, averagedSwing(own, time, beat), frequency);
      return {
        circuit: wish.circuits ? circuit.id : null,
        inductance_H: inductance,
        q,
        frequency_Hz: frequency,
        measuringTime_s: time,
        tripThreshold: channel.tripThreshold,
        threshold_Hz: (channel.tripThreshold / 2) * frequency,
        law: swingFrom(laws[side]!, laws[side]! * averaging, frequency),
        seen,
        ratio: seen.averaged / channel.tripThreshold,
        cycles: cyclesOf(own, mean, shownCycles),
        amplitude: amplitudeOf(own, mean, shownCycles, AMPLITUDE),
        readings: readingsOf(own, mean, time, MOST_READINGS)
      };
    };
    const sides = [sideOf(0), sideOf(1)] as const;
    return {
      wish,
      k,
      mutual_H: pair.mutual_H,
      drawnDistance_m: pair.drawnDistance_m,
      distance_m: pair.distance_m,
      drawnSeparation_Hz: Math.abs(tanks[1].sweep.rest_Hz - tanks[0].sweep.rest_Hz),
      separation_Hz: separation,
      beat_Hz: beat,
      strength,
      isLocked,
      ownMeasuringTime_s: Math.min(
        LONGEST_MEASURED,
        Math.max(...tanks.map(({ unit }) => unit.measuringTime_s))
      ),
      shownCycles_s: shownCycles,
      shownReadings_s: Math.max(
        ...sides.map(({ readings, measuringTime_s }) => readings.times.length * measuringTime_s)
      ),
      sides
    };
  };
};
