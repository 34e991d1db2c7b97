/**
 * The places of a pass that are computed, and the curve through them. Close to the loops they lie closer than the response
 * can turn; from some way off it rises so evenly that a few are enough.
 */
import { GRAIN } from '#physics/vehicle/sampling';
import type { Footprint } from '../electrical/reach';

/** Metres between the values of a profile. */
export const STEP = GRAIN;

/** Places lie at whole numbers of `fine` steps, and from some way off at whole numbers of `fine·COARSER`. */
export const COARSER = 4;

/** Of a vehicle whose lowest point is as high as the first, and its main part as high as the second, metres. */
const HIGH = [
  { lowest: 0.36, main: 0.6, steps: 3 },
  { lowest: 0.36, main: 0.36, steps: 2 }
];

/** Steps of a profile between places that are computed close to the loops: a response turns the slower the higher it is. */
export const fineSteps = ({ lowest, main }: Footprint): number =>
  HIGH.find((high) => lowest >= high.lowest && main >= high.main)?.steps ?? 1;

/** Beyond this gap between vehicle and loop a response rises evenly, metres. */
const AWAY = 1.5;
/** Of a vehicle of short parts alone. */
const AWAY_SHORT = 0.75;
const SHORT = 1.2;
export const awayOf = ({ longest }: Footprint): number => (longest < SHORT ? AWAY_SHORT : AWAY);

/** Numbers of places `every` apart from `from` on. */
export interface Run {
  readonly from: number;
  readonly count: number;
  readonly every: number;
}

/**
 * Covers the numbers 0 to `last` (a multiple of COARSER): every one from COARSER before each interval to COARSER after it,
 * every COARSER-th elsewhere.
 */
export const runsFor = (last: number, intervals: readonly (readonly [number, number])[]): readonly Run[] => {
  const close = new Uint8Array(last / COARSER);
  for (const [from, to] of intervals) {
    const first = Math.max(0, Math.floor(from / COARSER));
    close.fill(1, first, Math.min(close.length, Math.max(first, Math.ceil(to / COARSER))));
  }
  const runs: Run[] = [];
  let start = 0;
  for (let k = 1; k <= close.length; k++) {
    if (k < close.length && close[k] === close[start]) continue;
    const isClose = close[start] === 1;
    const every = isClose ? 1 : COARSER;
    // the next run begins where this one ends
    const isLast = k === close.length;
    const count = ((k - start) * COARSER) / every + (isLast ? 1 : 0);
    runs.push({ from: start * COARSER, count, every });
    start = k;
  }
  return runs;
};

/** Values that a curve between known ones is drawn through. */
const NODES = 8;

/**
 * Fills every `of`-th value that `isKnown` says is unknown, and marks it: by the polynomial through the eight values around
 * it that lie at whole numbers of `every`, all of them known. The last number is one of these too.
 */
export const fillBetween = (values: Float64Array, isKnown: Uint8Array, every: number, of = 1): void => {
  const cells = (values.length - 1) / every;
  const nodes = Math.min(NODES, cells + 1);
  for (let k = 0; k < values.length; k += of) {
    if (isKnown[k]) continue;
    const before = Math.floor(k / every) - (nodes / 2 - 1);
    const first = Math.max(0, Math.min(Math.floor(before), cells + 1 - nodes));
    values[k] = through(values, first * every, every, (k - first * every) / every, nodes);
    isKnown[k] = 1;
  }
};

/** Lagrange's polynomial through `nodes` values `every` apart from `from` on, at `t` of these distances from the first. */
const through = (values: Float64Array, from: number, every: number, t: number, nodes: number): number => {
  let sum = 0;
  for (let a = 0; a < nodes; a++) {
    let weight = 1;
    for (let b = 0; b < nodes; b++) if (b !== a) weight *= (t - b) / (a - b);
    sum += weight * values[from + a * every]!;
  }
  return sum;
};

/** So many steps between samples, and the curve through them between. */
export const refined = (samples: Float64Array, per: number): Float64Array => {
  const values = new Float64Array(per * (samples.length - 1) + 1);
  const isKnown = new Uint8Array(values.length);
  samples.forEach((sample, k) => {
    values[k * per] = sample;
    isKnown[k * per] = 1;
  });
  fillBetween(values, isKnown, per);
  return values;
};
