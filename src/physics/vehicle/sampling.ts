/**
 * Where the field at a vehicle is sampled, when few places have to stand for all the points of its mesh.
 *
 * The vertical field of wires at a distance H below a plate has no detail finer than about H: its spectrum falls as
 * e^(−kH). A lattice with steps of half of H, a little beyond the plate's rim, therefore says what the field is between its
 * places; what it leaves open falls as e^(−π·H/step).
 */
import type { PlatePart } from './parts';

/** A lattice over one plate, in the vehicle's frame, metres. Place (column, row) has the number column · ys.length + row. */
export interface PlateSampling {
  readonly height: number;
  /** Distance of the wires below that counts; never more than the real one. */
  readonly distance: number;
  readonly xs: Float64Array;
  /** Even steps of a whole number of grains. */
  readonly ys: Float64Array;
  /** Grains in one step of `ys`. */
  readonly grains: number;
  /** Every place, in the order of their numbers. */
  readonly pointX: Float64Array;
  readonly pointY: Float64Array;
}

/** Places along the vehicle are whole numbers of this apart, metres: what a pass in such steps samples serves many times. */
export const GRAIN = 0.05;

/** Steps over distance. Tests hold the error that they leave. */
const STEP = 0.5;
/** Where few samples do, closer ones cost nothing. */
const CLOSE_STEP = 0.38;
const FEW = 100;
/** Where the wires are known to be away: their field is smoother than that of wires below. */
const AWAY_STEP = 0.62;
/** Beyond the rim, in distances. */
const MARGIN = 0.2;
/** Wires lie at least about this deep, metres. */
const LEAST_DEPTH = 0.03;
/** Nearer plates are meshed no finer either: see `body.ts`. */
const LEAST_HEIGHT = 0.12;

/** Of every plate. `clearance`: how far from all of them wires are known to stay at least, metres. */
export const samplingsOf = (plates: readonly PlatePart[], clearance = 0): readonly PlateSampling[] => {
  const sampled = (step: number): PlateSampling[] =>
    plates.map((plate) => samplingOf(plate, clearance, step));
  if (clearance > 0) return sampled(AWAY_STEP);
  const usual = sampled(STEP);
  const count = usual.reduce((sum, { xs, ys }) => sum + xs.length * ys.length, 0);
  return count < FEW ? sampled(CLOSE_STEP) : usual;
};

const samplingOf = (plate: PlatePart, clearance: number, step: number): PlateSampling => {
  const distance = Math.max(Math.max(plate.height, LEAST_HEIGHT) + LEAST_DEPTH, clearance);
  const wanted = step * distance;
  const reach = (side: number): number => side + 2 * MARGIN * distance;
  const columns = Math.max(2, Math.ceil(reach(plate.width) / wanted) + 1);
  const grains = Math.max(1, Math.floor(wanted / GRAIN + 1e-9));
  const rows = Math.max(2, Math.ceil(reach(plate.length) / (grains * GRAIN)) + 1);
  const xs = even(plate.x, reach(plate.width) / (columns - 1), columns);
  const ys = even(plate.y, grains * GRAIN, rows);
  return {
    height: plate.height,
    distance,
    xs,
    ys,
    grains,
    pointX: Float64Array.from({ length: columns * rows }, (_, k) => xs[Math.floor(k / rows)]!),
    pointY: Float64Array.from({ length: columns * rows }, (_, k) => ys[k % rows]!)
  };
};

/** Exactly symmetric about the middle, if that is 0. */
const even = (middle: number, step: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => middle + (step * (2 * k - count + 1)) / 2);
