/** Making everything on a piece of ground larger or smaller at once: for a drawing that was traced at a wrong scale. */
import { add, scale, subtract } from '../geometry/points';
import { contains, sidesOf } from '../geometry/polygons';
import { segmentIntersection } from '../geometry/segments';
import { lane as laneSchema, mark as markSchema, path as pathSchema } from '../schema';
import type { Circuit, Lane, Loop, Mark, Point, Shape, Site } from '../schema';
import { outlineOf } from '../shapes/index';
import { isInBounds } from './limits';
import { mapped, withList } from './list';
import { isSoundLoop } from './loops';
import { isSoundSteel } from './steel';
import { idsOf, type Thing } from './thing';
import { tidyLength, tidyPoint, tidyShape } from './tidy';

/** Whether a line, open or a lone point, has any part on the area. */
function reaches(area: readonly Point[], points: readonly Point[]): boolean {
  if (points.some((point) => contains(area, point))) return true;
  return points
    .slice(1)
    .some((to, index) =>
      sidesOf(area).some((side) => segmentIntersection(side, { from: points[index]!, to }))
    );
}

const closed = (points: readonly Point[]): readonly Point[] => [...points, ...points.slice(0, 1)];

/** Everything that lies on the area or reaches over it; pictures do not count. */
export function thingsOn(site: Site, area: readonly Point[]): Thing[] {
  const on = <T extends { readonly id: string }>(
    kind: Thing['kind'],
    list: readonly T[],
    line: (each: T) => readonly Point[]
  ): Thing[] => list.filter((each) => reaches(area, line(each))).map(({ id }) => ({ kind, id }));
  return [
    ...on('loop', site.loops, ({ shape }) => closed(outlineOf(shape))),
    ...on('lane', site.lanes, ({ centreline }) => centreline),
    ...on('mark', site.marks, ({ points }) => points),
    ...on('steel', site.steel, ({ outline }) => closed(outline)),
    ...on('path', site.paths, ({ points }) => points),
    ...site.probes.flatMap(({ at }, index): Thing[] =>
      contains(area, at) ? [{ kind: 'probe', id: String(index) }] : []
    )
  ];
}

type Move = (point: Point) => Point;

function scaledShape(shape: Shape, factor: number, move: Move): Shape {
  switch (shape.kind) {
    case 'polygon':
      return { ...shape, points: shape.points.map(move) };
    case 'circle':
      return { ...shape, centre: move(shape.centre), diameter: shape.diameter * factor };
    case 'rectangle':
      return { ...scaledBox(shape, factor, move), cornerCut: shape.cornerCut * factor };
    default:
      return scaledBox(shape, factor, move);
  }
}

const scaledBox = <B extends Exclude<Shape, { kind: 'polygon' | 'circle' }>>(
  box: B,
  factor: number,
  move: Move
): B => ({
  ...box,
  centre: move(box.centre),
  width: box.width * factor,
  length: box.length * factor
});

function scaledLane(lane: Lane, factor: number, move: Move): Lane {
  const { bends } = lane;
  return {
    ...lane,
    centreline: lane.centreline.map(move),
    width: tidyLength(lane.width * factor),
    ...(bends
      ? { bends: { ...bends, points: bends.points.map(move), radii: bends.radii.map((r) => r * factor) } }
      : {})
  };
}

function scaledMark(mark: Mark, factor: number, move: Move): Mark {
  const { opening, offset } = mark;
  return {
    ...mark,
    points: mark.points.map(move),
    ...(offset === undefined ? {} : { offset: offset * factor }),
    ...(opening?.kind === 'slide' ? { opening: { ...opening, travel: opening.travel * factor } } : {})
  };
}

/**
 * These things `factor` times as large about the pivot, with the drawn ways between them; vehicles only move. The same
 * site when a document may not hold one of them at that size.
 */
export function scaleThings(site: Site, things: readonly Thing[], factor: number, pivot: Point): Site {
  if (!(factor > 0) || !Number.isFinite(factor) || factor === 1 || things.length === 0) return site;
  const [loops, lanes, marks, steel, paths, probes] = (
    ['loop', 'lane', 'mark', 'steel', 'path', 'probe'] as const
  ).map((kind) => idsOf(things, kind)) as [Ids, Ids, Ids, Ids, Ids, Ids];
  const move: Move = (point) => tidyPoint(add(pivot, scale(subtract(point, pivot), factor)));
  const along = <R extends { readonly via: readonly Point[] }>(route: R): R => ({
    ...route,
    via: route.via.map(move)
  });
  const next: Site = {
    ...site,
    loops: mapped(site.loops, (loop): Loop => {
      if (!loops.has(loop.id)) return loop;
      const { route } = loop.tail;
      const tail = route && marks.has(route.to) ? { ...loop.tail, route: along(route) } : loop.tail;
      return { ...loop, tail, shape: tidyShape(scaledShape(loop.shape, factor, move)) };
    }),
    circuits: mapped(site.circuits, (circuit): Circuit => {
      const { route } = circuit.leadIn;
      if (!route || route.via.length === 0 || !marks.has(route.from) || !marks.has(route.to)) return circuit;
      return { ...circuit, leadIn: { ...circuit.leadIn, route: along(route) } };
    }),
    lanes: mapped(site.lanes, (each) => (lanes.has(each.id) ? scaledLane(each, factor, move) : each)),
    marks: mapped(site.marks, (each) => (marks.has(each.id) ? scaledMark(each, factor, move) : each)),
    steel: mapped(site.steel, (each) =>
      steel.has(each.id) ? { ...each, outline: each.outline.map(move) } : each
    ),
    paths: mapped(site.paths, (each) =>
      paths.has(each.id) ? { ...each, points: each.points.map(move) } : each
    ),
    probes: mapped(site.probes, (each, index) =>
      probes.has(String(index)) ? { ...each, at: move(each.at) } : each
    )
  };
  return isSound(site, next) ? shared(site, next) : site;
}

type Ids = ReadonlySet<string>;

/** Of what changed: whether a document may hold it. */
function isSound(site: Site, next: Site): boolean {
  const fresh = <T>(list: readonly T[], before: readonly T[]): T[] =>
    list.filter((each, index) => each !== before[index]);
  return (
    fresh(next.loops, site.loops).every((loop) => isSoundLoop(next, loop)) &&
    fresh(next.lanes, site.lanes).every((lane) => laneSchema.safeParse(lane).success) &&
    fresh(next.marks, site.marks).every((mark) => markSchema.safeParse(mark).success) &&
    fresh(next.steel, site.steel).every(isSoundSteel) &&
    fresh(next.paths, site.paths).every((path) => pathSchema.safeParse(path).success) &&
    isInBounds(fresh(next.probes, site.probes).map(({ at }) => at)) &&
    isInBounds(fresh(next.circuits, site.circuits).flatMap(({ leadIn }) => [...(leadIn.route?.via ?? [])]))
  );
}

const shared = (site: Site, next: Site): Site =>
  (['loops', 'circuits', 'lanes', 'marks', 'steel', 'paths', 'probes'] as const).reduce<Site>(
    (result, key) => withList(result, key, next[key]),
    site
  );
