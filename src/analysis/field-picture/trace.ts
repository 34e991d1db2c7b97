/**
 * Lines along a field in a plane, all of them at once: classical Runge–Kutta steps of each line's own length, as long as its
 * direction turns by no more than TURN in a step. A line ends where it closes, leaves the ground that it is followed on,
 * meets a wall, or where next to nothing of the field lies in the plane.
 */
import type { Point } from '#plan/schema';
import type { Steps } from '../steps';

/** Writes the directions of the field in the plane at `count` places; (0, 0) where it has none. */
export type Directions = (
  count: number,
  u: Float64Array,
  v: Float64Array,
  alongU: Float64Array,
  alongV: Float64Array
) => void;

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** Where lines are followed. */
export interface Ground extends Box {
  /** What no line passes through. */
  readonly walls: readonly (readonly Point[])[];
}

/** Radians. */
const TURN = 0.2;
const MOST_STEPS = 300;
/** Shares of the ground's diagonal. */
const LONGEST_STEP = 1 / 50;
const FIRST_STEP = 8e-5;
const SHORTEST_STEP = 2e-5;
/** How near a line comes to where the field in the plane vanishes or turns back. */
const NEAR_ENOUGH = 2e-3;
/** The mean of a step's directions is shorter than this where the field turns back within the step. */
const COHERENT = 0.9;
/** A line is closed when it passes its start at less than this share of its length: it is then drawn as closed … */
const CLOSING = 0.06;
/** … and has turned right round, or nearly, radians. */
const ROUND = 2 * Math.PI - 0.8;
/** One that has turned so far and not closed winds on, inwards or outwards: once round shows that. */
const MORE_THAN_ROUND = 2 * Math.PI + 0.3;

interface Line {
  readonly points: Point[];
  step: number;
  length: number;
  turned: number;
  state: 'open' | 'closed' | 'wound' | 'ended';
}

const contains = ({ left, right, low, high }: Box, u: number, v: number): boolean =>
  u >= left && u <= right && v >= low && v <= high;

const startAt = (seed: Point, step: number): Line => ({
  points: [seed],
  step,
  length: 0,
  turned: 0,
  state: 'open'
});

const angleBetween = ([au, av]: Point, [bu, bv]: Point): number =>
  Math.atan2(au * bv - av * bu, au * bu + av * bv);

/** By how much a step, an arc that turns by `angle`, passes beside the start; null where the start does not lie beside it. */
const missBy = (from: Point, to: Point, angle: number, start: Point): Point | null => {
  const [du, dv] = [to[0] - from[0], to[1] - from[1]];
  const share = ((start[0] - from[0]) * du + (start[1] - from[1]) * dv) / (du * du + dv * dv);
  if (!(share >= 0 && share <= 1)) return null;
  const bulge = (angle * share * (1 - share)) / 2;
  return [start[0] - from[0] - share * du - bulge * dv, start[1] - from[1] - share * dv + bulge * du];
};

/** The line brought back to its start: what it misses it by is spread along it. */
const close = (line: Line, miss: Point): void => {
  const { points } = line;
  const start = points[0]!;
  let along = 0;
  let before = start;
  points.forEach((point, k) => {
    along += Math.hypot(point[0] - before[0], point[1] - before[1]);
    before = point;
    const share = along / line.length;
    points[k] = [point[0] + share * miss[0], point[1] + share * miss[1]];
  });
  points.push(start);
  line.state = 'closed';
};

/** The share of a step before it meets one side of a wall; null where it does not. */
const meets = (from: Point, to: Point, a: Point, b: Point): number | null => {
  const [du, dv] = [to[0] - from[0], to[1] - from[1]];
  const [wu, wv] = [b[0] - a[0], b[1] - a[1]];
  const across = du * wv - dv * wu;
  if (across === 0) return null;
  const share = ((a[0] - from[0]) * wv - (a[1] - from[1]) * wu) / across;
  const along = ((a[0] - from[0]) * dv - (a[1] - from[1]) * du) / across;
  return share >= 0 && share <= 1 && along >= 0 && along <= 1 ? share : null;
};

const firstWall = (from: Point, to: Point, walls: Ground['walls']): number | null => {
  let first: number | null = null;
  for (const wall of walls)
    for (let k = 1; k < wall.length; k++) {
      const share = meets(from, to, wall[k - 1]!, wall[k]!);
      if (share !== null && (first === null || share < first)) first = share;
    }
  return first;
};

const advance = (line: Line, to: Point, angle: number, ground: Ground): void => {
  const from = line.points[line.points.length - 1]!;
  const wall = firstWall(from, to, ground.walls);
  if (wall !== null) {
    line.points.push([from[0] + wall * (to[0] - from[0]), from[1] + wall * (to[1] - from[1])]);
    line.state = 'ended';
    return;
  }
  line.length += Math.hypot(to[0] - from[0], to[1] - from[1]);
  line.turned += angle;
  if (Math.abs(line.turned) > ROUND) {
    const miss = missBy(from, to, angle, line.points[0]!);
    if (miss && Math.hypot(...miss) < CLOSING * line.length) return close(line, miss);
  }
  line.points.push(to);
  if (Math.abs(line.turned) > MORE_THAN_ROUND) line.state = 'wound';
  else if (!contains(ground, ...to) || line.points.length > MOST_STEPS) line.state = 'ended';
};

/** Traces from every seed in one sense: 1 along the field, −1 against it. */
function* follow(
  seeds: readonly Point[],
  directions: Directions,
  sense: 1 | -1,
  ground: Ground
): Steps<readonly Line[]> {
  const size = Math.hypot(ground.right - ground.left, ground.high - ground.low);
  const longest = LONGEST_STEP * size;
  const lines = seeds.map((seed) => startAt(seed, FIRST_STEP * size));
  const room = (): Float64Array => new Float64Array(lines.length);
  const [u, v] = [room(), room()];
  const slopes = Array.from({ length: 5 }, () => [room(), room()] as const);
  const ask = (count: number, at: number): void => directions(count, u, v, ...slopes[at]!);
  for (;;) {
    const open = lines.filter(({ state }) => state === 'open');
    if (open.length === 0) return lines;
    const put = (of: number, share: number): void =>
      open.forEach(({ points, step }, k) => {
        const [a, b] = points[points.length - 1]!;
        u[k] = a + (of < 0 ? 0 : sense * share * step * slopes[of]![0][k]!);
        v[k] = b + (of < 0 ? 0 : sense * share * step * slopes[of]![1][k]!);
      });
    put(-1, 0);
    ask(open.length, 0);
    put(0, 0.5);
    ask(open.length, 1);
    put(1, 0.5);
    ask(open.length, 2);
    put(2, 1);
    ask(open.length, 3);
    const turnsBack = open.map(({ points, step }, k) => {
      const [a, b] = points[points.length - 1]!;
      const mean = (axis: 0 | 1): number =>
        (slopes[0]![axis][k]! + 2 * (slopes[1]![axis][k]! + slopes[2]![axis][k]!) + slopes[3]![axis][k]!) / 6;
      u[k] = a + sense * step * mean(0);
      v[k] = b + sense * step * mean(1);
      return Math.hypot(mean(0), mean(1)) < COHERENT;
    });
    ask(open.length, 4);
    open.forEach((line, k) => {
      const [eu, ev] = [slopes[4]![0][k]!, slopes[4]![1][k]!];
      const angle = angleBetween([slopes[0]![0][k]!, slopes[0]![1][k]!], [eu, ev]);
      const isOver = turnsBack[k]! || (eu === 0 && ev === 0);
      if (!isOver && Math.abs(angle) <= TURN) {
        advance(line, [u[k]!, v[k]!], angle, ground);
        if (Math.abs(angle) < TURN / 2) line.step = Math.min(longest, 1.6 * line.step);
      } else if (line.step < (isOver ? NEAR_ENOUGH : SHORTEST_STEP) * size) line.state = 'ended';
      else line.step *= isOver ? 0.4 : Math.max(0.3, (0.8 * TURN) / Math.abs(angle));
    });
    yield;
  }
}

/** The line through every seed, along the field; one that closes ends where it began. */
export function* traceLines(
  seeds: readonly Point[],
  directions: Directions,
  ground: Ground
): Steps<readonly (readonly Point[])[]> {
  const onwards = yield* follow(seeds, directions, 1, ground);
  const open = onwards.filter(({ state }) => state === 'ended');
  const back = yield* follow(
    open.map(({ points }) => points[0]!),
    directions,
    -1,
    ground
  );
  return onwards.map((line) => {
    const before = back[open.indexOf(line)];
    return before ? [...before.points.slice(1).reverse(), ...line.points] : line.points;
  });
}
