/** Where a point goes for what was typed; the pointer decides about the rest. */
import { add, bearing, distance, dot, normalAngle, scale, subtract } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { towards } from '../geometry/rays';
import type { EntryValues, SizeOffer, TypedSizes } from '../dimension-entry';

/** Metres: nearer points have no direction. */
const SAME = 1e-9;
/** Metres: a shorter stretch is no stretch, and no site is longer. */
const STRETCH = { least: 0.01, most: 40_000 } as const;
/** Degrees. */
const TURN = { least: -360, most: 360 } as const;

export const hasTyped = (typed: TypedSizes): boolean => Object.keys(typed).length > 0;

/** By length and angle of the stretch, or by the offset of its end. */
export function stretchTo(from: Point, pointer: Point, typed: TypedSizes): Point {
  const { length, angle, offset } = typed;
  if (offset) return add(from, offset);
  if (length === undefined && angle === undefined) return pointer;
  const away = subtract(pointer, from);
  if (angle === undefined) {
    const far = distance(from, pointer);
    const ray: Point = far < SAME ? [1, 0] : scale(away, 1 / far);
    return add(from, scale(ray, length ?? far));
  }
  const ray = towards(angle);
  return add(from, scale(ray, length ?? Math.max(0, dot(away, ray))));
}

/** The sizes of the stretch between two points. */
export const stretchSizes = (from: Point, to: Point): readonly SizeOffer[] => [
  { id: 'length', kind: 'length', value: distance(from, to), ...STRETCH },
  {
    id: 'angle',
    kind: 'angle',
    value: distance(from, to) < SAME ? 0 : normalAngle(bearing(from, to)),
    ...TURN
  }
];

/** How far something was moved. */
export const shiftSizes = ([across, up]: Point): readonly SizeOffer[] => [
  { id: 'across', kind: 'length', value: across },
  { id: 'up', kind: 'length', value: up }
];

export const shiftBy = (by: Point, { across, up, offset }: TypedSizes): Point =>
  offset ?? [across ?? by[0], up ?? by[1]];

/** With the sign that the pointer gives; to the right and up where it gives none. */
export const signed = (along: number, size: number): number => (along < 0 ? -size : size);

export const angleSize = (value: number): SizeOffer => ({ id: 'angle', kind: 'angle', value, ...TURN });

export const sizeOffer = (
  id: keyof EntryValues,
  value: number,
  { min: least, max: most }: { readonly min: number; readonly max: number }
): SizeOffer => ({ id, kind: 'length', value, least, most });
