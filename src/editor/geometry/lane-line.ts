/** From the points that a hand gave to the line of a lane: straight pieces, arcs, and bends between straight pieces. */
import { arcTo, type Bent } from '#plan/geometry/bends';
import { distance, scale, subtract } from '#plan/geometry/points';
import type { Point } from '#plan/schema';

export interface LanePoint {
  readonly at: Point;
  /** The piece that ends here goes on as an arc in the direction of the last one. */
  readonly isArc: boolean;
}

/**
 * The corners and radii (m) of the line; null where an arc would have to turn back on itself. The first piece is straight:
 * there is no direction yet that an arc could go on in. `bend`: the radius between two straight pieces, metres.
 */
export function laneLine(given: readonly LanePoint[], bend: number): Bent | null {
  const points: Point[] = [];
  const radii: number[] = [];
  let endsInArc = false;
  const put = (at: Point, radius: number): void => {
    points.push(at);
    radii.push(radius);
  };
  for (const { at, isArc } of given) {
    const last = points.at(-1);
    const before = points.at(-2);
    if (last && distance(last, at) < 1e-6) continue;
    const ahead = last && before ? scale(subtract(last, before), 1 / distance(before, last)) : null;
    if (!isArc || !last || !ahead) {
      // What the line ended with becomes a corner now; behind an arc it stays as sharp as it was drawn.
      if (points.length > 1 && !endsInArc) radii[radii.length - 1] = bend;
      put(at, 0);
      endsInArc = false;
      continue;
    }
    const arc = arcTo(last, ahead, at);
    if (!arc) return null;
    // The arc begins on the side that ended here: its end is no corner any more.
    points.pop();
    radii.pop();
    for (const corner of arc.corners) put(corner, arc.radius);
    put(at, 0);
    endsInArc = arc.corners.length > 0;
  }
  return { points, radii };
}
