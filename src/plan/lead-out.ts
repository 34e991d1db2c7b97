/**
 * The way from a loop to its pull box and on to the cabinet, where it is drawn: the lengths then follow the drawing.
 *
 * A way hangs on marks and goes through points of its own between them. The length that the document holds is always the
 * one to reckon with: the drawn way plus the allowance for slack and depth.
 */
import { BOUNDS } from './bounds';
import { mapped, withList } from './edits/list';
import { tidyLength } from './edits/tidy';
import { add, distance, scale, subtract } from './geometry/points';
import type { Circuit, Loop, Mark, Point, Shape, Site } from './schema';
import { outlineOf } from './shapes/index';

/** Where a mark is reached: its first point; undefined for one that is not there. */
const placeOfMark = (site: Pick<Site, 'marks'>, id: string): Point | undefined =>
  site.marks.find((mark) => mark.id === id)?.points[0];

/** Where the wires leave the slot: the corner nearest to the way's next point, of a circle the point facing it. */
export function exitOf(shape: Shape, towards: Point): Point {
  if (shape.kind === 'circle') {
    const away = distance(shape.centre, towards);
    const radius = shape.diameter / 2;
    const out: Point = away === 0 ? [radius, 0] : scale(subtract(towards, shape.centre), radius / away);
    return add(shape.centre, out);
  }
  const corners = outlineOf(shape);
  return corners.reduce((best, corner) =>
    distance(corner, towards) < distance(best, towards) ? corner : best
  );
}

/** From the loop's corner to the pull box, metres; null where the tail is not drawn. */
export function tailPath(site: Pick<Site, 'marks'>, { tail, shape }: Loop): readonly Point[] | null {
  const end = tail.route && placeOfMark(site, tail.route.to);
  if (!tail.route || !end) return null;
  const { via } = tail.route;
  return [exitOf(shape, via[0] ?? end), ...via, end];
}

/** From the pull box to the cabinet, metres; null where the lead-in is not drawn. */
export function leadInPath(site: Pick<Site, 'marks'>, { leadIn }: Circuit): readonly Point[] | null {
  if (!leadIn.route) return null;
  const start = placeOfMark(site, leadIn.route.from);
  const end = placeOfMark(site, leadIn.route.to);
  return start && end ? [start, ...leadIn.route.via, end] : null;
}

export const pathLength = (path: readonly Point[]): number =>
  path.slice(1).reduce((sum, point, index) => sum + distance(path[index]!, point), 0);

/** A way longer than a document may hold counts as the longest that it may. */
const lengthAlong = (path: readonly Point[], allowance: number, most: number): number =>
  Math.min(most, tidyLength(pathLength(path) + allowance));

/** What a drawn length depends on: the present design's, or a variant's. */
type Routed = Pick<Site, 'marks' | 'loops' | 'circuits'>;

function followedLoop(site: Routed, loop: Loop): Loop {
  const path = tailPath(site, loop);
  if (!path || !loop.tail.route) return loop;
  const length = lengthAlong(path, loop.tail.route.allowance, BOUNDS.tail.max);
  return length === loop.tail.length ? loop : { ...loop, tail: { ...loop.tail, length } };
}

function followedCircuit(site: Routed, circuit: Circuit): Circuit {
  const path = leadInPath(site, circuit);
  const { leadIn } = circuit;
  if (!path || !leadIn.route) return circuit;
  const length = lengthAlong(path, leadIn.route.allowance, BOUNDS.leadIn.max);
  return length === leadIn.length ? circuit : { ...circuit, leadIn: { ...leadIn, length } };
}

/** The site with every drawn length as long as it is drawn; the same site where they are so already. */
export function followRoutes<T extends Routed>(site: T): T {
  const loops = mapped(site.loops, (loop) => followedLoop(site, loop));
  const circuits = mapped(site.circuits, (circuit) => followedCircuit(site, circuit));
  return withList(withList(site, 'loops', loops), 'circuits', circuits);
}

/** The same for every variant; they do not change under a hand, so that reading a file is the place for it. */
export function followVariants(site: Site): Site {
  const variants =
    site.variants &&
    mapped(site.variants, (variant) => withList(variant, 'design', followRoutes(variant.design)));
  return withList(site, 'variants', variants);
}

/** The mark of that kind nearest to a point; undefined where there is none. */
export const nearestMark = (site: Pick<Site, 'marks'>, kind: Mark['kind'], to: Point): Mark | undefined =>
  site.marks
    .filter((mark) => mark.kind === kind)
    .reduce<Mark | undefined>(
      (best, mark) => (best && distance(best.points[0]!, to) <= distance(mark.points[0]!, to) ? best : mark),
      undefined
    );
