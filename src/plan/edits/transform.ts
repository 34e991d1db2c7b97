/** Moving and turning things: the whole group goes, or goes as far as the coordinates allow. */
import { normalAngle, rotate } from '../geometry/points';
import type { Circuit, Loop, Mark, Point, Shape, Site } from '../schema';
import { moveShape, rotateShape } from '../shapes/index';
import { clampShift, isInBounds } from './limits';
import { mapped, withList } from './list';
import { isSoundLoop } from './loops';
import { isSoundSteel } from './steel';
import { idsOf, type Thing } from './thing';
import { tidyAngle, tidyPoint, tidyShape } from './tidy';

const pointsOfShape = (shape: Shape): readonly Point[] =>
  shape.kind === 'polygon' ? shape.points : [shape.centre];

/** Ways go along with both their ends; with one of them, or none, their points stay where they are. */
const carriedTails = (site: Site, loops: ReadonlySet<string>, marks: ReadonlySet<string>): readonly Loop[] =>
  site.loops.filter(({ id, tail }) => loops.has(id) && tail.route && marks.has(tail.route.to));

const carriedLeadIns = (site: Site, marks: ReadonlySet<string>): readonly Circuit[] =>
  site.circuits.filter(({ leadIn: { route } }) => route && marks.has(route.from) && marks.has(route.to));

/** The coordinates that the document holds for these things. */
function anchorsOf(site: Site, things: readonly Thing[]): Point[] {
  const loops = idsOf(things, 'loop');
  const lanes = idsOf(things, 'lane');
  const marks = idsOf(things, 'mark');
  const steel = idsOf(things, 'steel');
  const paths = idsOf(things, 'path');
  const probes = idsOf(things, 'probe');
  const underlays = idsOf(things, 'underlay');
  return [
    ...site.loops.filter(({ id }) => loops.has(id)).flatMap(({ shape }) => pointsOfShape(shape)),
    ...carriedTails(site, loops, marks).flatMap(({ tail }) => tail.route?.via ?? []),
    ...carriedLeadIns(site, marks).flatMap(({ leadIn }) => leadIn.route?.via ?? []),
    ...site.lanes
      .filter(({ id }) => lanes.has(id))
      .flatMap(({ centreline, bends }) => [...centreline, ...(bends?.points ?? [])]),
    ...site.marks.filter(({ id }) => marks.has(id)).flatMap(({ points }) => points),
    ...site.steel.filter(({ id }) => steel.has(id)).flatMap(({ outline }) => outline),
    ...site.paths.filter(({ id }) => paths.has(id)).flatMap(({ points }) => points),
    ...site.probes.filter((_, index) => probes.has(String(index))).map(({ at }) => at),
    ...site.underlays.filter(({ id }) => underlays.has(id)).map(({ at }) => at)
  ];
}

export interface Change {
  shape(shape: Shape): Shape;
  point(point: Point): Point;
  heading(heading: number): number;
  /** Of a mark all but its points. */
  mark?(mark: Mark): Mark;
}

/** Every thing by the same change, as one; the same site when the result could not be held. */
export function changedThings(site: Site, things: readonly Thing[], change: Change): Site {
  const loopIds = idsOf(things, 'loop');
  const laneIds = idsOf(things, 'lane');
  const markIds = idsOf(things, 'mark');
  const steelIds = idsOf(things, 'steel');
  const pathIds = idsOf(things, 'path');
  const probeIds = idsOf(things, 'probe');
  const underlayIds = idsOf(things, 'underlay');
  const point = (at: Point): Point => tidyPoint(change.point(at));
  const carried = new Set<unknown>([
    ...carriedTails(site, loopIds, markIds),
    ...carriedLeadIns(site, markIds)
  ]);
  const along = <R extends { readonly via: readonly Point[] }>(route: R): R => ({
    ...route,
    via: route.via.map(point)
  });
  const loops = mapped(site.loops, (loop): Loop => {
    if (!loopIds.has(loop.id)) return loop;
    const moved = { ...loop, shape: tidyShape(change.shape(loop.shape)) };
    const { route } = loop.tail;
    return route && carried.has(loop) ? { ...moved, tail: { ...loop.tail, route: along(route) } } : moved;
  });
  const circuits = mapped(site.circuits, (circuit): Circuit => {
    const { route } = circuit.leadIn;
    if (!route || route.via.length === 0 || !carried.has(circuit)) return circuit;
    return { ...circuit, leadIn: { ...circuit.leadIn, route: along(route) } };
  });
  const lanes = mapped(site.lanes, (lane) =>
    laneIds.has(lane.id)
      ? {
          ...lane,
          centreline: lane.centreline.map(point),
          ...(lane.bends ? { bends: { ...lane.bends, points: lane.bends.points.map(point) } } : {})
        }
      : lane
  );
  const marks = mapped(site.marks, (mark) =>
    markIds.has(mark.id) ? { ...(change.mark?.(mark) ?? mark), points: mark.points.map(point) } : mark
  );
  const steel = mapped(site.steel, (each) =>
    steelIds.has(each.id) ? { ...each, outline: each.outline.map(point) } : each
  );
  const paths = mapped(site.paths, (path) =>
    pathIds.has(path.id) ? { ...path, points: path.points.map(point) } : path
  );
  const probes = mapped(site.probes, (probe, index) =>
    probeIds.has(String(index))
      ? { ...probe, at: point(probe.at), heading: tidyAngle(change.heading(probe.heading)) }
      : probe
  );
  const underlays = mapped(site.underlays, (underlay) =>
    underlayIds.has(underlay.id)
      ? { ...underlay, at: point(underlay.at), rotation: tidyAngle(change.heading(underlay.rotation)) }
      : underlay
  );
  const next = { ...site, loops, circuits, lanes, marks, steel, paths, probes, underlays };
  // Rounding can close a gap that was open by less than it: then the step is not taken.
  const sound =
    loops.every((loop, index) => loop === site.loops[index] || isSoundLoop(next, loop)) &&
    steel.every((each, index) => each === site.steel[index] || isSoundSteel(each));
  return sound && isInBounds(anchorsOf(next, things)) ? shared(site, next) : site;
}

const shared = (site: Site, next: Site): Site =>
  (['loops', 'circuits', 'lanes', 'marks', 'steel', 'paths', 'probes', 'underlays'] as const).reduce<Site>(
    (result, key) => withList(result, key, next[key]),
    site
  );

export function moveThings(site: Site, things: readonly Thing[], by: Point): Site {
  const [x, y] = tidyPoint(clampShift(anchorsOf(site, things), by));
  if (x === 0 && y === 0) return site;
  return changedThings(site, things, {
    shape: (shape) => moveShape(shape, [x, y]),
    point: (at) => [at[0] + x, at[1] + y],
    heading: (heading) => heading
  });
}

/** Counter-clockwise about the pivot; refused when a coordinate would leave the bounds. */
export function rotateThings(site: Site, things: readonly Thing[], degrees: number, pivot: Point): Site {
  if (!Number.isFinite(degrees) || degrees % 360 === 0) return site;
  return changedThings(site, things, {
    shape: (shape) => rotateShape(shape, degrees, pivot),
    point: (at) => rotate(at, degrees, pivot),
    heading: (heading) => normalAngle(heading + degrees)
  });
}
