/**
 * The magnetic field over a plane, per ampere at the source's terminals. A vehicle adds the field of the currents that the
 * source drives in it, by the very mesh that its responses come from.
 */
import { noField, pointsOf, type FieldMaker } from '#physics/field/points';
import { windingSource } from '#physics/field/winding-field';
import type { Site } from '#plan/schema';
import type { Means } from '../means';
import type { Steps } from '../steps';
import { drivenIn, fieldOfDriven, unresolvedBy } from './driven';
import { frameOf, inPlane, place, type Frame } from './frame';
import { linesInSteps } from './lines';
import { metalIn } from './metal';
import type { FieldPicture, FieldWish } from './results';
import { leftOutOf, sourceOf, type SourceLoop } from './source';
import { touchesWire, wireCuts } from './wire-cuts';

/** Nodes that are done before others get their turn: a few milliseconds with a vehicle. */
const A_TURN = 600;

const nodeOn = (from: number, to: number, k: number, count: number): number =>
  count > 1 ? from + ((to - from) * k) / (count - 1) : (from + to) / 2;

function* nodesInSteps(
  sources: readonly FieldMaker[],
  loops: readonly SourceLoop[],
  frame: Frame,
  { columns, rows }: Pick<FieldWish, 'columns' | 'rows'>
): Steps<Pick<FieldPicture, 'field' | 'strongest_T'>> {
  const count = columns * rows;
  const values = new Float64Array(3 * count);
  let strongest = 0;
  for (let from = 0; from < count; from += A_TURN) {
    const size = Math.min(A_TURN, count - from);
    const points = pointsOf(size);
    const field = noField(size);
    for (let k = 0; k < size; k++) {
      const row = Math.floor((from + k) / columns);
      const u = nodeOn(frame.left, frame.right, (from + k) % columns, columns);
      place(frame, u, nodeOn(frame.low, frame.high, row, rows), points, k);
    }
    for (const source of sources) source.add(points, field);
    for (let k = 0; k < size; k++) {
      const parts = inPlane(frame, field, k);
      values.set(parts, 3 * (from + k));
      const strength = Math.hypot(...parts);
      if (strength > strongest && !touchesWire(loops, points.x[k]!, points.y[k]!, points.z[k]!))
        strongest = strength;
    }
    yield (from + size) / count;
  }
  return { field: values, strongest_T: strongest };
}

export function* drawFieldInSteps(site: Site, wish: FieldWish, means: Means): Steps<FieldPicture | null> {
  const source = sourceOf(site, wish.source, means);
  if (!source) return null;
  yield 0;
  const { plane, columns, rows, vehicle } = wish;
  const driven = vehicle && drivenIn(site, vehicle, source, means);
  if (vehicle && !driven) return null;
  yield 0;
  const frame = frameOf(plane);
  const isPlan = plane.kind === 'plan';
  const sources = [
    ...source.loops.map(({ model, current }) => windingSource(model.winding, current)),
    ...(driven ? [fieldOfDriven(driven)] : [])
  ];
  const nodes = yield* nodesInSteps(sources, source.loops, frame, wish);
  const metal = driven ? metalIn(driven.parts, driven.placement, frame, isPlan) : [];
  const lines =
    wish.lines > 0 ? yield* linesInSteps(sources, source.loops, frame, isPlan, metal, wish.lines) : [];
  return {
    plane,
    columns,
    rows,
    ...nodes,
    lines,
    wires: isPlan ? [] : wireCuts(source.loops, frame),
    metal,
    unresolved_m: driven ? unresolvedBy(driven) : 0,
    leftOut: leftOutOf(source, site, driven !== null)
  };
}
