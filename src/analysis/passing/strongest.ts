/**
 * The strongest response of one pass. Each part of the vehicle is put over the middle and both ends of each loop, wide
 * gaps between these places are filled; the coarse body picks the strongest place and climbs to the summit beside it, and
 * the fine body gives the figure there. Against passes stepped at 0.1 m the figure is too weak by 0.1 % in the median; two-wheelers
 * over diagonals, which answer in narrow peaks, are where it misses most.
 */
import type { Point, Vehicle } from '#plan/schema';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { quickEffect, vehicleEffect } from '../electrical/vehicle-effect';
import { headingOf, onLine, type LaneLine } from './lane-line';

export interface Strongest {
  /** ΔL/L, the most negative of the pass. */
  readonly deltaLOverL: number;
  readonly at: Point;
  readonly heading: number;
}

/** How the search steps, metres: places are at most `gap` apart, and `climb` are the steps from the best of them. */
interface Stride {
  readonly gap: number;
  readonly climb: readonly number[];
}
const LONG: Stride = { gap: 1.5, climb: [0.45, 0.2] };
/** Two-wheelers answer in narrow peaks. */
const SHORT: Stride = { gap: 0.35, climb: [0.15, 0.07] };
const LONGEST_SMALL_PART = 1;

const strideOf = ({ parts }: Vehicle): Stride =>
  parts.every((part) => (part.kind === 'plate' ? part.length : 2 * part.radius) <= LONGEST_SMALL_PART)
    ? SHORT
    : LONG;
/** Beside the loops: a response below this is left as the coarse mesh gives it, good to some 5 %. No usual threshold is that low. */
const FAINT = 5e-5;
/** A place counts as a rival of the strongest from this share of its response on. */
const RIVAL = 0.8;
/** Places nearer than this to one another are one, metres. */
const RESOLUTION = 0.2;

const places = (
  vehicle: Vehicle,
  extents: readonly (readonly [number, number])[],
  over: boolean
): number[] => {
  const along = vehicle.parts.map((part) => part.centre[1]);
  const { gap } = strideOf(vehicle);
  const aimed = extents.flatMap(([from, to]) =>
    (over ? [from, (from + to) / 2, to] : [(from + to) / 2]).flatMap((target) => along.map((y) => target - y))
  );
  const distinct: number[] = [];
  for (const place of aimed.sort((a, b) => a - b)) {
    const last = distinct[distinct.length - 1];
    if (last !== undefined && place - last < RESOLUTION) continue;
    const gaps = last === undefined ? 1 : Math.ceil((place - last) / gap);
    for (let k = 1; k < gaps; k++) distinct.push(last! + ((place - last!) * k) / gaps);
    distinct.push(place);
  }
  return distinct;
};

/**
 * `extents`: from where to where each loop lies along the line. `over` is false for a pass beside the loops: from a lane's
 * width away the response rises and falls so gently that each part beside the loop's middle is close enough.
 */
export const strongestOnPath = (
  circuit: SolvedCircuit,
  body: VehicleBody,
  vehicle: Vehicle,
  line: LaneLine,
  offset: number,
  extents: readonly (readonly [number, number])[],
  over = true
): Strongest => {
  const heading = headingOf(line);
  const placed = (along: number) => {
    const [x, y] = onLine(line, along, offset);
    return { x, y, heading };
  };
  const respond = (along: number): number => quickEffect(circuit, body, placed(along));
  const fine = (along: number): number => vehicleEffect(circuit, body, placed(along));
  const tried = places(vehicle, extents, over);
  const answers = tried.map(respond);
  const best = answers.reduce((least, value, k) => (value < answers[least]! ? k : least), 0);
  const summit = (k: number) => {
    const along = over ? climb(tried[k]!, answers[k]!, respond, strideOf(vehicle)) : tried[k]!;
    const exact = over || -answers[k]! > FAINT;
    return { along, value: exact ? fine(along) : answers[k]! };
  };
  const first = summit(best);
  const rival = over ? rivalOf(vehicle, answers, best) : null;
  const second = rival === null ? first : summit(rival);
  const { along, value } = second.value < first.value ? second : first;
  return { deltaLOverL: value, at: onLine(line, along, offset), heading };
};

/** Of several parts another may answer nearly as much: the places alone cannot tell which of the two is the stronger. */
const rivalOf = ({ parts }: Vehicle, answers: readonly number[], best: number): number | null => {
  if (parts.length < 2) return null;
  let rival: number | null = null;
  answers.forEach((value, k) => {
    if (Math.abs(k - best) <= 1 || value > RIVAL * answers[best]!) return;
    if (rival === null || value < answers[rival]!) rival = k;
  });
  return rival;
};

/** The lowest of the places reached from `start` by the stride's steps to either side. */
const climb = (start: number, value: number, respond: (along: number) => number, stride: Stride): number => {
  let along = start;
  let least = value;
  for (const step of stride.climb) {
    const origin = along;
    for (const next of [origin - step, origin + step]) {
      const answer = respond(next);
      if (answer < least) {
        least = answer;
        along = next;
      }
    }
  }
  return along;
};
