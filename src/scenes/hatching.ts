/** Parallel strokes over an area, clipped to its outline. */
import { add, cross, dot, scale, subtract } from '#plan/geometry/points';
import { sidesOf } from '#plan/geometry/polygons';
import type { Segment } from '#plan/geometry/segments';
import type { Point } from '#plan/schema';

/** More strokes than this are a tone, not a hatching. */
const MOST = 400;

/** Strokes along the unit vector, so far apart (metres), over what lies inside the outline by the even-odd rule. */
export function hatching(outline: readonly Point[], along: Point, apart: number): Segment[] {
  const across: Point = [-along[1], along[0]];
  const heights = outline.map((point) => dot(point, across));
  const first = Math.ceil(Math.min(...heights) / apart);
  const last = Math.floor(Math.max(...heights) / apart);
  if (!(last - first < MOST)) return [];
  const strokes: Segment[] = [];
  for (let number = first; number <= last; number++) {
    const height = number * apart;
    const crossings = sidesOf(outline)
      .filter(({ from, to }) => dot(from, across) > height !== dot(to, across) > height)
      .map(({ from, to }) => {
        const side = subtract(to, from);
        const share = (height - dot(from, across)) / cross(along, side);
        return dot(add(from, scale(side, share)), along);
      })
      .sort((a, b) => a - b);
    const at = (place: number): Point => add(scale(across, height), scale(along, place));
    for (let k = 0; k + 1 < crossings.length; k += 2)
      strokes.push({ from: at(crossings[k]!), to: at(crossings[k + 1]!) });
  }
  return strokes;
}
