/** Boxes seen along one axis, so that snapping is written once for x and y. */
import type { Point } from '#plan/schema';
import type { Box } from '../geometry/box';

/** 0 for x, 1 for y. */
export type Axis = 0 | 1;

export interface Span {
  readonly low: number;
  readonly high: number;
}

export const spanOf = (box: Box, axis: Axis): Span =>
  axis === 0 ? { low: box.left, high: box.right } : { low: box.bottom, high: box.top };

export const middleOf = ({ low, high }: Span): number => (low + high) / 2;

export const overlap = (a: Span, b: Span): boolean => a.low < b.high && b.low < a.high;

/** The point at `along` on the axis and `across` on the other one. */
export const pointOn = (axis: Axis, along: number, across: number): Point =>
  axis === 0 ? [along, across] : [across, along];
