/** The part of a line that lies in an area of the sheet. Millimetres. */
import type { Point } from '#plan/schema';
import { clippedLine } from '#scenes/paper-clip';
import type { Area } from '../layout/frame';

/** Null for a line that passes by. */
export const clipped = (
  from: Point,
  to: Point,
  { left, top, width, height }: Area
): readonly [Point, Point] | null =>
  clippedLine(from, to, { left, top, right: left + width, bottom: top + height });
