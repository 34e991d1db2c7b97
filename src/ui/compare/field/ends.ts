/**
 * The line of a section as its two ends: metres from the middle of the loop that is looked at, so that it goes along with
 * the loop. Every way of changing it leaves a length within the limits.
 */
import { add, bearing, between, distance, dot, rotate, scale, subtract } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { onRay } from '#editor/geometry/rays';
import type { Scene } from '#editor/scene';
import { createSnapper } from '#editor/snapping/snapper';
import type { Overlay, PointerInput } from '#editor/types';
import type { GripName } from '#scenes/section-line';

export type Ends = readonly [Point, Point];

/** Metres. */
export const LENGTH = { min: 0.2, max: 200 } as const;
/** Degrees between directions that shift keeps to. */
const DIRECTION_STEP = 15;
/** Metres: nearer points have no direction from one to the other. */
const SAME = 1e-6;

const limited = (length: number): number => Math.min(LENGTH.max, Math.max(LENGTH.min, length));
const middleOf = ([from, to]: Ends): Point => between(from, to);
/** To the left of the line. */
const leftOf = (ends: Ends): Point => rotate([0, 1], angleOf(ends));

/** Degrees counter-clockwise from +x, in [0, 360). */
export const angleOf = ([from, to]: Ends): number => (bearing(from, to) + 360) % 360;
export const lengthOf = (ends: Ends): number => distance(...ends);
/** How far the line passes the loop's middle, which lies at [0, 0]: positive where the line lies to the left of it. */
export const offsetOf = (ends: Ends): number => dot(middleOf(ends), leftOf(ends));

export const movedBy = ([from, to]: Ends, by: Point): Ends => [add(from, by), add(to, by)];

function about(middle: Point, degrees: number, length: number): Ends {
  const half = scale(rotate([1, 0], degrees), limited(length) / 2);
  return [subtract(middle, half), add(middle, half)];
}

/** About its own middle. */
export const turnedTo = (ends: Ends, degrees: number): Ends => about(middleOf(ends), degrees, lengthOf(ends));

/** To both sides alike. */
export const stretchedTo = (ends: Ends, length: number): Ends => about(middleOf(ends), angleOf(ends), length);

/** Sideways only. */
export const shiftedTo = (ends: Ends, offset: number): Ends =>
  movedBy(ends, scale(leftOf(ends), offset - offsetOf(ends)));

/** With one end there, or as near as the limits let it come; an end on top of the other leaves the line as it was. */
export function withEnd(ends: Ends, which: 'from' | 'to', at: Point): Ends {
  const other = which === 'from' ? ends[1] : ends[0];
  const length = distance(other, at);
  if (length < SAME) return ends;
  const end = add(other, scale(subtract(at, other), limited(length) / length));
  return which === 'from' ? [end, other] : [other, end];
}

export const gripOf = (ends: Ends, which: GripName): Point =>
  which === 'from' ? ends[0] : which === 'to' ? ends[1] : middleOf(ends);

export interface Carry {
  readonly which: GripName;
  /** The line when it was taken in hand, on the plan. */
  readonly begun: Ends;
  /** How far the hand has gone since, metres. */
  readonly by: Point;
}

export interface Carried {
  /** On the plan. */
  readonly ends: Ends;
  readonly guides: Overlay['guides'];
}

/**
 * Where the line goes with the hand. Shift keeps an end to directions of 15° and the middle to the line's own sideways way;
 * without it places on the plan attract, unless alt is held.
 */
export function carried(
  { which, begun, by }: Carry,
  input: Pick<PointerInput, 'shift' | 'alt' | 'pointer'>,
  scene: Scene
): Carried {
  const wanted = add(gripOf(begun, which), by);
  const put = (at: Point): Ends =>
    which === 'middle' ? movedBy(begun, subtract(at, gripOf(begun, which))) : withEnd(begun, which, at);
  if (input.shift) {
    const left = leftOf(begun);
    const at =
      which === 'middle'
        ? add(gripOf(begun, which), scale(left, dot(by, left)))
        : onRay(which === 'from' ? begun[1] : begun[0], wanted, DIRECTION_STEP);
    return { ends: put(at), guides: [] };
  }
  const snap = createSnapper(scene).point(wanted, input);
  return { ends: put(snap.at), guides: snap.guides };
}
