/** Going along a lane, at the same distance from its middle and turned with it. */
import { bearing, add, scale, subtract } from '../../geometry/points';
import { directionAt, nearestOn, pointAt, stationed, type Stationed } from '../../geometry/stations';
import type { Lane, Point, Site } from '../../schema';
import { moveThings, rotateThings } from '../transform';
import type { Thing } from '../thing';
import type { Extent, Item } from './item';

/** Null for a lane without length. Beyond its ends a lane goes on straight. */
export const laneLine = ({ centreline }: Lane): Stationed | null => stationed(centreline);

export function alongLane(line: Stationed, { outline, isFixed }: Item): Extent {
  const places = outline.map((point) => nearestOn(line, point, true).along);
  return { from: Math.min(...places), to: Math.max(...places), isFixed };
}

/** To the right of the direction, a unit vector. */
const rightOf = ([x, y]: Point): Point => [y, -x];

interface Move {
  readonly line: Stationed;
  readonly anchor: Point;
  /** Metres in the direction of travel. */
  readonly by: number;
}

export function moveAlongLane(site: Site, thing: Thing, { line, anchor, by }: Move): Site {
  if (by === 0) return site;
  const { along, offset } = nearestOn(line, anchor, true);
  const before = directionAt(line, along);
  const after = directionAt(line, along + by);
  const turn = bearing([0, 0], after) - bearing([0, 0], before);
  const turned = Math.abs(turn) < 1e-9 ? site : rotateThings(site, [thing], turn, anchor);
  const to = add(pointAt(line, along + by), scale(rightOf(after), offset));
  return moveThings(turned, [thing], subtract(to, anchor));
}

/** Whether a place moved that far still lies beside the lane. */
export function staysOnLane({ line, anchor, by }: Move): boolean {
  const { along } = nearestOn(line, anchor, true);
  return along + by >= -1e-6 && along + by <= line.length + 1e-6;
}
