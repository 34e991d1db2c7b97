/** Arcs, ellipses and splines as points on them. */
import type { Point } from '#plan/schema';

/** A share of the radius by which the chord may miss its arc, least and most. */
const FINEST = 2e-6;
const COARSEST = 5e-4;
/** The same where it is not known how large the drawing's unit is. */
const USUAL = 5e-5;
/** Metres by which a chord may miss its arc where the unit is known. */
const MISS = 4e-5;

/** By which share of its radius the chord of an arc may miss it; `metresPerUnit` null where nobody knows. */
function fineness(radius: number, metresPerUnit: number | null): number {
  if (metresPerUnit === null) return USUAL;
  return Math.min(COARSEST, Math.max(FINEST, MISS / (radius * metresPerUnit)));
}

/** The chord of a turn φ misses its arc by r(1 − cos(φ/2)). */
const stepsFor = (sweep: number, share: number): number =>
  Math.max(1, Math.ceil(Math.abs(sweep) / (2 * Math.acos(1 - share))));

export interface Ellipse {
  readonly centre: Point;
  /** From the centre to the end of the longer axis. */
  readonly major: Point;
  /** The shorter axis as a share of the longer one; below nought it lies on the other side. */
  readonly ratio: number;
  /** Radians from the longer axis, counter-clockwise where the ratio is above nought. */
  readonly from: number;
  readonly to: number;
}

export function ellipsePoints({ centre, major, ratio, from, to }: Ellipse, unit: number | null): Point[] {
  const sweep = to > from ? to - from : to - from + 2 * Math.PI;
  const steps = stepsFor(sweep, fineness(Math.hypot(...major), unit));
  const minor: Point = [-major[1] * ratio, major[0] * ratio];
  return Array.from({ length: steps + 1 }, (_, index): Point => {
    const turn = from + (sweep * index) / steps;
    const [along, across] = [Math.cos(turn), Math.sin(turn)];
    return [
      centre[0] + major[0] * along + minor[0] * across,
      centre[1] + major[1] * along + minor[1] * across
    ];
  });
}

/**
 * The arc from one corner of a line to the next, without the first. `bulge` is the tangent of a quarter of its turn, above
 * nought counter-clockwise.
 */
export function bulgePoints(from: Point, to: Point, bulge: number, unit: number | null): Point[] {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const chord = Math.hypot(x, y);
  if (bulge === 0 || chord === 0) return [to];
  const sweep = 4 * Math.atan(bulge);
  const radius = (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
  const away = (1 - bulge * bulge) / (4 * bulge);
  const centre: Point = [(from[0] + to[0]) / 2 - y * away, (from[1] + to[1]) / 2 + x * away];
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const steps = stepsFor(sweep, fineness(radius, unit));
  return Array.from({ length: steps }, (_, index): Point => {
    if (index === steps - 1) return to;
    const turn = start + (sweep * (index + 1)) / steps;
    return [centre[0] + radius * Math.cos(turn), centre[1] + radius * Math.sin(turn)];
  });
}

export interface Spline {
  readonly degree: number;
  readonly knots: readonly number[];
  readonly controls: readonly Point[];
  readonly weights: readonly number[] | null;
}

/** Points of each stretch between two knots. */
const PER_STRETCH = 24;
const HIGHEST_DEGREE = 12;

/** De Boor's algorithm in homogeneous coordinates, within the stretch that begins at the knot `k`. */
function splinePoint({ degree, knots, controls, weights }: Spline, k: number, at: number): Point {
  const near = Array.from({ length: degree + 1 }, (_, index): [number, number, number] => {
    const place = k - degree + index;
    const [x, y] = controls[place]!;
    const weight = weights?.[place] ?? 1;
    return [x * weight, y * weight, weight];
  });
  for (let level = 1; level <= degree; level++) {
    for (let index = degree; index >= level; index--) {
      const first = knots[k - degree + index]!;
      const span = knots[k + 1 + index - level]! - first;
      const share = span > 0 ? (at - first) / span : 0;
      const [before, here] = [near[index - 1]!, near[index]!];
      near[index] = [0, 1, 2].map((axis) => before[axis]! + share * (here[axis]! - before[axis]!)) as [
        number,
        number,
        number
      ];
    }
  }
  const [x, y, weight] = near[degree]!;
  return [x / weight, y / weight];
}

/** Null for one whose knots and points do not fit together. */
export function splinePoints(spline: Spline): Point[] | null {
  const { degree, knots, controls, weights } = spline;
  const isWhole =
    Number.isInteger(degree) && degree >= 1 && degree <= HIGHEST_DEGREE && controls.length > degree;
  if (!isWhole || knots.length !== controls.length + degree + 1) return null;
  if (weights && (weights.length !== controls.length || weights.some((weight) => !(weight > 0)))) return null;
  if (knots.some((knot, index) => index > 0 && knot < knots[index - 1]!)) return null;
  const points: Point[] = [];
  for (let k = degree; k < controls.length; k++) {
    const [from, to] = [knots[k]!, knots[k + 1]!];
    if (!(to > from)) continue;
    const steps = degree === 1 ? 1 : PER_STRETCH;
    for (let step = points.length === 0 ? 0 : 1; step <= steps; step++)
      points.push(splinePoint(spline, k, from + ((to - from) * step) / steps));
  }
  return points;
}
