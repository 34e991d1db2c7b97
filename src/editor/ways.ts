/** Drawn tails and lead-ins under the hand: which ones a selected loop has, and where they can be taken hold of. */
import { wayPath, type Way } from '#plan/edits/index';
import { between, distance } from '#plan/geometry/points';
import type { Point, Site } from '#plan/schema';
import { circuitWith } from '#plan/wiring';
import type { Viewport } from './types';

export interface WayHandle {
  /** A point of the way, or the middle of a stretch where a point can be drawn out of it. */
  readonly kind: 'via' | 'between';
  readonly id: string;
  readonly at: Point;
  readonly cursor: string;
}

/** Pixels: in a shorter stretch there is no room for another point. */
const SHORTEST_STRETCH = 56;

/** The tail of a loop and the lead-in of its circuit, whether they are drawn or not. */
function waysOf(site: Site, loop: string): Way[] {
  const circuit = circuitWith(site, loop);
  return [{ kind: 'tail', loop }, ...(circuit ? [{ kind: 'lead-in' as const, circuit: circuit.id }] : [])];
}

export function wayHandles(site: Site, loop: string, view: Viewport): WayHandle[] {
  return waysOf(site, loop).flatMap((way) => {
    const path = wayPath(site, way) ?? [];
    const via = path.slice(1, -1).map((at, index): WayHandle => ({
      kind: 'via',
      id: `${way.kind} ${index}`,
      at,
      cursor: 'move'
    }));
    const middles = path.slice(1).flatMap((to, index): WayHandle[] => {
      const from = path[index]!;
      const room = distance(from, to) * view.scale >= SHORTEST_STRETCH;
      return room
        ? [{ kind: 'between', id: `${way.kind} ${index}`, at: between(from, to), cursor: 'copy' }]
        : [];
    });
    return [...via, ...middles];
  });
}

/** What a handle's id says: the way, and the place among the points between its ends. */
export function wayOfHandle(
  site: Site,
  loop: string,
  id: string
): { readonly way: Way; readonly index: number } | null {
  const [kind, index] = id.split(' ');
  const way = waysOf(site, loop).find((each) => each.kind === kind);
  return way ? { way, index: Number(index) } : null;
}
