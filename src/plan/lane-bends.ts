/** What a lane was bent from. The centreline counts: bends that do not make it are not believed. */
import { bentLine, type Bent } from './geometry/bends';
import { distanceToSegment } from './geometry/segments';
import type { Bends, Lane, Point } from './schema';

/** Metres by which the bends' line may differ from the centreline. */
const BELIEVED = 0.01;

const farthest = (points: readonly Point[], line: readonly Point[]): number =>
  Math.max(
    ...points.map((point) =>
      line
        .slice(1)
        .reduce(
          (least, to, index) => Math.min(least, distanceToSegment(point, { from: line[index]!, to })),
          Infinity
        )
    )
  );

function makes(bends: Bends, centreline: readonly Point[]): boolean {
  if (bends.points.length !== bends.radii.length) return false;
  const line = bentLine(bends);
  if (line.length < 2) return false;
  return farthest(line, centreline) <= BELIEVED && farthest(centreline, line) <= BELIEVED;
}

const known = new WeakMap<Lane, Bends | null>();

/** The lane's bends if they make its centreline within a centimetre; null if they do not, or there are none. */
export function bendsOf(lane: Lane): Bends | null {
  if (!lane.bends) return null;
  const found = known.get(lane);
  if (found !== undefined) return found;
  const bends = makes(lane.bends, lane.centreline) ? lane.bends : null;
  known.set(lane, bends);
  return bends;
}

/** The points that the lane is drawn by: the corners of a bent one, else those of its centreline. */
export const cornersOf = (lane: Lane): Bent =>
  bendsOf(lane) ?? { points: lane.centreline, radii: lane.centreline.map(() => 0) };
