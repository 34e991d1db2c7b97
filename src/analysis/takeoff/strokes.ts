/**
 * What the drawing wants sawn, before anything that lies in one slot is put together: every side of every cell, and every
 * leg of a drawn tail.
 */
import { wireOf, type Wire } from '#plan/catalogue/wires';
import { pathLength, tailPath } from '#plan/lead-out';
import type { Loop, Point, Shape, Site } from '#plan/schema';
import { pathOf, problemOf } from '#plan/shapes/index';
import type { Edge } from '#plan/shapes/path';

/** A loop that can be wound: a possible shape, a known wire. */
export interface Wound {
  readonly loop: Loop;
  readonly wire: Wire;
  /** Its place among the site's loops. */
  readonly index: number;
  /** One turn, metres: every cell once. */
  readonly turn: number;
  /** Slot of the loop as drawn, metres. */
  readonly sawCut: number;
  /** The drawn way of its tail; null for a tail that is a typed length. */
  readonly tail: readonly Point[] | null;
  /** Of that way, metres; 0 where it is not drawn. */
  readonly tailWay: number;
}

interface InSlot {
  readonly of: Wound;
  readonly wires: number;
}

export interface Straight extends InSlot {
  readonly kind: 'side' | 'corner cut' | 'home run';
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  /** Whether the wires lie at full depth right at the end: not where a home run comes up in a box. */
  readonly isDeepFrom: boolean;
  readonly isDeepTo: boolean;
}

export interface Round extends InSlot {
  readonly centre: Point;
  readonly radius: number;
}

const lengthOf = (from: Point, to: Point): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

const possible = new WeakMap<Shape, boolean>();

/** Whether sides of a polygon cross takes long to find out, and a shape that nobody touched stays as it was. */
const isPossible = (shape: Shape): boolean => {
  const known = possible.get(shape);
  if (known !== undefined) return known;
  const result = problemOf(shape) === null;
  possible.set(shape, result);
  return result;
};

export const woundLoops = (site: Site): readonly Wound[] =>
  site.loops.flatMap((loop, index): Wound[] => {
    const wire = wireOf(loop.wire, site);
    if (!wire || !isPossible(loop.shape)) return [];
    const { cells, sawCut } = pathOf(loop.shape);
    const turn = cells.reduce(
      (sum, cell) =>
        cell.kind === 'circle'
          ? sum + 2 * Math.PI * cell.radius
          : cell.edges.reduce((part, { from, to }) => part + lengthOf(from, to), sum),
      0
    );
    const tail = tailPath(site, loop);
    return [{ loop, wire, index, turn, sawCut, tail, tailWay: tail ? pathLength(tail) : 0 }];
  });

/** With corners cut off, every other edge of a rectangle is a corner cut: its outline begins with a side. */
const kindOf = ({ shape }: Loop, edge: number): Straight['kind'] =>
  shape.kind === 'rectangle' && shape.cornerCut > 0 && edge % 2 === 1 ? 'corner cut' : 'side';

const sideOf = (of: Wound, { from, to }: Edge, edge: number): Straight => ({
  of,
  kind: kindOf(of.loop, edge),
  wires: of.loop.turns,
  from,
  to,
  length: lengthOf(from, to),
  isDeepFrom: true,
  isDeepTo: true
});

/** Nothing shorter is sawn, metres. */
const LEAST = 1e-6;

const homeRunOf = (of: Wound): Straight[] => {
  const way = (of.tail ?? []).filter((point, at, all) => at === 0 || lengthOf(all[at - 1]!, point) > LEAST);
  return way.slice(1).map((to, leg, legs): Straight => {
    const from = way[leg]!;
    return {
      of,
      kind: 'home run',
      wires: 2,
      from,
      to,
      length: lengthOf(from, to),
      isDeepFrom: true,
      isDeepTo: leg < legs.length - 1
    };
  });
};

export function strokesOf(wound: readonly Wound[]): {
  readonly straight: readonly Straight[];
  readonly round: readonly Round[];
} {
  const straight: Straight[] = [];
  const round: Round[] = [];
  for (const of of wound) {
    for (const cell of pathOf(of.loop.shape).cells)
      if (cell.kind === 'circle')
        round.push({ of, wires: of.loop.turns, centre: cell.centre, radius: cell.radius });
      else cell.edges.forEach((edge, at) => straight.push(sideOf(of, edge, at)));
    straight.push(...homeRunOf(of));
  }
  return { straight: straight.filter(({ length }) => length > LEAST), round };
}
