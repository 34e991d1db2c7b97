/**
 * Which straight strokes lie in one slot.
 *
 * Two of them do where they run beside each other nearer than half their widths together: then no pavement is left
 * between the two slots, whoever saws them. And they go on in one another where one begins at the end of the other in the
 * same direction.
 */
import type { Straight } from './strokes';

/** Shorter than this, metres, two strokes only meet. */
const LEAST_OVERLAP = 0.02;
/** Metres: ends nearer than this are one point, and a line that bends by less is straight. */
export const SAME_POINT = 1e-4;

interface Placed {
  readonly stroke: Straight;
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
  readonly length: number;
  readonly halfWidth: number;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

const placed = (stroke: Straight): Placed => {
  const [[x, y], [tox, toy]] = [stroke.from, stroke.to];
  return {
    stroke,
    x,
    y,
    ux: (tox - x) / stroke.length,
    uy: (toy - y) / stroke.length,
    length: stroke.length,
    halfWidth: stroke.of.loop.slot.width / 2,
    minX: Math.min(x, tox),
    maxX: Math.max(x, tox),
    minY: Math.min(y, toy),
    maxY: Math.max(y, toy)
  };
};

/** Of both in one slot; the shorter is measured against the longer. */
function isOneSlot(a: Placed, b: Placed): boolean {
  const [long, short] = a.length >= b.length ? [a, b] : [b, a];
  const apart = a.halfWidth + b.halfWidth;
  const rise = long.ux * short.uy - long.uy * short.ux;
  const run = long.ux * short.ux + long.uy * short.uy;
  // steeper than this, LEAST_OVERLAP of the shorter would not stay within `apart` on both sides of the longer
  if (Math.abs(rise) * LEAST_OVERLAP > 2 * apart) return false;
  const [dx, dy] = [short.x - long.x, short.y - long.y];
  const along = long.ux * dx + long.uy * dy;
  const aside = long.ux * dy - long.uy * dx;
  const alongEnd = along + run * short.length;
  const asideEnd = aside + rise * short.length;
  const low = Math.max(0, Math.min(along, alongEnd));
  const high = Math.min(long.length, Math.max(along, alongEnd));
  if (high - low < -SAME_POINT) return false;
  if (high - low < LEAST_OVERLAP)
    return Math.abs(run) > 0.5 && Math.abs(aside) < SAME_POINT && Math.abs(asideEnd) < SAME_POINT;
  const asideAt = (place: number): number =>
    aside + ((asideEnd - aside) * (place - along)) / (alongEnd - along);
  return Math.abs(asideAt(low)) <= apart && Math.abs(asideAt(high)) <= apart;
}

/** Strokes in one slot together, in their order; a stroke that shares nothing is a group of its own. */
export function groupsOf(strokes: readonly Straight[]): readonly (readonly Straight[])[] {
  const all = strokes.map(placed);
  const leader = all.map((_, index) => index);
  const leaderOf = (index: number): number => {
    let at = index;
    while (leader[at] !== at) at = leader[at] = leader[leader[at]!]!;
    return at;
  };
  // a sweep along the site's longer side meets only strokes that are abreast of each other
  const spread = (low: keyof Placed, high: keyof Placed): number =>
    all.reduce((most, each) => Math.max(most, each[high] as number), -Infinity) -
    all.reduce((least, each) => Math.min(least, each[low] as number), Infinity);
  const isWide = spread('minX', 'maxX') >= spread('minY', 'maxY');
  const [low, high, lowAcross, highAcross] = isWide
    ? (['minX', 'maxX', 'minY', 'maxY'] as const)
    : (['minY', 'maxY', 'minX', 'maxX'] as const);
  const widest = all.reduce((most, { halfWidth }) => Math.max(most, 2 * halfWidth), 0);
  const order = all.map((_, index) => index).sort((one, other) => all[one]![low] - all[other]![low]);
  for (let i = 0; i < order.length; i++) {
    const a = all[order[i]!]!;
    for (let j = i + 1; j < order.length; j++) {
      const b = all[order[j]!]!;
      if (b[low] > a[high] + widest) break;
      if (b[lowAcross] > a[highAcross] + widest || a[lowAcross] > b[highAcross] + widest) continue;
      if (!isOneSlot(a, b)) continue;
      const [one, other] = [leaderOf(order[i]!), leaderOf(order[j]!)];
      // the earliest leads, so that groups come in the order of the drawing
      leader[Math.max(one, other)] = Math.min(one, other);
    }
  }
  const groups = new Map<number, Straight[]>();
  strokes.forEach((stroke, index) => {
    const at = leaderOf(index);
    const group = groups.get(at);
    if (group) group.push(stroke);
    else groups.set(at, [stroke]);
  });
  return [...groups.values()];
}
