import type { Point } from '#plan/schema';

/** Where on the surface an event happened, pixels from its upper left corner. */
export function placeOf(event: { clientX: number; clientY: number }, surface: HTMLElement): Point {
  const { left, top } = surface.getBoundingClientRect();
  return [event.clientX - left, event.clientY - top];
}
