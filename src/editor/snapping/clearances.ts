/** How much room there is: to the edges of the lane, and to the nearest loop on each side. */
import { add, dot, scale, subtract } from '#plan/geometry/points';
import { isHidden } from '#plan/layers';
import type { Loop, Point } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { boxAround, boxCentre, boxesTouch, type Box } from '../geometry/box';
import { laneAt, stationOf } from '../geometry/lanes';
import type { Scene } from '../scene';
import { includesRef } from '../selection';
import type { Ref } from '../types';
import { visibleBox } from '../viewport';
import { lengthText } from '../wording';
import { overlap, pointOn, spanOf, type Axis } from './axis';
import type { Guide } from './offer';

/** Metres: less is none. */
const FLUSH = 1e-4;
/** Metres within which points of an outline are equally far out. */
const LEVEL = 1e-6;

const boxes = new WeakMap<Loop, Box>();

/** A loop never changes, it is replaced. */
function boxOfLoop(loop: Loop): Box {
  const known = boxes.get(loop) ?? boxAround(outlineOf(loop.shape))!;
  boxes.set(loop, known);
  return known;
}

/** The middle of what reaches furthest in a direction. */
function furthest(outline: readonly Point[], direction: Point): Point {
  const reach = Math.max(...outline.map((point) => dot(point, direction)));
  const there = outline.filter((point) => reach - dot(point, direction) < LEVEL);
  return boxCentre(boxAround(there)!);
}

function toLaneEdges({ site }: Scene, outline: readonly Point[]): Guide[] {
  const lanes = site.lanes.filter(({ id }) => !isHidden(site, { kind: 'lane', id }));
  const found = laneAt(lanes, boxCentre(boxAround(outline)!));
  if (!found) return [];
  const [x, y] = found.station.ahead;
  return ([[-y, x], [y, -x]] as const).flatMap((aside): Guide[] => {
    const from = furthest(outline, aside);
    const station = stationOf(found.lane, from);
    if (!station) return [];
    const room = found.lane.width / 2 - dot(subtract(from, station.at), aside);
    if (room < FLUSH) return [];
    return [{ from, to: add(from, scale(aside, room)), label: lengthText(site, room) }];
  }); // prettier-ignore
}

function toLoops({ site, viewport }: Scene, own: Box, moving: readonly Ref[]): Guide[] {
  const view = visibleBox(viewport);
  const others = site.loops
    .filter(({ id }) => !includesRef(moving, { kind: 'loop', id }) && !isHidden(site, { kind: 'loop', id }))
    .map(boxOfLoop)
    .filter((box) => boxesTouch(box, view));
  return ([0, 1] as const).flatMap((axis): Guide[] => {
    const across: Axis = axis === 0 ? 1 : 0;
    const [mine, level] = [spanOf(own, axis), spanOf(own, across)];
    const beside = others.filter((box) => overlap(spanOf(box, across), level));
    const before = beside.filter((box) => spanOf(box, axis).high <= mine.low - FLUSH);
    const after = beside.filter((box) => spanOf(box, axis).low >= mine.high + FLUSH);
    const at = (box: Box): number => {
      const theirs = spanOf(box, across);
      return (Math.max(level.low, theirs.low) + Math.min(level.high, theirs.high)) / 2;
    };
    const guide = (box: Box, low: number, high: number): Guide => ({
      from: pointOn(axis, low, at(box)),
      to: pointOn(axis, high, at(box)),
      label: lengthText(site, high - low)
    });
    const nearest = (boxes: readonly Box[], far: (box: Box) => number): Box | undefined =>
      [...boxes].sort((a, b) => far(a) - far(b))[0];
    const left = nearest(before, (box) => -spanOf(box, axis).high);
    const right = nearest(after, (box) => spanOf(box, axis).low);
    return [
      ...(left ? [guide(left, spanOf(left, axis).high, mine.low)] : []),
      ...(right ? [guide(right, mine.high, spanOf(right, axis).low)] : [])
    ];
  });
}

const isLevel = ({ from, to }: Guide): boolean => Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]);

/** Without those that the snap's own guides say already. */
export function clearances(
  scene: Scene,
  outline: readonly Point[],
  moving: readonly Ref[],
  said: readonly Guide[]
): Guide[] {
  const box = boxAround(outline);
  if (!box) return [];
  const isSaid = (guide: Guide): boolean =>
    said.some(
      ({ label, ...line }) => label === guide.label && isLevel({ label, ...line }) === isLevel(guide)
    );
  return [...toLaneEdges(scene, outline), ...toLoops(scene, box, moving)].filter((guide) => !isSaid(guide));
}
