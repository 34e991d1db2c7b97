/** Which stretches of the lanes' edges lie on an edge of another lane: they are drawn as dashes, once. */
import { between } from '#plan/geometry/points';
import { distanceToSegment, type Segment } from '#plan/geometry/segments';
import type { Lane, Point } from '#plan/schema';
import { boxAround, boxesTouch, type Box } from '#editor/geometry/box';
import { laneOutline, leftEdge, rightEdge } from '#editor/geometry/lanes';
import { segmentsOf } from '#editor/geometry/lines';

/** Metres: edges of two lanes nearer than this are one line on the road. */
const ADJOINING = 0.3;

export interface EdgeRun {
  /** On the plan, metres. */
  readonly points: readonly Point[];
  readonly adjoins: boolean;
}

/** A segment with the box round it, widened by what counts as near. */
interface Near extends Box {
  readonly segment: Segment;
}

interface Edges {
  /** Of the left edge, then of the right one. */
  readonly segments: readonly Near[];
  readonly box: Box;
}

const widened = ({ left, right, bottom, top }: Box): Box => ({
  left: left - ADJOINING,
  right: right + ADJOINING,
  bottom: bottom - ADJOINING,
  top: top + ADJOINING
});

const edgesKnown = new WeakMap<Lane, Edges>();

function edgesOf(lane: Lane): Edges {
  const known = edgesKnown.get(lane);
  if (known) return known;
  const segments = [leftEdge(lane), rightEdge(lane)]
    .flatMap(segmentsOf)
    .map((segment) => ({ segment, ...widened(boxAround([segment.from, segment.to])!) }));
  const edges = { segments, box: widened(boxAround(laneOutline(lane))!) };
  edgesKnown.set(lane, edges);
  return edges;
}

function isNear({ from, to }: Segment, others: readonly Near[]): boolean {
  const middle = between(from, to);
  const [x, y] = middle;
  for (const near of others) {
    if (x < near.left || x > near.right || y < near.bottom || y > near.top) continue;
    if (distanceToSegment(middle, near.segment) < ADJOINING) return true;
  }
  return false;
}

/** Of each segment of the lane's edges whether it lies on the other lane's; null if none does. */
type Neighbour = readonly boolean[] | null;

const neighboursKnown = new WeakMap<Lane, WeakMap<Lane, Neighbour>>();

/** Found once for two lanes: in a gesture one lane changes, and what the others are to each other holds. */
function neighbour(lane: Lane, other: Lane): Neighbour {
  let known = neighboursKnown.get(lane);
  if (!known) neighboursKnown.set(lane, (known = new WeakMap()));
  const found = known.get(other);
  if (found !== undefined) return found;
  const [own, theirs] = [edgesOf(lane), edgesOf(other)];
  const near = boxesTouch(own.box, theirs.box)
    ? own.segments.map(({ segment }) => isNear(segment, theirs.segments))
    : [];
  const made = near.includes(true) ? near : null;
  known.set(other, made);
  return made;
}

type Kind = 'alone' | 'first' | 'drawn by another';

/** Segments in a row that are drawn alike, as one line: dashes must not begin again at every point of a curve. */
function runsOf(edge: readonly Point[], kindOf: (segment: number) => Kind): EdgeRun[] {
  const runs: { points: Point[]; kind: Kind }[] = [];
  segmentsOf(edge).forEach(({ from, to }, index) => {
    const kind = kindOf(index);
    const last = runs.at(-1);
    if (last?.kind === kind) last.points.push(to);
    else runs.push({ points: [from, to], kind });
  });
  return runs
    .filter(({ kind }) => kind !== 'drawn by another')
    .map(({ points, kind }) => ({ points, adjoins: kind === 'first' }));
}

/** A line that two lanes share is drawn by the one that comes first in the list. */
function laneRuns(lane: Lane, at: number, lanes: readonly Lane[]): readonly EdgeRun[] {
  const others = (list: readonly Lane[]): Neighbour[] =>
    list.map((other) => neighbour(lane, other)).filter((each) => each !== null);
  const before = others(lanes.slice(0, at));
  const after = others(lanes.slice(at + 1));
  const kindOf = (segment: number): Kind => {
    if (before.some((near) => near?.[segment])) return 'drawn by another';
    return after.some((near) => near?.[segment]) ? 'first' : 'alone';
  };
  const [left, right] = [leftEdge(lane), rightEdge(lane)];
  return [...runsOf(left, kindOf), ...runsOf(right, (segment) => kindOf(left.length - 1 + segment))];
}

const known = new WeakMap<readonly Lane[], ReadonlyMap<Lane, readonly EdgeRun[]>>();

/** Of each of the lanes; found once for a list of lanes, whatever the view. */
export function laneEdges(lanes: readonly Lane[]): ReadonlyMap<Lane, readonly EdgeRun[]> {
  const found = known.get(lanes);
  if (found) return found;
  const edges = new Map(lanes.map((lane, at) => [lane, laneRuns(lane, at, lanes)]));
  known.set(lanes, edges);
  return edges;
}
