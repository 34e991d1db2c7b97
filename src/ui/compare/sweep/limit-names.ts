/** Where the names of limits stand in a chart: at their lines, where no curve and no other line runs through them. Pure. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface LimitName {
  readonly text: string;
  /** Pixels, of its start and its foot. */
  readonly x: number;
  readonly y: number;
  /** The ground that it stands on. */
  readonly ground: Box;
}

/** Pixels between the ends of the plot and a name, and between a name and its line. */
const ASIDE = 5;
const APART = 4;
/** So many places along a line are tried. */
const PLACES = 13;

/** Whether the straight line between two spots runs through a box. */
function crosses({ left, right, top, bottom }: Box, from: Spot, to: Spot): boolean {
  const [a, b] = from.x <= to.x ? [from, to] : [to, from];
  if (b.x < left || a.x > right) return false;
  const at = (x: number): number => (b.x > a.x ? a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x) : a.y);
  const ys = b.x > a.x ? [at(Math.max(left, a.x)), at(Math.min(right, b.x))] : [a.y, b.y];
  return Math.max(...ys) >= top && Math.min(...ys) <= bottom;
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** From the right end to the left one: both ends first, then what lies between, from the right. */
function starts(left: number, right: number, width: number): readonly number[] {
  const [first, last] = [left + ASIDE, Math.max(left + ASIDE, right - ASIDE - width)];
  const between = Array.from(
    { length: PLACES - 2 },
    (_, k) => last + ((first - last) * (k + 1)) / (PLACES - 1)
  );
  return [last, first, ...between];
}

/**
 * `curves`: their points, gaps left out, piece by piece. `line`: height of a line of text; `letter`: width of a character on
 * the average. Where there is no free place, the name stands where the least runs through.
 */
export function limitNames(
  limits: readonly { readonly text: string; readonly at: number }[],
  curves: readonly (readonly Spot[])[],
  plot: Box,
  line: number,
  letter: number
): readonly LimitName[] {
  const placed: LimitName[] = [];
  const pieces = [
    ...curves.flatMap((curve) => curve.slice(1).map((to, k) => [curve[k]!, to] as const)),
    ...curves.flatMap((curve) => (curve.length === 1 ? [[curve[0]!, curve[0]!] as const] : []))
  ];
  for (const { text, at } of limits) {
    const width = text.length * letter;
    const others = limits.filter((other) => other.at !== at).map((other) => other.at);
    const spots = starts(plot.left, plot.right, width).flatMap((x) =>
      [at - APART, at + line].map((y) => ({ x, y }))
    );
    let best: { readonly name: LimitName; readonly faults: number } | null = null;
    for (const { x, y } of spots) {
      const ground = { left: x - 2, right: x + width + 2, top: y - line * 0.85, bottom: y + line * 0.2 };
      const faults =
        pieces.filter(([from, to]) => crosses(ground, from, to)).length +
        others.filter((other) => other >= ground.top && other <= ground.bottom).length +
        (ground.top < plot.top || ground.bottom > plot.bottom ? 100 : 0) +
        (placed.some((name) => overlap(name.ground, ground)) ? 1000 : 0);
      if (!best || faults < best.faults) best = { name: { text, x, y, ground }, faults };
    }
    if (best) placed.push(best.name);
  }
  return placed;
}
