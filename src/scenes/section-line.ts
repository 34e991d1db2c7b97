/** Where the line of a section runs on the screen, where its letters stand, and where a hand takes hold of it: pixels. */
import { add, between, distance, scale } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { boxHolds, type Box } from '#editor/geometry/box';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { boxAbout } from './label-places';
import { areaOf, common, takenOf, type Obstacle } from './obstacles';
import type { SectionLine } from './frame';

export type GripName = 'from' | 'middle' | 'to';

export interface GripPlace {
  readonly which: GripName;
  readonly at: Point;
}

/** A grip as it is seen: half its side, and how far apart two of them must be for a pointer to tell them apart. */
export const GRIP = { half: 7, apart: 28 } as const;
export const LETTER_SIZE = 13;
/** From an end to the middle of its letter: beyond the grip, by more where texts are larger. */
const AWAY = { grip: GRIP.half + 1, letter: 10 } as const;
/** A letter with its plate, at the usual size of texts. */
const LETTER_BOX = { width: 18, height: 19 } as const;
/** Shorter lines than this are not drawn. */
const SHORTEST = 14;

export interface SectionOnScreen {
  readonly ends: readonly [Point, Point];
  /** Unit vectors along the line, and the way that one looks. */
  readonly along: Point;
  readonly sight: Point;
  /** Middles of the letters. */
  readonly letters: readonly [Point, Point];
}

export const letterBox = (at: Point, textScale: number): Box =>
  boxAbout(at, { width: LETTER_BOX.width * textScale, height: LETTER_BOX.height * textScale });

/** Beyond the end of its line, or beside that where it would cover more of what lies there or leave the screen. */
function letterPlace(
  end: Point,
  outwards: Point,
  sight: Point,
  screen: Box,
  textScale: number,
  covered: readonly Obstacle[]
): Point {
  const away = AWAY.grip + AWAY.letter * textScale;
  const slanting = (side: number): Point => scale(add(outwards, scale(sight, side)), Math.SQRT1_2);
  let best: { readonly at: Point; readonly cost: number } | null = null;
  for (const way of [outwards, slanting(-1), scale(sight, -1), slanting(1)]) {
    const at = add(end, scale(way, away));
    const box = letterBox(at, textScale);
    const cost =
      areaOf(box) - common(box, screen) + covered.reduce((sum, other) => sum + takenOf(box, other), 0);
    if (!best || cost < best.cost) best = { at, cost };
  }
  return best!.at;
}

/** Null for a line too short to be seen. `covered`: what the letters keep clear of. */
export function sectionOnScreen(
  { from, to }: SectionLine,
  view: Viewport,
  textScale: number,
  covered: readonly Obstacle[] = []
): SectionOnScreen | null {
  const ends = [planToScreen(view, from), planToScreen(view, to)] as const;
  const length = distance(...ends);
  if (length < SHORTEST) return null;
  const along: Point = [(ends[1][0] - ends[0][0]) / length, (ends[1][1] - ends[0][1]) / length];
  // who sees the section from left to right looks to the left of its line; the screen's y runs downwards
  const sight: Point = [along[1], -along[0]];
  const screen = { left: 0, bottom: 0, right: view.width, top: view.height };
  const letter = (end: Point, outwards: 1 | -1): Point =>
    letterPlace(end, scale(along, outwards), sight, screen, textScale, covered);
  return { ends, along, sight, letters: [letter(ends[0], -1), letter(ends[1], 1)] };
}

/** The grips that lie in sight and far enough from one another; the one in the hand stays whatever becomes of the line. */
export function gripPlaces(
  { from, to }: SectionLine,
  view: Viewport,
  held: GripName | null
): readonly GripPlace[] {
  const [a, b] = [planToScreen(view, from), planToScreen(view, to)];
  const length = distance(a, b);
  const screen = { left: 0, bottom: 0, right: view.width, top: view.height };
  const places: readonly (GripPlace & { readonly needs: number })[] = [
    { which: 'from', at: a, needs: GRIP.apart },
    { which: 'middle', at: between(a, b), needs: 2 * GRIP.apart },
    { which: 'to', at: b, needs: GRIP.apart }
  ];
  return places
    .filter(({ which, at, needs }) => which === held || (length >= needs && boxHolds(screen, at)))
    .map(({ which, at }) => ({ which, at }));
}
