/** Where labels go: inside their loop if there is room, else on the side where they cover least. */
import type { Point } from '#plan/schema';
import { boxCentre, type Box } from '#editor/geometry/box';
import { common, takenOf, type Obstacle } from './obstacles';

/** A label looking for a place; all in pixels of the screen, where `bottom` is the smaller y. */
export interface Want {
  /** Extent of the thing that is labelled. */
  readonly thing: Box;
  readonly width: number;
  readonly height: number;
  /** The size of a shorter label, which is tried where this one finds no place. */
  readonly short?: { readonly width: number; readonly height: number };
}

export interface Place {
  /** Middle of the label. */
  readonly at: Point;
  /** Point of the thing that a line from the label should lead to; null inside the thing. */
  readonly leader: Point | null;
  /** There is room for the shorter label only. */
  readonly isShort?: true;
}

const GAP = 12;
const ROOM = 8;
/** How far a label may move towards its thing, or along it, to lie on the screen as a whole. */
const NUDGE = 8;
/** How bad it is to cover a pixel of another label, of another thing, of what lies off the screen. */
const COST = { label: 10, thing: 2, outside: 6, place: 40 } as const;
/** Share of a label that may be covered by another one before it is rather left out. */
const TOLERABLE = 0.12;
/** Widths or heights of a label that it may go further away where everything near is taken. */
const FURTHER = [1, 2] as const;

export interface Liberty {
  /** Share of a label that another one may cover. */
  readonly tolerable?: number;
  /** Whether a label may also stand off its thing's corners, and further away on a longer line. */
  readonly goesFurther?: boolean;
  /** Whether a label may also leave the middle of its thing, or stand off its corners: for lines that go through both. */
  readonly givesWay?: boolean;
}

export const boxAbout = ([x, y]: Point, { width, height }: Pick<Want, 'width' | 'height'>): Box => ({
  left: x - width / 2,
  right: x + width / 2,
  bottom: y - height / 2,
  top: y + height / 2
});

/** How far to move from what sticks out below or above, if that is enough to bring it in. */
function shift(below: number, above: number): number {
  if (below > 0 && below <= NUDGE) return below;
  return above > 0 && above <= NUDGE ? -above : 0;
}

function nudged({ at: [x, y], leader }: Place, want: Want, screen: Box): Place {
  const box = boxAbout([x, y], want);
  const across = shift(screen.left - box.left, box.right - screen.right);
  const up = shift(screen.bottom - box.bottom, box.top - screen.top);
  return { at: [x + across, y + up], leader };
}

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

/** Within the thing, beside a line through its middle: close to that, then in the middle of each half. */
function asideChoices({ thing, width, height }: Want): Place[] {
  const [x, y] = boxCentre(thing);
  const [across, up] = [thing.right - thing.left - ROOM, thing.top - thing.bottom - ROOM];
  const steps = (size: number, room: number): readonly number[] =>
    [size / 2 + GAP, room / 4].filter((by) => by + size / 2 <= room / 2).flatMap((by) => [-by, by]);
  const ups = width <= across ? steps(height, up) : [];
  const sideways = height <= up ? steps(width, across) : [];
  return [
    ...ups.map((by): Place => ({ at: [x, y + by], leader: null })),
    ...sideways.map((by): Place => ({ at: [x + by, y], leader: null }))
  ];
}

function cornerChoices({ thing, width, height }: Want): Place[] {
  return [thing.right, thing.left].flatMap((side) =>
    [thing.top, thing.bottom].map((end): Place => {
      const [right, up] = [side === thing.right ? 1 : -1, end === thing.top ? 1 : -1];
      return { at: [side + right * (GAP + width / 2), end + up * (GAP + height / 2)], leader: [side, end] };
    })
  );
}

/** On longer lines: on paper nobody can zoom in where labels stand close. */
function furtherChoices({ thing, width, height }: Want): Place[] {
  const [x, y] = boxCentre(thing);
  const ends = [
    { right: 1, up: 0 },
    { right: -1, up: 0 },
    { right: 0, up: -1 },
    { right: 0, up: 1 }
  ] as const;
  return FURTHER.flatMap((times) =>
    ends.map(({ right, up }): Place => {
      const edge: Point = [
        right === 0 ? x : right > 0 ? thing.right : thing.left,
        up === 0 ? y : up > 0 ? thing.top : thing.bottom
      ];
      const [across, along] = [width * (0.5 + times) + GAP, height * (0.5 + times) + GAP];
      return { at: [edge[0] + right * across, edge[1] + up * along], leader: edge };
    })
  );
}

/**
 * A place for each label in turn, or null for one that would only cover others. What already lies on the screen is
 * kept clear where there is a choice.
 */
export function placeLabels(
  wants: readonly Want[],
  screen: Box,
  already: readonly Obstacle[] = [],
  { tolerable = TOLERABLE, goesFurther = false, givesWay = false }: Liberty = {}
): (Place | null)[] {
  const placed: Box[] = [];
  const tried = (want: Want, at: Want): Place | null => {
    const whole = want.width * want.height;
    let best: {
      readonly place: Place;
      readonly box: Box;
      readonly cost: number;
      readonly covered: number;
    } | null = null;
    const all = [
      ...choices(want),
      ...(givesWay ? asideChoices(want) : []),
      ...(givesWay || goesFurther ? cornerChoices(want) : []),
      ...(goesFurther ? furtherChoices(want) : [])
    ];
    for (const [order, choice] of all.entries()) {
      const place = nudged(choice, want, screen);
      const box = boxAbout(place.at, want);
      const covered = placed.reduce((sum, other) => sum + common(box, other), 0);
      if (goesFurther && covered > tolerable * whole) continue;
      const things = wants.reduce((sum, other) => sum + (other === at ? 0 : common(box, other.thing)), 0);
      const outside =
        whole - common(box, screen) + already.reduce((sum, other) => sum + takenOf(box, other), 0);
      const cost = covered * COST.label + things * COST.thing + outside * COST.outside + order * COST.place;
      if (!best || cost < best.cost) best = { place, box, cost, covered };
    }
    if (!best || best.covered > tolerable * whole) return null;
    placed.push(best.box);
    return best.place;
  };
  return wants.map((want) => {
    const place = tried(want, want);
    if (place || !want.short) return place;
    const shorter = tried({ thing: want.thing, ...want.short }, want);
    return shorter && { ...shorter, isShort: true };
  });
}
