/**
 * The strongest response of one pass. Each part of the vehicle is put over the middle and both ends of each loop, wide
 * gaps between these places are filled; the coarse body picks the strongest place, a parabola through its neighbours refines it,
 * and the fine body gives the figure there.
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

/** Between the outermost places at most this far apart, metres: no part of a vehicle answers more narrowly. */
const STEP = 1;
/** Places nearer than this to one another are one, metres. */
const RESOLUTION = 0.2;

const places = (vehicle: Vehicle, extents: readonly (readonly [number, number])[]): number[] => {
  const along = vehicle.parts.map((part) => part.centre[1]);
  const aimed = extents.flatMap(([from, to]) =>
    [from, (from + to) / 2, to].flatMap((target) => along.map((y) => target - y))
  );
  const distinct: number[] = [];
  for (const place of aimed.sort((a, b) => a - b)) {
    const last = distinct[distinct.length - 1];
    if (last !== undefined && place - last < RESOLUTION) continue;
    const gaps = last === undefined ? 1 : Math.ceil((place - last) / STEP);
    for (let k = 1; k < gaps; k++) distinct.push(last! + ((place - last!) * k) / gaps);
    distinct.push(place);
  }
  return distinct;
};

export const strongestOnPath = (
  circuit: SolvedCircuit,
  body: VehicleBody,
  vehicle: Vehicle,
  line: LaneLine,
  offset: number,
  extents: readonly (readonly [number, number])[]
): Strongest => {
  const heading = headingOf(line);
  const placed = (along: number) => {
    const [x, y] = onLine(line, along, offset);
    return { x, y, heading };
  };
  const respond = (along: number): number => quickEffect(circuit, body.coarse, placed(along));
  const tried = places(vehicle, extents);
  const answers = tried.map((along) => respond(along));
  const best = answers.reduce((least, value, k) => (value < answers[least]! ? k : least), 0);
  let along = tried[best]!;
  if (best > 0 && best < tried.length - 1) {
    along = vertex(tried.slice(best - 1, best + 2), answers.slice(best - 1, best + 2));
    if (respond(along) > answers[best]!) along = tried[best]!;
  }
  return {
    deltaLOverL: vehicleEffect(circuit, body.fine, placed(along)),
    at: onLine(line, along, offset),
    heading
  };
};

/** Abscissa of the lowest point of the parabola through three points whose middle one is the lowest. */
const vertex = (x: readonly number[], y: readonly number[]): number => {
  const [x0, x1, x2] = [x[0]!, x[1]!, x[2]!];
  const left = (x1 - x0) * (y[1]! - y[2]!);
  const right = (x1 - x2) * (y[1]! - y[0]!);
  const below = 2 * (left - right);
  if (below === 0) return x1;
  return Math.min(x2, Math.max(x0, x1 - ((x1 - x0) * left - (x1 - x2) * right) / below));
};
