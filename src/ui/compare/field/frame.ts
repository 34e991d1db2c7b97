/** The edges of a plane in its own coordinates (u along or to the right, v upwards), and where its nodes lie. Metres. */
import type { FieldPicture, FieldPlane } from '#analysis/field-picture/results';
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';

export interface PlaneEdges {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** A section counts from its beginning; a plan has the plan's own coordinates. */
export const edgesOf = (plane: FieldPlane): PlaneEdges =>
  plane.kind === 'section'
    ? { left: 0, right: distance(plane.from, plane.to), bottom: plane.low_m, top: plane.high_m }
    : {
        left: Math.min(plane.from[0], plane.to[0]),
        right: Math.max(plane.from[0], plane.to[0]),
        bottom: Math.min(plane.from[1], plane.to[1]),
        top: Math.max(plane.from[1], plane.to[1])
      };

type Net = Pick<FieldPicture, 'columns' | 'rows'>;

/** The place of a node; between nodes too. */
export const placeAt = (
  { left, right, bottom, top }: PlaneEdges,
  net: Net,
  column: number,
  row: number
): Point => [
  left + (column / (net.columns - 1)) * (right - left),
  bottom + (row / (net.rows - 1)) * (top - bottom)
];
