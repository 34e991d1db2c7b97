/** What lies under a point or in a box, in plan coordinates. */
import { contains, signedArea, sidesOf } from '#plan/geometry/polygons';
import { isHidden, isLocked } from '#plan/layers';
import type { Lane, Loop, Mark, Path, Point, Site, Steel } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { underlayOutline } from '#plan/underlays';
import { boxHolds, type Box } from './geometry/box';
import { laneOutline, leftEdge, rightEdge } from './geometry/lanes';
import { seenLine } from './geometry/marks';
import { distanceToSegments, segmentsOf, segmentTouchesBox } from './geometry/lines';
import { seenRefs } from './selection';
import { bodyOf, pointsOf } from './things';
import type { Ref } from './types';

export interface Pick {
  readonly ref: Ref;
  /** Ground touched on its surface, not on a line: a press there may also be the start of a box. */
  readonly surface: boolean;
}

interface Candidate extends Pick {
  /** Smaller is nearer to what was meant. */
  readonly score: number;
}

/** Lines under the pointer come before areas round it, and small areas before the larger ones about them. */
const AREA = 1e6;
/** Steel of less than this is an object, of more it is ground: m². */
const SMALL_STEEL = 4;

function loopScore(loop: Loop, at: Point, reach: number): number | null {
  const outline = outlineOf(loop.shape);
  const away = distanceToSegments(sidesOf(outline), at);
  if (away <= reach) return away;
  return contains(outline, at) ? AREA + Math.abs(signedArea(outline)) : null;
}

function markScore(mark: Mark, at: Point, reach: number): number | null {
  const [first] = mark.points;
  const segments =
    mark.points.length === 1 && first ? [{ from: first, to: first }] : segmentsOf(seenLine(mark));
  const away = distanceToSegments(segments, at);
  return away <= reach ? away : null;
}

function pathScore({ points }: Path, at: Point, reach: number): number | null {
  const away = distanceToSegments(segmentsOf(points), at);
  return away <= reach ? away : null;
}

function laneScore(lane: Lane, at: Point, reach: number): number | null {
  const lines = [lane.centreline, leftEdge(lane), rightEdge(lane)].flatMap(segmentsOf);
  const away = distanceToSegments(lines, at);
  if (away <= reach) return away;
  const outline = laneOutline(lane);
  return contains(outline, at) ? AREA + Math.abs(signedArea(outline)) : null;
}

function steelScore({ outline }: Steel, at: Point, reach: number): number | null {
  const away = distanceToSegments(sidesOf(outline), at);
  if (away <= reach) return away;
  return contains(outline, at) ? AREA + Math.abs(signedArea(outline)) : null;
}

/** A cover is taken hold of anywhere, a mat under the whole road by its edge. */
const isGround = (ref: Ref, score: number): boolean =>
  (ref.kind === 'lane' && score >= AREA) || (ref.kind === 'steel' && score >= AREA + SMALL_STEEL);

function candidates<T>(
  things: readonly T[],
  ref: (thing: T, index: number) => Ref,
  score: (thing: T) => number | null,
  isSeen: (ref: Ref) => boolean
): Candidate[] {
  return things
    .flatMap((thing, index) => {
      const found = score(thing);
      if (found === null) return [];
      const made = ref(thing, index);
      if (!isSeen(made)) return [];
      return [{ ref: made, score: found, surface: isGround(made, found) }];
    })
    .sort((a, b) => a.score - b.score);
}

/** Everything under the point, uppermost first: vehicles, loops, marks, paths, then lanes and steel, then pictures. */
export function pickAll(site: Site, at: Point, reach: number): Pick[] {
  const isSeen = (ref: Ref): boolean => !isHidden(site, ref);
  return [
    ...candidates(
      site.probes,
      (_, index): Ref => ({ kind: 'probe', id: String(index) }),
      (probe) => {
        const body = bodyOf(site, probe);
        return contains(body, at) || distanceToSegments(sidesOf(body), at) <= reach ? 0 : null;
      },
      isSeen
    ).reverse(),
    ...candidates(
      site.loops,
      ({ id }): Ref => ({ kind: 'loop', id }),
      (loop) => loopScore(loop, at, reach),
      isSeen
    ),
    ...candidates(
      site.marks,
      ({ id }): Ref => ({ kind: 'mark', id }),
      (mark) => markScore(mark, at, reach),
      isSeen
    ),
    ...candidates(
      site.paths,
      ({ id }): Ref => ({ kind: 'path', id }),
      (path) => pathScore(path, at, reach),
      isSeen
    ),
    ...[
      ...candidates(
        site.lanes,
        ({ id }): Ref => ({ kind: 'lane', id }),
        (lane) => laneScore(lane, at, reach),
        isSeen
      ),
      ...candidates(
        site.steel,
        ({ id }): Ref => ({ kind: 'steel', id }),
        (steel) => steelScore(steel, at, reach),
        isSeen
      )
    ].sort((a, b) => a.score - b.score),
    ...underlaysAt(site, at)
  ];
}

/** Pictures in sight, the one that lies on the others first. */
const underlaysAt = (site: Site, at: Point): Pick[] =>
  site.underlays
    .filter(({ id }) => !isHidden(site, { kind: 'underlay', id }))
    .filter((underlay) => contains(underlayOutline(underlay), at))
    .map(({ id }): Pick => ({ ref: { kind: 'underlay', id }, surface: true }))
    .reverse();

/** A locked picture is the paper that is drawn on: only who looks beneath it means it. */
const isPaper = (site: Site, ref: Ref): boolean => ref.kind === 'underlay' && isLocked(site, ref);

export const pickAt = (site: Site, at: Point, reach: number): Pick | null =>
  pickAll(site, at, reach).find(({ ref }) => !isPaper(site, ref)) ?? null;

/** Things wholly inside the box or, with `touching`, also those that it only crosses. */
export function pickInBox(site: Site, box: Box, touching: boolean): Ref[] {
  return seenRefs(site).filter((ref) => {
    const points = pointsOf(site, ref);
    if (points.length === 0 || isPaper(site, ref)) return false;
    if (!touching) return points.every((point) => boxHolds(box, point));
    if (points.some((point) => boxHolds(box, point))) return true;
    const segments = ref.kind === 'mark' || ref.kind === 'path' ? segmentsOf(points) : sidesOf(points);
    return segments.some((segment) => segmentTouchesBox(segment, box));
  });
}
