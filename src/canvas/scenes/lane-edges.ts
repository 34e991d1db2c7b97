/** Which stretches of the lanes' edges lie on an edge of another lane: they are drawn as dashes. */
import { between } from '#plan/geometry/points';
import { distanceToSegment, type Segment } from '#plan/geometry/segments';
import type { Lane, Point } from '#plan/schema';
import { leftEdge, rightEdge } from '#editor/geometry/lanes';
import { segmentsOf } from '#editor/geometry/lines';

/** Metres: edges of two lanes nearer than this are one line on the road. */
const ADJOINING = 0.3;

export interface EdgeRun {
  /** On the plan, metres. */
  readonly points: readonly Point[];
  readonly adjoins: boolean;
}

/** A segment with the box round it, widened by what counts as near. */
interface Near {
  readonly segment: Segment;
  readonly lane: Lane;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const nearOf =
  (lane: Lane) =>
  (segment: Segment): Near => {
    const { from, to } = segment;
    return {
      segment,
      lane,
      left: Math.min(from[0], to[0]) - ADJOINING,
      right: Math.max(from[0], to[0]) + ADJOINING,
      bottom: Math.min(from[1], to[1]) - ADJOINING,
      top: Math.max(from[1], to[1]) + ADJOINING
    };
  };

function adjoins({ from, to }: Segment, lane: Lane, all: readonly Near[]): boolean {
  const middle = between(from, to);
  const [x, y] = middle;
  for (const near of all) {
    if (x < near.left || x > near.right || y < near.bottom || y > near.top || near.lane === lane) continue;
    if (distanceToSegment(middle, near.segment) < ADJOINING) return true;
  }
  return false;
}

/** Segments in a row that are drawn alike, as one line: dashes must not begin again at every point of a curve. */
function runsOf(edge: readonly Point[], lane: Lane, all: readonly Near[]): EdgeRun[] {
  const runs: { points: Point[]; adjoins: boolean }[] = [];
  for (const segment of segmentsOf(edge)) {
    const now = adjoins(segment, lane, all);
    const last = runs.at(-1);
    if (last?.adjoins === now) last.points.push(segment.to);
    else runs.push({ points: [segment.from, segment.to], adjoins: now });
  }
  return runs;
}

function edgesOf(lanes: readonly Lane[]): ReadonlyMap<Lane, readonly EdgeRun[]> {
  const all = lanes.flatMap((lane) =>
    [leftEdge(lane), rightEdge(lane)].flatMap(segmentsOf).map(nearOf(lane))
  );
  return new Map(
    lanes.map((lane) => [lane, [leftEdge(lane), rightEdge(lane)].flatMap((edge) => runsOf(edge, lane, all))])
  );
}

const known = new WeakMap<readonly Lane[], ReadonlyMap<Lane, readonly EdgeRun[]>>();

/** Of each of the lanes; found once for a list of lanes, whatever the view. */
export function laneEdges(lanes: readonly Lane[]): ReadonlyMap<Lane, readonly EdgeRun[]> {
  const found = known.get(lanes);
  if (found) return found;
  const edges = edgesOf(lanes);
  known.set(lanes, edges);
  return edges;
}
