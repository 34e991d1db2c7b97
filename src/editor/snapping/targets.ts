/** What on the plan a moving thing can be put straight with; collected once, when the gesture begins. */
import { withinSentence } from '#i18n/locale';
import { t } from '#i18n/message';
import type { Segment } from '#plan/geometry/segments';
import { sidesOf } from '#plan/geometry/polygons';
import { isHidden } from '#plan/layers';
import type { Lane, Loop, Mark, Path, Point, Site, Steel } from '#plan/schema';
import { centreOf, outlineOf } from '#plan/shapes/index';
import { boxAround, boxesTouch, type Box } from '../geometry/box';
import { leftEdge, rightEdge } from '../geometry/lanes';
import { segmentsOf } from '../geometry/lines';
import { markLine } from '../geometry/marks';
import { includesRef } from '../selection';
import type { Ref, SnapSettings } from '../types';
import { spanOf, type Axis } from './axis';

/** What the label calls a target; written only when it is shown. */
type Naming = () => string;

/** A value on one axis. Edges attract edges and centres attract centres; a lone point goes to either. */
export interface AxisTarget {
  readonly value: number;
  readonly match: 'edge' | 'centre';
  readonly what: Naming;
  /** Extent of the thing that the value belongs to. */
  readonly box: Box;
}

export interface PointTarget {
  readonly at: Point;
  /** A corner comes before a centre. */
  readonly match: 'corner' | 'centre';
  readonly what: Naming;
}

/** A line that runs along neither axis. */
interface LineTarget {
  readonly segment: Segment;
  readonly match: 'edge' | 'centre';
  readonly what: Naming;
}

export interface Targets {
  readonly axes: readonly [AxisTarget[], AxisTarget[]];
  readonly points: PointTarget[];
  readonly lines: LineTarget[];
  /** The loops' extents, for equal gaps. */
  readonly boxes: Box[];
}

const UPRIGHT = 1e-6;

function addLine(targets: Targets, segment: Segment, match: LineTarget['match'], what: Naming): void {
  const box = boxAround([segment.from, segment.to])!;
  const upright = box.right - box.left < UPRIGHT;
  const level = box.top - box.bottom < UPRIGHT;
  if (upright && level) return;
  if (upright) targets.axes[0].push({ value: box.left, match, what, box });
  else if (level) targets.axes[1].push({ value: box.bottom, match, what, box });
  else targets.lines.push({ segment, match, what });
}

const named = (key: 'snap.corner' | 'snap.centre' | 'snap.edge' | 'snap.pathPoint', name: string): Naming => {
  return () => t(key, { name });
};

/** What is switched on among the objects. */
type Attraction = Pick<SnapSettings, 'corners' | 'centres' | 'edges' | 'lanes' | 'gaps'>;

const EVERYTHING: Attraction = { corners: true, centres: true, edges: true, lanes: true, gaps: true };

function addLoop(targets: Targets, loop: Loop, on: Attraction): void {
  const name = loop.name || loop.id;
  const [corner, centre, edge] = [
    named('snap.corner', name),
    named('snap.centre', name),
    named('snap.edge', name)
  ];
  const outline = outlineOf(loop.shape);
  const box = boxAround(outline)!;
  if (on.gaps) targets.boxes.push(box);
  for (const axis of [0, 1] as const satisfies readonly Axis[]) {
    const { low, high } = spanOf(box, axis);
    if (on.centres) targets.axes[axis].push({ value: (low + high) / 2, match: 'centre', what: centre, box });
    if (on.edges)
      for (const value of [low, high]) targets.axes[axis].push({ value, match: 'edge', what: edge, box });
  }
  if (on.centres) targets.points.push({ at: centreOf(loop.shape), match: 'centre', what: centre });
  if (loop.shape.kind === 'circle') return;
  for (const { from, to } of sidesOf(outline)) {
    if (on.corners) targets.points.push({ at: from, match: 'corner', what: corner });
    // Upright sides are there already, as edges of the extent.
    if (on.edges && Math.abs(from[0] - to[0]) > UPRIGHT && Math.abs(from[1] - to[1]) > UPRIGHT)
      targets.lines.push({ segment: { from, to }, match: 'edge', what: edge });
  }
}

function addLane(targets: Targets, lane: Lane, centresOnly: boolean): void {
  const { name } = lane;
  const centre: Naming = () => (name ? t('snap.laneCentreOf', { name }) : t('snap.laneCentre'));
  const side: Naming = () => (name ? t('snap.laneEdgeOf', { name }) : t('snap.laneEdge'));
  for (const segment of segmentsOf(lane.centreline)) addLine(targets, segment, 'centre', centre);
  if (centresOnly) return;
  for (const edge of [leftEdge(lane), rightEdge(lane)])
    for (const segment of segmentsOf(edge)) addLine(targets, segment, 'edge', side);
  for (const at of lane.centreline) targets.points.push({ at, match: 'centre', what: centre });
}

function addMark(targets: Targets, mark: Mark, on: Attraction): void {
  const what: Naming = () => withinSentence(t(`mark.${mark.kind}`));
  if (on.edges) for (const segment of segmentsOf(markLine(mark))) addLine(targets, segment, 'edge', what);
  if (on.corners) for (const at of mark.points) targets.points.push({ at, match: 'corner', what });
}

function addPath(targets: Targets, { name, id, points }: Path): void {
  const what = named('snap.pathPoint', name || id);
  for (const at of points) targets.points.push({ at, match: 'corner', what });
}

function addSteel(targets: Targets, { kind, outline }: Steel, on: Attraction): void {
  const what = (key: 'snap.edge' | 'snap.corner'): Naming => {
    return () => t(key, { name: t(kind === 'plate' ? 'snap.plate' : 'snap.mat') });
  };
  if (on.edges) for (const side of sidesOf(outline)) addLine(targets, side, 'edge', what('snap.edge'));
  if (on.corners)
    for (const at of outline) targets.points.push({ at, match: 'corner', what: what('snap.corner') });
}

export interface TargetOptions {
  readonly attraction?: Attraction;
  /** Nothing but the middles of lanes. */
  readonly lanesOnly?: boolean;
}

/** Targets in sight, apart from what moves and from what is hidden; what is locked still attracts. */
export function collectTargets(
  site: Site,
  moving: readonly Ref[],
  view: Box,
  { attraction: on = EVERYTHING, lanesOnly = false }: TargetOptions = {}
): Targets {
  const targets: Targets = { axes: [[], []], points: [], lines: [], boxes: [] };
  const counts = (ref: Ref, points: readonly Point[]): boolean => {
    const box = boxAround(points);
    return box !== null && boxesTouch(box, view) && !includesRef(moving, ref) && !isHidden(site, ref);
  };
  for (const lane of on.lanes ? site.lanes : [])
    if (counts({ kind: 'lane', id: lane.id }, lane.centreline)) addLane(targets, lane, lanesOnly);
  if (lanesOnly) return targets;
  for (const loop of site.loops)
    if (counts({ kind: 'loop', id: loop.id }, outlineOf(loop.shape))) addLoop(targets, loop, on);
  for (const mark of site.marks)
    if (counts({ kind: 'mark', id: mark.id }, mark.points)) addMark(targets, mark, on);
  for (const path of on.corners ? site.paths : [])
    if (counts({ kind: 'path', id: path.id }, path.points)) addPath(targets, path);
  for (const steel of site.steel)
    if (counts({ kind: 'steel', id: steel.id }, steel.outline)) addSteel(targets, steel, on);
  return targets;
}
