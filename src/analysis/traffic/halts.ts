/** Places at which one may have to stop: a signal's line, or where somebody wants to stand for a while. */
import type { Signal } from '#plan/schema';
import type { Course } from './course';
import { BEFORE_LINE, BRAKING, REACTION } from './practice';

export interface Halt {
  /** Where the front stops, metres. */
  readonly place: number;
  readonly signal: Signal | null;
  /** How long it stands there, s; with a signal, until that shows green. */
  readonly stay: number;
}

export const haltAt = (signal: Signal): Halt => ({ place: signal.line_m - BEFORE_LINE, signal, stay: 0 });

const sinceGreen = ({ cycle_s, greenFrom_s }: Signal, time: number): number =>
  (((time - greenFrom_s) % cycle_s) + cycle_s) % cycle_s;

export const isGreen = (signal: Signal, time: number): boolean =>
  signal.green_s >= signal.cycle_s || sinceGreen(signal, time) < signal.green_s;

/** When the signal that is red at `time` turns green; Infinity if it never does. */
export const nextGreen = (signal: Signal, time: number): number =>
  signal.green_s > 0 ? time + signal.cycle_s - sinceGreen(signal, time) : Infinity;

/** The braking that leads to the halt: where it begins, and from which speed. */
export interface Braking {
  readonly time: number;
  readonly place: number;
  readonly speed: number;
  /** m/s² */
  readonly rate: number;
}

/**
 * The latest that somebody on the course can begin to brake evenly for the halt and finds that it must; null for one that
 * passes, or does not get there. Who would have to brake sooner after the red began than a reaction takes drives through.
 * `before`: the speed with which the course is entered.
 */
export function brakingFor({ times, places }: Course, halt: Halt, before: number): Braking | null {
  let earlier = before;
  for (let k = 0; k + 1 < times.length && places[k]! < halt.place; k++) {
    const speed = (places[k + 1]! - places[k]!) / (times[k + 1]! - times[k]!);
    const braking = brakingOn(times[k]!, places[k]!, speed, earlier, halt.place);
    if (braking && braking.place < places[k + 1]! && mustStop(halt, braking.time)) return braking;
    earlier = speed;
  }
  return null;
}

/** On even driving from a place and a time; null where it is too late. */
function brakingOn(
  time: number,
  place: number,
  speed: number,
  earlier: number,
  halt: number
): Braking | null {
  if (speed <= 0) return null;
  const from = halt - speed ** 2 / (2 * BRAKING);
  if (from > place) return { time: time + (from - place) / speed, place: from, speed, rate: BRAKING };
  const most = Math.sqrt(2 * BRAKING * (halt - place));
  // one who speeds up here goes no faster than can be stopped; one who already was too fast cannot stop any more
  return earlier <= most
    ? {
        time,
        place,
        speed: Math.min(speed, most),
        rate: Math.min(BRAKING, speed ** 2 / (2 * (halt - place)))
      }
    : null;
}

const mustStop = ({ signal }: Halt, time: number): boolean =>
  signal === null || (!isGreen(signal, time) && sinceGreen(signal, time) - signal.green_s >= REACTION);
