/**
 * Mutual inductance of two columns of wires.
 *
 * Between horizontal filaments M is a smooth function of the square of their height difference. Where two columns are
 * further apart in plan than FAR times their wires' heights differ, all pairs are therefore replaced by one pair at the
 * root mean square of the differences: the error is of fourth order, under 1e-5 of that pair's share (tests prove it).
 */
import { circleAndSegment, circleExternal, coaxialCircles, parallelCircles } from './circles';
import { mutualOfSegments } from './segments';
import { runLength, type Run, type StraightRun } from './winding';

const FAR = 12;

const straightPair = (a: StraightRun, b: StraightRun, z: number): number =>
  mutualOfSegments(
    [a.x, a.y, 0],
    [a.x + a.ux * a.length, a.y + a.uy * a.length, 0],
    [b.x, b.y, z],
    [b.x + b.ux * b.length, b.y + b.uy * b.length, z]
  );

/** One wire of each run, `z` metres apart in height. */
const single = (a: Run, b: Run, z: number): number => {
  if (a.kind === 'round') {
    return b.kind === 'round'
      ? parallelCircles(a.radius, b.radius, Math.hypot(b.x - a.x, b.y - a.y), z)
      : circleAndSegment(a.radius, b.x - a.x, b.y - a.y, b.ux, b.uy, b.length, z);
  }
  return b.kind === 'round' ? single(b, a, z) : straightPair(a, b, z);
};

/** Least distance in plan between a point and a straight run. */
const pointToRun = (x: number, y: number, run: StraightRun): number => {
  const along = Math.min(run.length, Math.max(0, (x - run.x) * run.ux + (y - run.y) * run.uy));
  return Math.hypot(run.x + along * run.ux - x, run.y + along * run.uy - y);
};

/** A lower bound of the distance in plan between two runs; 0 where they touch or cross. */
const planDistance = (a: Run, b: Run): number => {
  if (a.kind === 'round' && b.kind === 'round') {
    const apart = Math.hypot(b.x - a.x, b.y - a.y);
    return Math.max(0, apart - a.radius - b.radius, Math.abs(a.radius - b.radius) - apart);
  }
  if (a.kind === 'round') return b.kind === 'round' ? 0 : planDistance(b, a);
  const ex = a.x + a.ux * a.length;
  const ey = a.y + a.uy * a.length;
  if (b.kind === 'round') {
    const nearest = pointToRun(b.x, b.y, a);
    const farthest = Math.max(Math.hypot(a.x - b.x, a.y - b.y), Math.hypot(ex - b.x, ey - b.y));
    return Math.max(0, nearest - b.radius, b.radius - farthest);
  }
  const fx = b.x + b.ux * b.length;
  const fy = b.y + b.uy * b.length;
  const side = (r: StraightRun, x: number, y: number): number => (x - r.x) * r.uy - (y - r.y) * r.ux;
  const crossing = side(a, b.x, b.y) * side(a, fx, fy) < 0 && side(b, a.x, a.y) * side(b, ex, ey) < 0;
  if (crossing) return 0;
  return Math.min(
    pointToRun(b.x, b.y, a),
    pointToRun(fx, fy, a),
    pointToRun(a.x, a.y, b),
    pointToRun(ex, ey, b)
  );
};

/** Height differences, metres, that are equal but for rounding, count as one: a nanometre apart or less. */
const SAME_DIFFERENCE = 1e-9;

/** How often each difference in height occurs: evenly stacked columns have N, not N², of them. */
const heightDifferences = (
  a: readonly number[],
  b: readonly number[]
): readonly (readonly [difference: number, count: number])[] => {
  const found = new Map<number, [number, number]>();
  for (const za of a)
    for (const zb of b) {
      const difference = Math.abs(za - zb);
      const key = Math.round(difference / SAME_DIFFERENCE);
      const known = found.get(key);
      if (known) known[1]++;
      else found.set(key, [difference, 1]);
    }
  return [...found.values()];
};

/**
 * Mutual inductance, H, of two different columns, every wire of the one with every wire of the other. Wires of
 * different loops cannot lie closer than their insulation allows, `closest` metres: drawn into one another (two loops
 * in one slot) they count as that far apart.
 */
export const mutualOfRuns = (a: Run, b: Run, closest = 0): number => {
  let most = 0;
  let squares = 0;
  for (const za of a.heights)
    for (const zb of b.heights) {
      most = Math.max(most, Math.abs(za - zb));
      squares += (za - zb) * (za - zb);
    }
  const pairs = a.heights.length * b.heights.length;
  const apart = planDistance(a, b);
  if (apart > FAR * most && apart > closest) return pairs * single(a, b, Math.sqrt(squares / pairs));
  const least = apart < closest ? closest : 0;
  let sum = 0;
  for (const [z, count] of heightDifferences(a.heights, b.heights))
    sum += count * single(a, b, Math.max(z, least));
  return sum;
};

const selfSingle = (run: Run, z: number): number => {
  if (run.kind === 'straight') return straightPair(run, run, z);
  return coaxialCircles(run.radius, run.radius, z);
};

/** External self-inductance, H, of one column: its wires' own (filament to surface, Rosa 1908) and all pairs among them. */
export const selfOfRun = (run: Run, wireRadius: number): number => {
  const { heights } = run;
  const own = run.kind === 'round' ? circleExternal(run.radius, wireRadius) : selfSingle(run, wireRadius);
  let sum = heights.length * own;
  // every pair of different wires is met twice, and each wire meets itself once
  for (const [z, count] of heightDifferences(heights, heights))
    if (z > SAME_DIFFERENCE) sum += count * selfSingle(run, z);
  return sum;
};

export const totalLength = (runs: readonly Run[]): number =>
  runs.reduce((sum, run) => sum + run.heights.length * runLength(run), 0);
