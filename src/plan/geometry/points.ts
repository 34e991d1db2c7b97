/** Points and vectors of the plan, metres; angles in degrees counter-clockwise. */
import type { Point } from '../schema';

export const add = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]];
export const subtract = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
export const scale = (a: Point, factor: number): Point => [a[0] * factor, a[1] * factor];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];
/** Positive when b lies counter-clockwise of a. */
export const cross = (a: Point, b: Point): number => a[0] * b[1] - a[1] * b[0];
export const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
export const between = (a: Point, b: Point, share = 0.5): Point => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share
];

/** Cosine and sine; exact at quarter turns, so that a box turned by 90° keeps clean coordinates. */
const direction = (degrees: number): Point => {
  const turned = ((degrees % 360) + 360) % 360;
  if (turned === 0) return [1, 0];
  if (turned === 90) return [0, 1];
  if (turned === 180) return [-1, 0];
  if (turned === 270) return [0, -1];
  const radians = (turned * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
};

export function rotate(point: Point, degrees: number, pivot: Point = [0, 0]): Point {
  const [c, s] = direction(degrees);
  const x = point[0] - pivot[0];
  const y = point[1] - pivot[1];
  return [pivot[0] + x * c - y * s, pivot[1] + x * s + y * c];
}

/** Direction from a to b in degrees, 0 = along +x, in (−180, 180]. */
export const bearing = (a: Point, b: Point): number => (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;

/** The same direction in (−180, 180]. */
export function normalAngle(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  return turned > 180 ? turned - 360 : turned;
}
