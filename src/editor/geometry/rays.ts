import { add, bearing, scale } from '#plan/geometry/points';
import type { Point } from '#plan/schema';

/** The unit vector that points `degrees` counter-clockwise from the x axis. */
export function towards(degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

/** `to` moved onto the nearest ray from `from` whose direction is a multiple of `step` degrees. */
export function onRay(from: Point, to: Point, step: number): Point {
  const ray = towards(Math.round(bearing(from, to) / step) * step);
  const along = (to[0] - from[0]) * ray[0] + (to[1] - from[1]) * ray[1];
  return add(from, scale(ray, along));
}
