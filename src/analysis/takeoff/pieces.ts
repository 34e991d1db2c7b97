/**
 * From strokes to pieces of slot: each is sawn once, as deep and as wide as the deepest and the widest of what lies in it,
 * and belongs to one loop. A loop's own side comes before a home run, then the loop that was drawn first.
 */
import type { Point } from '#plan/schema';
import { groupsOf, SAME_POINT } from './one-slot';
import type { CutKind } from './results';
import type { Round, Straight, Wound } from './strokes';

export interface Piece {
  readonly owner: Wound;
  /** Further loops whose wires lie in it, in the order of the drawing. */
  readonly others: readonly Wound[];
  readonly kind: CutKind;
  readonly from: Point;
  readonly to: Point;
  readonly circle: { readonly centre: Point; readonly radius: number } | null;
  readonly length: number;
  readonly depth: number;
  readonly width: number;
  /** Metres of it in which wires of further loops lie. */
  readonly sharedLength: number;
  /** Cubic metres of wire in it, insulation included. */
  readonly wireVolume: number;
  /** Whether something ends there that needs full depth, and no slot as deep goes on in the same line. */
  readonly isCornerFrom: boolean;
  readonly isCornerTo: boolean;
  /** Metres: how deep the slot is that goes on in the same line; 0 for none. */
  readonly goesOnFrom: number;
  readonly goesOnTo: number;
}

const PRECEDENCE = { side: 0, 'corner cut': 1, 'home run': 2 } as const;

const ownerOf = (members: readonly Straight[]): Straight =>
  members.reduce((best, each) => {
    const order = PRECEDENCE[each.kind] - PRECEDENCE[best.kind] || each.of.index - best.of.index;
    return order < 0 ? each : best;
  });

const wireAreaOf = (members: readonly { readonly of: Wound; readonly wires: number }[]): number =>
  members.reduce((sum, { of, wires }) => sum + (wires * Math.PI * of.wire.insulatedDiameter ** 2) / 4, 0);

const largest = (members: readonly { readonly of: Wound }[], size: 'depth' | 'width'): number =>
  members.reduce((most, { of }) => Math.max(most, of.loop.slot[size]), 0);

const othersIn = (members: readonly { readonly of: Wound }[], owner: Wound): readonly Wound[] =>
  [...new Set(members.map(({ of }) => of))]
    .filter((each) => each !== owner)
    .sort((a, b) => a.index - b.index);

const kindOf = (members: readonly Straight[], owner: Straight): CutKind => {
  const isShared = members.some((each) => each !== owner && each.of === owner.of && each.kind === 'side');
  return owner.kind === 'side' && isShared ? 'shared side' : owner.kind;
};

const alone = (stroke: Straight): Piece => ({
  owner: stroke.of,
  others: [],
  kind: stroke.kind,
  from: stroke.from,
  to: stroke.to,
  circle: null,
  length: stroke.length,
  depth: stroke.of.loop.slot.depth,
  width: stroke.of.loop.slot.width,
  sharedLength: 0,
  wireVolume: stroke.length * wireAreaOf([stroke]),
  isCornerFrom: stroke.isDeepFrom,
  isCornerTo: stroke.isDeepTo,
  goesOnFrom: 0,
  goesOnTo: 0
});

interface Laid {
  readonly stroke: Straight;
  readonly low: number;
  readonly high: number;
  readonly isAhead: boolean;
}

/** Along the longest of them: its line is the slot's. */
function laidOut(group: readonly Straight[]): {
  readonly laid: readonly Laid[];
  readonly pointAt: (along: number) => Point;
} {
  const line = group.reduce((best, each) => (each.length > best.length ? each : best));
  const [x, y] = line.from;
  const [ux, uy] = [(line.to[0] - x) / line.length, (line.to[1] - y) / line.length];
  const along = ([px, py]: Point): number => (px - x) * ux + (py - y) * uy;
  return {
    laid: group.map((stroke) => {
      const [from, to] = [along(stroke.from), along(stroke.to)];
      return { stroke, low: Math.min(from, to), high: Math.max(from, to), isAhead: to >= from };
    }),
    pointAt: (place) => [x + place * ux, y + place * uy]
  };
}

/** Places where something begins or ends; those nearer than `SAME_POINT` to one another are one. */
const stopsOf = (laid: readonly Laid[]): readonly number[] =>
  laid
    .flatMap(({ low, high }) => [low, high])
    .sort((a, b) => a - b)
    .filter((place, at, places) => at === 0 || place - places[at - 1]! > SAME_POINT);

/** Whether one of them ends at the place and lies deep there. */
const isDeepAt = (members: readonly Laid[], place: number): boolean =>
  members.some(({ stroke, low, high, isAhead }) => {
    const [atLow, atHigh] = isAhead
      ? [stroke.isDeepFrom, stroke.isDeepTo]
      : [stroke.isDeepTo, stroke.isDeepFrom];
    const near = (end: number): boolean => Math.abs(end - place) <= 2 * SAME_POINT;
    return (near(low) && atLow) || (near(high) && atHigh);
  });

/** A stretch of a line in which the same strokes lie. */
interface Stretch {
  readonly low: number;
  readonly high: number;
  readonly isAhead: boolean;
  readonly isCornerLow: boolean;
  readonly isCornerHigh: boolean;
  readonly goesOnLow: number;
  readonly goesOnHigh: number;
  readonly piece: Omit<
    Piece,
    'from' | 'to' | 'circle' | 'length' | 'isCornerFrom' | 'isCornerTo' | 'goesOnFrom' | 'goesOnTo'
  >;
}

function stretchesOf(laid: readonly Laid[]): readonly Stretch[] {
  const stops = stopsOf(laid);
  const covers = stops.slice(1).map((high, at) => {
    const middle = (stops[at]! + high) / 2;
    return laid.filter((each) => each.low < middle && middle < each.high);
  });
  const depths = covers.map((members) =>
    largest(
      members.map(({ stroke }) => stroke),
      'depth'
    )
  );
  return covers.flatMap((members, at): Stretch[] => {
    if (members.length === 0) return [];
    const [depth, goesOnLow, goesOnHigh] = [depths[at]!, depths[at - 1] ?? 0, depths[at + 1] ?? 0];
    const [low, high] = [stops[at]!, stops[at + 1]!];
    const strokes = members.map(({ stroke }) => stroke);
    const owner = ownerOf(strokes);
    const others = othersIn(strokes, owner.of);
    return [
      {
        low,
        high,
        isAhead: members.find(({ stroke }) => stroke === owner)!.isAhead,
        isCornerLow: goesOnLow < depth && isDeepAt(members, low),
        isCornerHigh: goesOnHigh < depth && isDeepAt(members, high),
        goesOnLow,
        goesOnHigh,
        piece: {
          owner: owner.of,
          others,
          kind: kindOf(strokes, owner),
          depth,
          width: largest(strokes, 'width'),
          sharedLength: others.length > 0 ? high - low : 0,
          wireVolume: (high - low) * wireAreaOf(strokes)
        }
      }
    ];
  });
}

const isOneCut = (a: Stretch, b: Stretch): boolean =>
  a.high === b.low &&
  a.piece.owner === b.piece.owner &&
  a.piece.kind === b.piece.kind &&
  a.piece.depth === b.piece.depth &&
  a.piece.width === b.piece.width;

const joined = (a: Stretch, b: Stretch): Stretch => ({
  ...a,
  high: b.high,
  isCornerHigh: b.isCornerHigh,
  goesOnHigh: b.goesOnHigh,
  piece: {
    ...a.piece,
    others: [...new Set([...a.piece.others, ...b.piece.others])].sort(
      (one, other) => one.index - other.index
    ),
    sharedLength: a.piece.sharedLength + b.piece.sharedLength,
    wireVolume: a.piece.wireVolume + b.piece.wireVolume
  }
});

function together(group: readonly Straight[]): readonly Piece[] {
  const { laid, pointAt } = laidOut(group);
  const cuts: Stretch[] = [];
  for (const stretch of stretchesOf(laid)) {
    const last = cuts.at(-1);
    if (last && isOneCut(last, stretch)) cuts[cuts.length - 1] = joined(last, stretch);
    else cuts.push(stretch);
  }
  return cuts.map(
    ({ low, high, isAhead, isCornerLow, isCornerHigh, goesOnLow, goesOnHigh, piece }): Piece => ({
      ...piece,
      from: pointAt(isAhead ? low : high),
      to: pointAt(isAhead ? high : low),
      circle: null,
      length: high - low,
      isCornerFrom: isAhead ? isCornerLow : isCornerHigh,
      isCornerTo: isAhead ? isCornerHigh : isCornerLow,
      goesOnFrom: isAhead ? goesOnLow : goesOnHigh,
      goesOnTo: isAhead ? goesOnHigh : goesOnLow
    })
  );
}

/** Round slots are one where both centre and rim are nearer than half the widths together. */
function roundPieces(strokes: readonly Round[]): readonly Piece[] {
  const groups: Round[][] = [];
  for (const each of strokes) {
    const group = groups.find(([first]) => {
      const apart = (first!.of.loop.slot.width + each.of.loop.slot.width) / 2;
      const [dx, dy] = [first!.centre[0] - each.centre[0], first!.centre[1] - each.centre[1]];
      return Math.hypot(dx, dy) + Math.abs(first!.radius - each.radius) <= apart;
    });
    if (group) group.push(each);
    else groups.push([each]);
  }
  return groups.map((group): Piece => {
    const [{ of: owner, centre, radius }] = group as [Round, ...Round[]];
    const others = othersIn(group, owner);
    const length = 2 * Math.PI * radius;
    const start: Point = owner.tail?.[0] ?? [centre[0] + radius, centre[1]];
    return {
      owner,
      others,
      kind: 'round',
      from: start,
      to: start,
      circle: { centre, radius },
      length,
      depth: largest(group, 'depth'),
      width: largest(group, 'width'),
      sharedLength: others.length > 0 ? length : 0,
      wireVolume: length * wireAreaOf(group),
      isCornerFrom: false,
      isCornerTo: false,
      goesOnFrom: 0,
      goesOnTo: 0
    };
  });
}

export const piecesOf = (straight: readonly Straight[], round: readonly Round[]): readonly Piece[] => [
  ...groupsOf(straight).flatMap((group) => (group.length === 1 ? [alone(group[0]!)] : together(group))),
  ...roundPieces(round)
];
