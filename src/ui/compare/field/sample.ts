/** What the field is at a place of a picture, between the nodes too. Tesla per ampere; degrees counter-clockwise from u. */
import type { FieldPicture } from '#analysis/field-picture/results';
import type { Point } from '#plan/schema';
import { edgesOf } from './frame';

export interface FieldReading {
  readonly strength_T: number;
  readonly u_T: number;
  readonly v_T: number;
  readonly across_T: number;
  /** Of the part in the plane. */
  readonly direction_deg: number;
}

type Vector = readonly [number, number, number];

const vectorAt = ({ field, columns }: FieldPicture, column: number, row: number): Vector => {
  const at = 3 * (row * columns + column);
  return [field[at]!, field[at + 1]!, field[at + 2]!];
};

/** Of every node, row by row from below. */
export function strengthsOf({ field, columns, rows }: FieldPicture): Float64Array {
  const strengths = new Float64Array(columns * rows);
  for (let node = 0; node < strengths.length; node++)
    strengths[node] = Math.hypot(field[3 * node]!, field[3 * node + 1]!, field[3 * node + 2]!);
  return strengths;
}

/** Straight between four nodes; null outside of the picture. */
export function fieldAt(picture: FieldPicture, [u, v]: Point): FieldReading | null {
  const { left, right, bottom, top } = edgesOf(picture.plane);
  const { columns, rows } = picture;
  const x = ((u - left) / (right - left)) * (columns - 1);
  const y = ((v - bottom) / (top - bottom)) * (rows - 1);
  if (!(x >= 0 && x <= columns - 1 && y >= 0 && y <= rows - 1)) return null;
  const column = Math.min(columns - 2, Math.floor(x));
  const row = Math.min(rows - 2, Math.floor(y));
  const [s, t] = [x - column, y - row];
  const corners = [
    [vectorAt(picture, column, row), (1 - s) * (1 - t)],
    [vectorAt(picture, column + 1, row), s * (1 - t)],
    [vectorAt(picture, column, row + 1), (1 - s) * t],
    [vectorAt(picture, column + 1, row + 1), s * t]
  ] as const;
  const part = (axis: 0 | 1 | 2): number =>
    corners.reduce((sum, [vector, share]) => sum + vector[axis] * share, 0);
  const [u_T, v_T, across_T] = [part(0), part(1), part(2)];
  return {
    strength_T: Math.hypot(u_T, v_T, across_T),
    u_T,
    v_T,
    across_T,
    direction_deg: (Math.atan2(v_T, u_T) * 180) / Math.PI
  };
}
