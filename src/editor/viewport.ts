/**
 * Between the plan (metres, y up) and the drawing surface (pixels from the upper left corner, y down).
 */
import type { Point } from '#plan/schema';
import type { Box } from './geometry/box';
import type { Viewport } from './types';

/** Pixels per metre: from the whole coordinate range on one screen to single millimetres. */
export const SCALE_LIMITS = { min: 0.01, max: 5_000 } as const;
/** Share of the surface that a fit leaves free on each side. */
const FIT_MARGIN = 0.08;
/** A fit does not come closer than this, or a lone point would fill the screen. */
const CLOSEST_FIT = 400;

export const DEFAULT_VIEWPORT: Viewport = { centre: [0, 0], scale: 40, width: 800, height: 600 };

export const planToScreen = (view: Viewport, [x, y]: Point): Point => [
  view.width / 2 + (x - view.centre[0]) * view.scale,
  view.height / 2 - (y - view.centre[1]) * view.scale
];

export const screenToPlan = (view: Viewport, [x, y]: Point): Point => [
  view.centre[0] + (x - view.width / 2) / view.scale,
  view.centre[1] - (y - view.height / 2) / view.scale
];

const limited = (scale: number): number => Math.min(SCALE_LIMITS.max, Math.max(SCALE_LIMITS.min, scale));

/** The plan point under the screen point stays there. */
export function zoomedAbout(view: Viewport, factor: number, screen: Point): Viewport {
  const scale = limited(view.scale * factor);
  if (!(factor > 0) || scale === view.scale) return view;
  const [x, y] = screenToPlan(view, screen);
  const centre: Point = [x - (screen[0] - view.width / 2) / scale, y + (screen[1] - view.height / 2) / scale];
  return { ...view, centre, scale };
}

/** The middle of the screen stays where it is; pixels per metre. */
export const scaledTo = (view: Viewport, scale: number): Viewport => ({ ...view, scale: limited(scale) });

/** The drawing follows the hand: positive numbers move it to the right and down. */
export const pannedBy = (view: Viewport, dx: number, dy: number): Viewport => ({
  ...view,
  centre: [view.centre[0] - dx / view.scale, view.centre[1] + dy / view.scale]
});

export function fitted(view: Viewport, box: Box): Viewport {
  const usable = 1 - 2 * FIT_MARGIN;
  const across = (view.width * usable) / Math.max(box.right - box.left, 1e-9);
  const up = (view.height * usable) / Math.max(box.top - box.bottom, 1e-9);
  return {
    ...view,
    centre: [(box.left + box.right) / 2, (box.bottom + box.top) / 2],
    scale: limited(Math.min(across, up, CLOSEST_FIT))
  };
}

/** What of the plan is in sight. */
export function visibleBox(view: Viewport): Box {
  const [left, top] = screenToPlan(view, [0, 0]);
  const [right, bottom] = screenToPlan(view, [view.width, view.height]);
  return { left, bottom, right, top };
}
