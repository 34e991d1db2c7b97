/** Drawing the way of a tail or a lead-in, changing its points, and going back to a typed length. */
import { COUNTS } from '../bounds';
import { distance, rotate } from '../geometry/points';
import { exitOf, followRoutes, leadInPath, nearestMark, tailPath } from '../lead-out';
import type { Circuit, Loop, Mark, Point, Site } from '../schema';
import { centreOf } from '../shapes/index';
import { updateCircuit } from './circuits';
import { clampPoint } from './limits';
import { mapped, patched, withList, type Patch } from './list';
import { updateLoop } from './loops';
import { tidyPoint } from './tidy';

type TailRoute = NonNullable<Loop['tail']['route']>;
type LeadInRoute = NonNullable<Circuit['leadIn']['route']>;

/** The tail of a loop or the lead-in of a circuit. */
export type Way =
  { readonly kind: 'tail'; readonly loop: string } | { readonly kind: 'lead-in'; readonly circuit: string };

/** Slack that is left in the box and the depth to come up from, metres. Common practice. */
const USUAL_ALLOWANCE = { tail: 1, leadIn: 2 } as const;

/** Points nearer to each other than this are one. */
const SAME = 1e-3;

const hasMark = (site: Site, id: string): boolean => site.marks.some((mark) => mark.id === id);

/** Draws the tail, or changes how it is drawn; without a route `to` is needed. Undefined: the length is typed again. */
export function updateTailRoute(site: Site, id: string, patch: Patch<TailRoute> | undefined): Site {
  const loop = site.loops.find((each) => each.id === id);
  if (!loop) return site;
  if (!patch) return updateLoop(site, id, { tail: patched<Loop['tail']>(loop.tail, { route: undefined }) });
  const usual = { via: [], allowance: USUAL_ALLOWANCE.tail };
  const route = patched<Partial<TailRoute>>(loop.tail.route ?? usual, patch);
  if (route === loop.tail.route || route.to === undefined || !hasMark(site, route.to)) return site;
  const next = updateLoop(site, id, { tail: { ...loop.tail, route: route as TailRoute } });
  return next === site ? site : followRoutes(next);
}

/** As `updateTailRoute`, from a pull box to a cabinet. */
export function updateLeadInRoute(site: Site, id: string, patch: Patch<LeadInRoute> | undefined): Site {
  const circuit = site.circuits.find((each) => each.id === id);
  if (!circuit) return site;
  const { leadIn } = circuit;
  if (!patch)
    return leadIn.route
      ? updateCircuit(site, id, { leadIn: patched<Circuit['leadIn']>(leadIn, { route: undefined }) })
      : site;
  const usual = { via: [], allowance: USUAL_ALLOWANCE.leadIn };
  const route = patched<Partial<LeadInRoute>>(leadIn.route ?? usual, patch);
  if (route === leadIn.route || route.to === undefined || route.from === undefined) return site;
  if (!hasMark(site, route.to) || !hasMark(site, route.from)) return site;
  const next = updateCircuit(site, id, { leadIn: { ...leadIn, route: route as LeadInRoute } });
  return next === site ? site : followRoutes(next);
}

/** A tail with a typed length: it is no longer drawn. */
export const typedTail = (tail: Loop['tail'], length: number): Loop['tail'] =>
  tail.length === length && !tail.route ? tail : patched<Loop['tail']>(tail, { length, route: undefined });

/** Straight to the nearest pull box; the same site where there is none or the tail goes there already. */
export function leadOut(site: Site, id: string): Site {
  const loop = site.loops.find((each) => each.id === id);
  const box = loop && nearestMark(site, 'pull-box', centreOf(loop.shape));
  return box && loop.tail.route?.to !== box.id ? updateTailRoute(site, id, { to: box.id, via: [] }) : site;
}

/** From the pull box that the first loop's tail runs to, else the nearest one, straight to the nearest cabinet. */
export function leadIn(site: Site, id: string): Site {
  const circuit = site.circuits.find((each) => each.id === id);
  const first = circuit?.strings[0]?.[0]?.loop;
  const loop = site.loops.find((each) => each.id === first);
  const drawn = loop?.tail.route && site.marks.find((mark) => mark.id === loop.tail.route?.to);
  const from = drawn ?? (loop && nearestMark(site, 'pull-box', centreOf(loop.shape)));
  const to = from && nearestMark(site, 'cabinet', from.points[0]!);
  if (!circuit || !to) return site;
  const { route } = circuit.leadIn;
  if (route?.from === from.id && route.to === to.id) return site;
  return updateLeadInRoute(site, id, { from: from.id, to: to.id, via: [] });
}

/** The way's points from end to end, null where it is not drawn; and those between its ends. */
export function wayPath(site: Site, way: Way): readonly Point[] | null {
  if (way.kind === 'tail') {
    const loop = site.loops.find(({ id }) => id === way.loop);
    return loop ? tailPath(site, loop) : null;
  }
  const circuit = site.circuits.find(({ id }) => id === way.circuit);
  return circuit ? leadInPath(site, circuit) : null;
}

export function setVia(site: Site, way: Way, via: readonly Point[]): Site {
  const path = wayPath(site, way);
  if (!path || via.length > COUNTS.points) return site;
  const points = via.map((point) => tidyPoint(clampPoint(point)));
  if (JSON.stringify(points) === JSON.stringify(path.slice(1, -1))) return site;
  return way.kind === 'tail'
    ? updateTailRoute(site, way.loop, { via: points })
    : updateLeadInRoute(site, way.circuit, { via: points });
}

const viaOf = (site: Site, way: Way): readonly Point[] => wayPath(site, way)?.slice(1, -1) ?? [];

export const moveWayPoint = (site: Site, way: Way, index: number, to: Point): Site =>
  setVia(site, way, viaOf(site, way).map((point, at) => (at === index ? to : point))); // prettier-ignore

/** `index`: the place that the new point has among the points between the ends. */
export const insertWayPoint = (site: Site, way: Way, index: number, at: Point): Site => {
  const via = viaOf(site, way);
  return setVia(site, way, [...via.slice(0, index), at, ...via.slice(index)]);
};

export const removeWayPoint = (site: Site, way: Way, index: number): Site =>
  setVia(site, way, viaOf(site, way).filter((_, at) => at !== index)); // prettier-ignore

/**
 * The one corner of a way along two directions at right angles: a tail runs across the loop first, then along it, as a
 * saw cut to the kerb and on beside it does; a lead-in runs along the plan's axes. Nothing where it is straight anyway.
 */
export function squareVia(site: Site, way: Way): readonly Point[] {
  const path = wayPath(site, way);
  const end = path?.at(-1);
  if (!path || !end) return [];
  const shape = way.kind === 'tail' ? site.loops.find(({ id }) => id === way.loop)?.shape : undefined;
  const turn = shape && 'rotation' in shape ? shape.rotation : 0;
  const start = shape?.kind === 'circle' ? shape.centre : shape ? exitOf(shape, end) : path[0]!;
  const [a, b] = [rotate(start, -turn), rotate(end, -turn)];
  const corner = tidyPoint(rotate([b[0], a[1]], turn));
  return distance(corner, end) < SAME || distance(corner, start) < SAME ? [] : [corner];
}

/** How a way runs: straight, around one square corner, or through points of its own. */
export function courseOf(site: Site, way: Way): 'straight' | 'square' | 'free' {
  const via = viaOf(site, way);
  if (via.length === 0) return 'straight';
  return JSON.stringify(via) === JSON.stringify(squareVia(site, way)) ? 'square' : 'free';
}

/** Drops every route whose marks are not there; its length stays, as typed. */
export function withoutLooseRoutes(site: Site): Site {
  const marks = new Set(site.marks.map(({ id }: Mark) => id));
  const loops = mapped(site.loops, (loop) =>
    loop.tail.route && !marks.has(loop.tail.route.to)
      ? { ...loop, tail: patched<Loop['tail']>(loop.tail, { route: undefined }) }
      : loop
  );
  const circuits = mapped(site.circuits, (circuit) => {
    const { route } = circuit.leadIn;
    if (!route || (marks.has(route.from) && marks.has(route.to))) return circuit;
    return { ...circuit, leadIn: patched<Circuit['leadIn']>(circuit.leadIn, { route: undefined }) };
  });
  return withList(withList(site, 'loops', loops), 'circuits', circuits);
}
