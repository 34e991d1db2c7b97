import type { Point, Site } from '../../schema';
import { moveThings } from '../transform';
import type { Thing } from '../thing';

/** A thing that is arranged among others. */
export interface Item {
  readonly thing: Thing;
  /** Its outline or the points of its line. */
  readonly outline: readonly Point[];
  /** What of it follows a lane: usually its centre. */
  readonly anchor: Point;
  /** Locked: it stays, and the others go by it. */
  readonly isFixed: boolean;
}

/** Where a thing begins and ends along some axis, metres. */
export interface Extent {
  readonly from: number;
  readonly to: number;
  readonly isFixed: boolean;
}

export type PlanAxis = 'x' | 'y';

const INDEX = { x: 0, y: 1 } as const;

export function extentAlong({ outline, isFixed }: Item, axis: PlanAxis): Extent {
  const values = outline.map((point) => point[INDEX[axis]]);
  return { from: Math.min(...values), to: Math.max(...values), isFixed };
}

/** Each thing by its own shift, metres; what is fixed stays. */
export const shiftEach = (site: Site, items: readonly Item[], by: readonly Point[]): Site =>
  items.reduce(
    (result, { thing, isFixed }, index) =>
      isFixed ? result : moveThings(result, [thing], by[index] ?? [0, 0]),
    site
  );

export const shiftAlong = (axis: PlanAxis, metres: number): Point =>
  axis === 'x' ? [metres, 0] : [0, metres];
