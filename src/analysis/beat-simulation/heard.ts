/** What can be read off the crossings of one oscillator: its mean, its cycles, its readings, its amplitude. */
import { measuredFrequency, swingOf } from '#physics/coupling/frequency-meter';
import type { Curve } from './simulation';

/** Crossings after the oscillators have settled, and the slopes there. */
export interface Heard {
  readonly crossings: readonly number[];
  readonly slopes: readonly number[];
}

/** Of a curve: more than a wide screen has pixels would be drawn for nothing. */
const MOST_POINTS = 600;
/** Moments of a beat at which a measurement is tried, and of how many beats at least. */
const BEGINNINGS = 32;
const BEATS_TRIED = 1.5;
/** Moments in all. */
const MOST_TRIED = 1_500;

const lengthOf = ({ crossings }: Heard): number => crossings.at(-1)! - crossings[0]!;

export const meanFrequency = ({ crossings }: Heard): number =>
  (crossings.length - 1) / (crossings.at(-1)! - crossings[0]!);

/** Over as many whole beats as there are: part of one would put the mean to one side. */
export const meanOverBeats = (heard: Heard, beat: number): number => {
  const beats = Math.floor(lengthOf(heard) * beat);
  const whole = beats >= 1 ? measuredFrequency(heard.crossings, heard.crossings[0]!, beats / beat) : null;
  return whole ?? meanFrequency(heard);
};

/** Points of `every` so many cycles until `end`, so that there are not too many. */
const strideUntil = ({ crossings }: Heard, end: number): number =>
  Math.max(1, Math.ceil(crossings.filter((time) => time < end).length / MOST_POINTS));

/** Frequency cycle by cycle, Hz above `mean`, over `shown` seconds. */
export const cyclesOf = (heard: Heard, mean: number, shown: number): Curve => {
  const { crossings } = heard;
  const begin = crossings[0]!;
  const stride = strideUntil(heard, begin + shown);
  const times: number[] = [];
  const values: number[] = [];
  for (let n = 0; n + stride < crossings.length && crossings[n + stride]! <= begin + shown; n += stride) {
    const [from, to] = [crossings[n]!, crossings[n + stride]!];
    times.push((from + to) / 2 - begin);
    values.push(stride / (to - from) - mean);
  }
  return { times, values };
};

/** Amplitude at each crossing, from how steeply the voltage rises there, over `alone`. */
export const amplitudeOf = (heard: Heard, mean: number, shown: number, alone: number): Curve => {
  const { crossings, slopes } = heard;
  const begin = crossings[0]!;
  const stride = strideUntil(heard, begin + shown);
  const times: number[] = [];
  const values: number[] = [];
  for (let n = 0; n < crossings.length && crossings[n]! <= begin + shown; n += stride) {
    times.push(crossings[n]! - begin);
    values.push(slopes[n]! / (2 * Math.PI * mean * alone));
  }
  return { times, values };
};

/** One measurement after the other, Hz above `mean`; times are those at which each begins. */
export const readingsOf = ({ crossings }: Heard, mean: number, time: number, most: number): Curve => {
  const begin = crossings[0]!;
  const times: number[] = [];
  const values: number[] = [];
  for (let n = 0; n < most; n++) {
    const reading = measuredFrequency(crossings, begin + n * time, time);
    if (reading === null) break;
    times.push(n * time);
    values.push(reading - mean);
  }
  return { times, values };
};

/** Half the range of what a measurement reads that begins at any moment, Hz. */
export const averagedSwing = (heard: Heard, time: number, beat: number): number => {
  const { crossings } = heard;
  const begin = crossings[0]!;
  const length = Math.min(lengthOf(heard) - time, beat > 0 ? BEATS_TRIED / beat : Infinity);
  const count = Math.min(MOST_TRIED, Math.max(BEGINNINGS, Math.ceil(length * beat * BEGINNINGS)));
  const readings: number[] = [];
  for (let n = 0; n <= count; n++) {
    const reading = measuredFrequency(crossings, begin + (n / count) * length, time);
    if (reading !== null) readings.push(reading);
  }
  return swingOf(readings);
};
