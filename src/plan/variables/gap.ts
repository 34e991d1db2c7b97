/** How far apart two loops lie: of their outlines seen from above, where they come nearest. */
import { add, distance, scale, subtract } from '../geometry/points';
import { contains, sidesOf } from '../geometry/polygons';
import { segmentDistance } from '../geometry/segments';
import type { Loop, Point, Shape, Site } from '../schema';
import { centreOf, moveShape, outlineOf } from '../shapes/index';
import { tidyShape } from '../edits/tidy';
import { around, byId, continuous, onSite, stepsOf, type VariableDefinition } from './definition';
import { reshaped } from './sizes';
import type { Variable } from './variable';

/** 0 where one lies in the other or they cross, metres. */
const clearOf = (a: readonly Point[], b: readonly Point[]): number => {
  if (contains(a, b[0]!) || contains(b, a[0]!)) return 0;
  let least = Infinity;
  for (const side of sidesOf(a))
    for (const other of sidesOf(b)) least = Math.min(least, segmentDistance(side, other));
  return least;
};

const gaps = new WeakMap<Shape, WeakMap<Shape, number>>();

/** While one loop is dragged the others keep their shapes: only its own gaps are measured anew, not those of every pair. */
const gapOf = (a: Shape, b: Shape): number => {
  const own = gaps.get(a) ?? new WeakMap<Shape, number>();
  gaps.set(a, own);
  const known = own.get(b);
  if (known !== undefined) return known;
  const found = clearOf(outlineOf(a), outlineOf(b));
  own.set(b, found);
  return found;
};

const pairOf = (site: Site, { subject, other }: Variable): readonly [Loop, Loop] | null => {
  const [a, b] = [byId(site.loops, subject), byId(site.loops, other)];
  return a && b && a !== b && distance(centreOf(a.shape), centreOf(b.shape)) > 0 ? [a, b] : null;
};

const EXACTLY = 1e-9;

/** So far along the line between the two middles, `apart`, the second is moved, metres; the gap grows with it throughout. */
const shiftFor = (
  a: readonly Point[],
  b: readonly Point[],
  towards: Point,
  apart: number,
  gap: number
): number => {
  const at = (shift: number): number =>
    clearOf(
      a,
      b.map((point) => add(point, scale(towards, shift)))
    );
  const present = at(0);
  // loops side by side: what it is moved by is what the gap grows by
  const straight = gap - present;
  if (Math.abs(at(straight) - gap) < EXACTLY) return straight;
  // nearer than upon one another they do not come: farther on, the gap grows again
  let [low, high] = straight < 0 ? [-apart, 0] : [0, straight];
  while (at(high) < gap) high += Math.max(1, high - low);
  while (high - low > EXACTLY) {
    const middle = (low + high) / 2;
    if (at(middle) < gap) low = middle;
    else high = middle;
  }
  return high;
};

const MOST_LOOPS = 40;

/** Every two that lie clear of one another, of a drawing with not too many. */
const pairsIn = ({ loops }: Site) =>
  loops.length > MOST_LOOPS
    ? []
    : loops.flatMap(({ id }, i) => loops.slice(i + 1).map((other) => ({ subject: id, other: other.id })));

export const gap: VariableDefinition = {
  value: ({ site }, variable) => {
    const pair = pairOf(site, variable);
    return pair && gapOf(pair[0].shape, pair[1].shape);
  },
  put: (experiment, variable, value) => {
    const [a, b] = pairOf(experiment.site, variable)!;
    if (value < 0) return null;
    const between = subtract(centreOf(b.shape), centreOf(a.shape));
    const apart = Math.hypot(...between);
    const towards = scale(between, 1 / apart);
    const shift = shiftFor(outlineOf(a.shape), outlineOf(b.shape), towards, apart, value);
    const shape = tidyShape(moveShape(b.shape, scale(towards, shift)));
    return onSite(experiment, reshaped(experiment.site, b, shape));
  },
  range: ({ site }, variable) => {
    const [a, b] = pairOf(site, variable)!;
    const present = gapOf(a.shape, b.shape);
    return continuous(...around(present, stepsOf(site).side, 10), stepsOf(site).side);
  },
  subjects: pairsIn
};
