/**
 * Lines with rounded corners: straight sides, and at each inner corner an arc that touches both of its sides.
 *
 * Such a line is kept as a polyline. Its points lie on the arcs, so between two of them the arc stands off its chord by the
 * sagitta r·(1 − cos(φ/2)), φ the angle that the chord spans; the pieces are as many as keep that under `CHORD_ERROR`.
 */
import type { Point } from '../schema';
import { add, cross, distance, dot, scale, subtract } from './points';

export interface Bent {
  /** Start, corners, end; no two neighbours in one place. */
  readonly points: readonly Point[];
  /** Metres, one a point; those of the two ends say nothing. */
  readonly radii: readonly number[];
}

/** Metres that an arc may stand off the polyline that is kept of it. */
export const CHORD_ERROR = 0.005;
/** Of a side's length: rounding may not make a bend that fits exactly too large. */
const ROUNDING = 1e-7;
/** Sharper turns than this, radians short of a half turn, have no room for an arc of any size. */
const HAIRPIN = 1e-3;

const unit = (from: Point, to: Point): Point => scale(subtract(to, from), 1 / (distance(from, to) || 1));

/** By how much the line turns at a point, radians, positive to the left; 0 at the ends. */
export function turnAt(points: readonly Point[], index: number): number {
  const [before, at, after] = [points[index - 1], points[index], points[index + 1]];
  if (!before || !at || !after) return 0;
  const [into, out] = [unit(before, at), unit(at, after)];
  return Math.atan2(cross(into, out), dot(into, out));
}

const isHairpin = (points: readonly Point[], index: number): boolean =>
  Math.abs(turnAt(points, index)) > Math.PI - HAIRPIN;

/** Length that an arc of radius 1 takes from each of the two sides. */
const tangentPerRadius = (points: readonly Point[], index: number): number =>
  Math.tan(Math.abs(turnAt(points, index)) / 2);

const radiusAt = ({ points, radii }: Bent, index: number): number =>
  index === 0 || index >= points.length - 1 || isHairpin(points, index) ? 0 : (radii[index] ?? 0);

/** Length of side that the arc at a corner takes, metres. */
const tangentAt = (bent: Bent, index: number): number =>
  radiusAt(bent, index) * tangentPerRadius(bent.points, index);

/** The largest radius that the sides leave for one corner while the others keep theirs, metres; 0 at the ends. */
export function largestRadius(bent: Bent, index: number): number {
  const { points } = bent;
  const [before, at, after] = [points[index - 1], points[index], points[index + 1]];
  if (!before || !at || !after || isHairpin(points, index)) return 0;
  const room = Math.min(
    distance(before, at) - tangentAt(bent, index - 1),
    distance(at, after) - tangentAt(bent, index + 1)
  );
  const per = tangentPerRadius(points, index);
  return per > 0 ? Math.max(0, room) / per : Infinity;
}

/** The radii as far as the sides have room for them: two arcs that want more of a side than it has share it. */
export function fittedRadii(bent: Bent): number[] {
  const { points } = bent;
  const tangents = points.map((_, index) => tangentAt(bent, index));
  const share = points.map(() => 1);
  for (let side = 0; side + 1 < points.length; side++) {
    const length = distance(points[side]!, points[side + 1]!);
    const wanted = tangents[side]! + tangents[side + 1]!;
    if (wanted <= length * (1 + ROUNDING)) continue;
    for (const end of [side, side + 1]) share[end] = Math.min(share[end]!, length / wanted);
  }
  return points.map((_, index) => radiusAt(bent, index) * share[index]!);
}

/** How many chords keep an arc of that radius (m) and angle (radians) within the error (m). */
export function chordCount(radius: number, angle: number, error = CHORD_ERROR): number {
  const widest = radius <= error ? Math.PI / 2 : 2 * Math.acos(1 - error / radius);
  return Math.max(1, Math.ceil(Math.abs(angle) / widest - 1e-9));
}

/** Points of the arc that rounds one corner, from where it leaves the first side to where it meets the second. */
function arcAt(points: readonly Point[], index: number, radius: number): Point[] {
  const corner = points[index]!;
  const turn = turnAt(points, index);
  const tangent = radius * Math.tan(Math.abs(turn) / 2);
  if (!(tangent > 0)) return [corner];
  const into = unit(points[index - 1]!, corner);
  const start = subtract(corner, scale(into, tangent));
  const left: Point = [-into[1], into[0]];
  const side = Math.sign(turn);
  const centre = add(start, scale(left, side * radius));
  const pieces = chordCount(radius, turn);
  return Array.from({ length: pieces + 1 }, (_, piece) => {
    const angle = (turn * piece) / pieces;
    const out = scale(left, -side * radius);
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return add(centre, [out[0] * c - out[1] * s, out[0] * s + out[1] * c]);
  });
}

/** Nearer than this, metres, two points of a line are one. */
const SAME = 1e-6;

/** The line as a polyline, its radii as far as they fit. */
export function bentLine(bent: Bent): Point[] {
  const radii = fittedRadii(bent);
  const drawn = bent.points.flatMap((point, index) =>
    radii[index]! > 0 ? arcAt(bent.points, index, radii[index]!) : [point]
  );
  return drawn.filter((point, index) => index === 0 || distance(point, drawn[index - 1]!) > SAME);
}

/** An arc is told by corners of less than this turn each, radians. */
const WIDEST_TURN = (100 * Math.PI) / 180;
/** The chord of an arc may turn away from its beginning by so much, radians: what is left is nearly a full circle. */
const FURTHEST = (165 * Math.PI) / 180;

/**
 * The arc that leaves `from` in the direction `ahead` (a unit vector) and ends at `to`, as corners with one radius in
 * metres; its end is not among them. No corners: straight ahead. Null: behind, where no arc leads.
 */
export function arcTo(
  from: Point,
  ahead: Point,
  to: Point
): { readonly corners: readonly Point[]; readonly radius: number } | null {
  const chord = subtract(to, from);
  const away = Math.atan2(cross(ahead, chord), dot(ahead, chord));
  if (Math.abs(away) > FURTHEST) return null;
  const radius = Math.hypot(...chord) / (2 * Math.abs(Math.sin(away)));
  if (!Number.isFinite(radius) || Math.abs(away) < 1e-4) return { corners: [], radius: 0 };
  const count = Math.max(1, Math.ceil((2 * Math.abs(away)) / WIDEST_TURN));
  const step = (2 * away) / count;
  const tangent = radius * Math.tan(Math.abs(step) / 2);
  const corners: Point[] = [];
  let [at, direction] = [from, ahead];
  for (let piece = 0; piece < count; piece++) {
    const corner = add(at, scale(direction, tangent));
    const [c, s] = [Math.cos(step), Math.sin(step)];
    direction = [direction[0] * c - direction[1] * s, direction[0] * s + direction[1] * c];
    corners.push(corner);
    at = add(corner, scale(direction, tangent));
  }
  return { corners, radius };
}

/**
 * The line that runs beside another at a fixed distance, `offset` metres to its left: arcs about the same centres. Null
 * where it would turn inside out, because a bend is tighter, or a side shorter, than the offset asks for.
 */
export function bentBeside(bent: Bent, offset: number): Bent | null {
  if (offset === 0) return bent;
  const { points } = bent;
  const moved = points.map((point, index): Point => {
    const before = points[index - 1];
    const after = points[index + 1];
    const into = before ? unit(before, point) : unit(point, after ?? point);
    const out = after ? unit(point, after) : into;
    const half = 1 + dot(into, out);
    const normal: Point = [-(into[1] + out[1]), into[0] + out[0]];
    return add(point, scale(normal, offset / half));
  });
  const radii = points.map((_, index) => {
    const radius = radiusAt(bent, index);
    return radius > 0 ? radius - offset * Math.sign(turnAt(points, index)) : 0;
  });
  const turnsOver = points.some((point, index) => {
    const next = points[index + 1];
    if (!next) return false;
    const side = subtract(moved[index + 1]!, moved[index]!);
    return !(dot(side, subtract(next, point)) > 0);
  });
  return turnsOver || radii.some((radius) => radius < 0) ? null : { points: moved, radii };
}
