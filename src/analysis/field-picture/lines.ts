/** The field lines of a picture. */
import { noField, pointsOf, type FieldMaker } from '#physics/field/points';
import type { Point } from '#plan/schema';
import type { Steps } from '../steps';
import { clipLine } from './clip';
import { inPlane, place, type Frame } from './frame';
import { evenPlaces, placesOnBorder, placesOnPlan, rowOnSection } from './seeds';
import type { SourceLoop } from './source';
import { traceLines, type Directions } from './trace';
import { touchesWire } from './wire-cuts';

/** A line ends where no more than this share of the field lies in the plane. */
const LEVEL = 0.004;
/** How far beyond the picture a line is followed, in its own sizes: it may come back. */
const BEYOND = 0.75;

/** The whole field at places of the plane. */
const fieldAt = (
  sources: readonly FieldMaker[],
  frame: Frame,
  u: ArrayLike<number>,
  v: ArrayLike<number>,
  count = u.length
) => {
  const points = pointsOf(count);
  for (let k = 0; k < count; k++) place(frame, u[k]!, v[k]!, points, k);
  const field = noField(count);
  for (const source of sources) source.add(points, field);
  return { points, field };
};

const directionsOf =
  (sources: readonly FieldMaker[], frame: Frame): Directions =>
  (count, u, v, alongU, alongV) => {
    const { field } = fieldAt(sources, frame, u, v, count);
    for (let k = 0; k < count; k++) {
      const [a, b, c] = inPlane(frame, field, k);
      const level = Math.hypot(a, b);
      const isThere = level > LEVEL * Math.abs(c) && level > 0;
      alongU[k] = isThere ? a / level : 0;
      alongV[k] = isThere ? b / level : 0;
    }
  };

/** Of what goes one way and the other, the sense that has more of it; the other counts as nothing. */
const strongerSense = (flux: readonly number[]): number[] => {
  const sum = flux.reduce((all, value) => all + value, 0);
  return flux.map((value) => Math.max(0, sum >= 0 ? value : -value));
};

const seedsOnSection = (
  sources: readonly FieldMaker[],
  loops: readonly SourceLoop[],
  frame: Frame,
  count: number
): Point[] => {
  const { ends, v } = rowOnSection(loops, frame);
  const middles = ends.slice(1).map((end, k) => (end + ends[k]!) / 2);
  const { field, points } = fieldAt(
    sources,
    frame,
    middles,
    middles.map(() => v)
  );
  const through = middles.map((_, k) => {
    if (touchesWire(loops, points.x[k]!, points.y[k]!, points.z[k]!)) return 0;
    return inPlane(frame, field, k)[1] * (ends[k + 1]! - ends[k]!);
  });
  return evenPlaces(strongerSense(through), count).map((place): Point => {
    const k = Math.min(middles.length - 1, Math.floor(place));
    return [ends[k]! + (place - k) * (ends[k + 1]! - ends[k]!), v];
  });
};

const seedsOnPlan = (
  sources: readonly FieldMaker[],
  loops: readonly SourceLoop[],
  frame: Frame,
  count: number
): Point[] => {
  const onWires = placesOnPlan(loops, frame);
  const border = onWires.length > 0 ? null : placesOnBorder(frame);
  const places = border ? border.map(({ place }) => place) : onWires;
  const { field } = fieldAt(
    sources,
    frame,
    places.map(([u]) => u),
    places.map(([, v]) => v)
  );
  const parts = places.map((_, k) => inPlane(frame, field, k));
  const flux = border
    ? strongerSense(border.map(({ inwards }, k) => inwards[0] * parts[k]![0] + inwards[1] * parts[k]![1]))
    : parts.map(([a, b]) => Math.hypot(a, b));
  // two seeds in one place would be one line twice
  const chosen = new Set(evenPlaces(flux, count).map(Math.floor));
  return places.filter((_, k) => chosen.has(k));
};

export function* linesInSteps(
  sources: readonly FieldMaker[],
  loops: readonly SourceLoop[],
  frame: Frame,
  isPlan: boolean,
  metal: readonly (readonly Point[])[],
  count: number
): Steps<readonly (readonly Point[])[]> {
  const seeds = (isPlan ? seedsOnPlan : seedsOnSection)(sources, loops, frame, count);
  if (seeds.length === 0) return [];
  const { left, right, low, high } = frame;
  const beyond = BEYOND * Math.max(right - left, high - low);
  const ground = {
    left: left - beyond,
    right: right + beyond,
    low: low - beyond,
    high: high + beyond,
    // no field passes through the metal; where its mesh lets some through, the line ends there
    walls: isPlan ? [] : metal
  };
  const lines = yield* traceLines(seeds, directionsOf(sources, frame), ground);
  return lines.flatMap((line) => clipLine(line, frame));
}
