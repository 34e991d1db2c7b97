import type { Scene } from './scene';
import type { PointerInput, Viewport } from './types';

type Pointer = PointerInput['pointer'];

/** Pixels within which a pointer counts as on something. */
export const REACH: Readonly<Record<Pointer, number>> = { mouse: 8, pen: 8, touch: 14 };
/** Pixels that a press may wander and still be a click. */
const WANDER: Readonly<Record<Pointer, number>> = { mouse: 4, pen: 5, touch: 10 };

/** The reach in metres at the present zoom. */
export const tolerance = (pointer: Pointer, view: Viewport): number => REACH[pointer] / view.scale;

/** The reach of snapping, metres: as many pixels as the settings say, for a finger in proportion. */
export const snapReach = (pointer: Pointer, { snap, viewport }: Scene): number =>
  (snap.tolerance * REACH[pointer]) / REACH.mouse / viewport.scale;

interface Press {
  readonly screen: readonly [number, number];
  readonly pointer: Pointer;
}

export const hasMoved = (start: Press, now: Press): boolean =>
  Math.hypot(now.screen[0] - start.screen[0], now.screen[1] - start.screen[1]) > WANDER[start.pointer];
