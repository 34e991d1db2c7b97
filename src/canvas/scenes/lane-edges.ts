/** Which stretches of the lanes' edges lie on an edge of another lane: they are drawn as dashes, once. */
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
  /** Place of its lane in the list. */
  readonly lane: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const nearOf =
  (lane: number) =>
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

/** 'before': on an edge of a lane that comes earlier in the list and draws the line for both. */
function adjoining({ from, to }: Segment, lane: number, all: readonly Near[]): 'no' | 'before' | 'after' {
  const middle = between(from, to);
  const [x, y] = middle;
  for (const near of all) {
    if (x < near.left || x > near.right || y < near.bottom || y > near.top || near.lane === lane) continue;
    if (distanceToSegment(middle, near.segment) < ADJOINING) return near.lane < lane ? 'before' : 'after';
  }
  return 'no';
}

/** Segments in a row that are drawn alike, as one line: dashes must not begin again at every point of a curve. */
function runsOf(edge: readonly Point[], lane: number, all: readonly Near[]): EdgeRun[] {
  const runs: { points: Point[]; kind: ReturnType<typeof adjoining> }[] = [];
  for (const segment of segmentsOf(edge)) {
    const kind = adjoining(segment, lane, all);
    const last = runs.at(-1);
    if (last?.kind === kind) last.points.push(segment.to);
    else runs.push({ points: [segment.from, segment.to], kind });
  }
  return runs
    .filter(({ kind }) => kind !== 'before')
    .map(({ points, kind }) => ({ points, adjoins: kind === 'after' }));
}

function edgesOf(lanes: readonly Lane[]): ReadonlyMap<Lane, readonly EdgeRun[]> {
  const all = lanes.flatMap((lane, at) =>
    [leftEdge(lane), rightEdge(lane)].flatMap(segmentsOf).map(nearOf(at))
  );
  return new Map(
    lanes.map((lane, at) => [
      lane,
      [leftEdge(lane), rightEdge(lane)].flatMap((edge) => runsOf(edge, at, all))
    ])
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
