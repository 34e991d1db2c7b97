/** What on the plan a moving thing can be put straight with; collected once, when the gesture begins. */
import type { Segment } from '#plan/geometry/segments';
import { sidesOf } from '#plan/geometry/polygons';
import type { Lane, Loop, Mark, Path, Point, Site, Steel } from '#plan/schema';
import { centreOf, outlineOf } from '#plan/shapes/index';
import { boxAround, boxesTouch, type Box } from '../geometry/box';
import { leftEdge, rightEdge } from '../geometry/lanes';
import { segmentsOf } from '../geometry/lines';
import { markLine } from '../geometry/marks';
import { includesRef } from '../selection';
import type { Ref } from '../types';
import { middleOf, spanOf, type Axis } from './axis';

/** A value on one axis. Edges attract edges and centres attract centres; a lone point goes to either. */
export interface AxisTarget {
  readonly value: number;
  readonly match: 'edge' | 'centre';
  readonly what: string;
  /** Extent of the thing that the value belongs to. */
  readonly box: Box;
}

export interface PointTarget {
  readonly at: Point;
  readonly what: string;
}

/** A line that runs along neither axis. */
export interface LineTarget {
  readonly segment: Segment;
  readonly match: 'edge' | 'centre';
  readonly what: string;
}

export interface Targets {
  readonly axes: readonly [AxisTarget[], AxisTarget[]];
  readonly points: PointTarget[];
  readonly lines: LineTarget[];
  /** The loops' extents, for equal gaps. */
  readonly boxes: Box[];
}

const UPRIGHT = 1e-6;

function addLine(targets: Targets, segment: Segment, match: LineTarget['match'], what: string): void {
  const box = boxAround([segment.from, segment.to])!;
  const upright = box.right - box.left < UPRIGHT;
  const level = box.top - box.bottom < UPRIGHT;
  if (upright && level) return;
  if (upright) targets.axes[0].push({ value: box.left, match, what, box });
  else if (level) targets.axes[1].push({ value: box.bottom, match, what, box });
  else targets.lines.push({ segment, match, what });
}

function addLoop(targets: Targets, loop: Loop): void {
  const name = loop.name || loop.id;
  const outline = outlineOf(loop.shape);
  const box = boxAround(outline)!;
  targets.boxes.push(box);
  for (const axis of [0, 1] as const satisfies readonly Axis[]) {
    const span = spanOf(box, axis);
    targets.axes[axis].push(
      { value: span.low, match: 'edge', what: `edge of ${name}`, box },
      { value: middleOf(span), match: 'centre', what: `centre of ${name}`, box },
      { value: span.high, match: 'edge', what: `edge of ${name}`, box }
    );
  }
  targets.points.push({ at: centreOf(loop.shape), what: `centre of ${name}` });
  if (loop.shape.kind === 'circle') return;
  for (const { from, to } of sidesOf(outline)) {
    targets.points.push({ at: from, what: `corner of ${name}` });
    // Upright sides are there already, as edges of the extent.
    if (Math.abs(from[0] - to[0]) > UPRIGHT && Math.abs(from[1] - to[1]) > UPRIGHT)
      targets.lines.push({ segment: { from, to }, match: 'edge', what: `edge of ${name}` });
  }
}

function addLane(targets: Targets, lane: Lane, centresOnly: boolean): void {
  for (const segment of segmentsOf(lane.centreline)) addLine(targets, segment, 'centre', 'lane centre');
  if (centresOnly) return;
  for (const edge of [leftEdge(lane), rightEdge(lane)])
    for (const segment of segmentsOf(edge)) addLine(targets, segment, 'edge', 'lane edge');
  for (const at of lane.centreline) targets.points.push({ at, what: 'lane centre' });
}

function addMark(targets: Targets, mark: Mark): void {
  const what = mark.kind.replace('-', ' ');
  for (const segment of segmentsOf(markLine(mark))) addLine(targets, segment, 'edge', what);
  for (const at of mark.points) targets.points.push({ at, what });
}

function addPath(targets: Targets, { points }: Path): void {
  for (const at of points) targets.points.push({ at, what: 'point of a path' });
}

function addSteel(targets: Targets, { kind, outline }: Steel): void {
  for (const side of sidesOf(outline)) addLine(targets, side, 'edge', `edge of the steel ${kind}`);
  for (const at of outline) targets.points.push({ at, what: `corner of the steel ${kind}` });
}

/** Targets in sight, apart from what moves. With `lanesOnly` nothing but the middles of lanes. */
export function collectTargets(site: Site, moving: readonly Ref[], view: Box, lanesOnly = false): Targets {
  const targets: Targets = { axes: [[], []], points: [], lines: [], boxes: [] };
  const counts = (ref: Ref, points: readonly Point[]): boolean => {
    const box = boxAround(points);
    return box !== null && boxesTouch(box, view) && !includesRef(moving, ref);
  };
  for (const lane of site.lanes)
    if (counts({ kind: 'lane', id: lane.id }, lane.centreline)) addLane(targets, lane, lanesOnly);
  if (lanesOnly) return targets;
  for (const loop of site.loops)
    if (counts({ kind: 'loop', id: loop.id }, outlineOf(loop.shape))) addLoop(targets, loop);
  for (const mark of site.marks)
    if (counts({ kind: 'mark', id: mark.id }, mark.points)) addMark(targets, mark);
  for (const path of site.paths)
    if (counts({ kind: 'path', id: path.id }, path.points)) addPath(targets, path);
  for (const steel of site.steel)
    if (counts({ kind: 'steel', id: steel.id }, steel.outline)) addSteel(targets, steel);
  return targets;
}
