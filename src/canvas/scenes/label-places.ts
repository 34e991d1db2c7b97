/** Where labels go: inside their loop if there is room, else on the side where they cover least. */
import type { Point } from '#plan/schema';
import { boxCentre, type Box } from '#editor/geometry/box';

/** A label looking for a place; all in pixels of the screen, where `bottom` is the smaller y. */
export interface Want {
  /** Extent of the thing that is labelled. */
  readonly thing: Box;
  readonly width: number;
  readonly height: number;
}

export interface Place {
  /** Middle of the label. */
  readonly at: Point;
  /** Point of the thing that a line from the label should lead to; null inside the thing. */
  readonly leader: Point | null;
}

const GAP = 12;
const ROOM = 8;
/** How bad it is to cover a pixel of another label, of another thing, of what lies off the screen. */
const COST = { label: 10, thing: 2, outside: 6, place: 40 } as const;
/** Share of a label that may be covered by another one before it is rather left out. */
const TOLERABLE = 0.12;

export const boxAbout = ([x, y]: Point, { width, height }: Pick<Want, 'width' | 'height'>): Box => ({
  left: x - width / 2,
  right: x + width / 2,
  bottom: y - height / 2,
  top: y + height / 2
});

const sizeOf = (box: Box): number => Math.max(0, box.right - box.left) * Math.max(0, box.top - box.bottom);

const common = (a: Box, b: Box): number =>
  sizeOf({
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
    top: Math.min(a.top, b.top)
  });

function choices(want: Want): Place[] {
  const { thing, width, height } = want;
  const [x, y] = boxCentre(thing);
  const fits = thing.right - thing.left > width + ROOM && thing.top - thing.bottom > height + ROOM;
  return [
    ...(fits ? [{ at: [x, y] as const, leader: null }] : []),
    { at: [thing.right + GAP + width / 2, y], leader: [thing.right, y] },
    { at: [thing.left - GAP - width / 2, y], leader: [thing.left, y] },
    { at: [x, thing.bottom - GAP - height / 2], leader: [x, thing.bottom] },
    { at: [x, thing.top + GAP + height / 2], leader: [x, thing.top] }
  ];
}

/** A place for each label in turn, or null for one that would only cover others. */
export function placeLabels(wants: readonly Want[], screen: Box): (Place | null)[] {
  const placed: Box[] = [];
  return wants.map((want) => {
    const whole = want.width * want.height;
    let best: {
      readonly place: Place;
      readonly box: Box;
      readonly cost: number;
      readonly covered: number;
    } | null = null;
    for (const [order, place] of choices(want).entries()) {
      const box = boxAbout(place.at, want);
      const covered = placed.reduce((sum, other) => sum + common(box, other), 0);
      const things = wants.reduce((sum, other) => sum + (other === want ? 0 : common(box, other.thing)), 0);
      const outside = whole - common(box, screen);
      const cost = covered * COST.label + things * COST.thing + outside * COST.outside + order * COST.place;
      if (!best || cost < best.cost) best = { place, box, cost, covered };
    }
    if (!best || best.covered > TOLERABLE * whole) return null;
    placed.push(best.box);
    return best.place;
  });
}
