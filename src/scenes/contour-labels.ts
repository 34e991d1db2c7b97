/** Where the figures of contour lines go: on their line, in sight, and clear of one another. */
import type { Box } from '#editor/geometry/box';
import type { Point } from '#plan/schema';

/** In screen pixels. */
export interface Wanted {
  readonly rings: readonly (readonly Point[])[];
  readonly width: number;
}

interface Screen {
  readonly width: number;
  readonly height: number;
}

const HEIGHT = 15;
const GAP = 6;
/** Of each line so many points are tried. */
const TRIED = 48;
/** Pixels from the rim of the screen. */
const RIM = 16;
/** A ring whose extent is less than this carries no label. */
const SMALLEST = 36;

const extent = (ring: readonly Point[]): number => {
  const xs = ring.map(([x]) => x);
  const ys = ring.map(([, y]) => y);
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
};

const largest = (rings: readonly (readonly Point[])[]): readonly Point[] =>
  rings.reduce<readonly Point[]>((best, ring) => (extent(ring) > extent(best) ? ring : best), []);

/**
 * One place a line, or null where there is none. Each line in turn takes the highest free point of its largest ring, so
 * that the figures of lines round the same thing stand in a column above it. `covered`: boxes that other writing takes.
 */
export function placeContourLabels(
  wants: readonly Wanted[],
  screen: Screen,
  covered: readonly Box[] = []
): (Point | null)[] {
  const taken: { readonly at: Point; readonly width: number }[] = [];
  const isFree = ([x, y]: Point, width: number): boolean =>
    x - width / 2 > RIM &&
    x + width / 2 < screen.width - RIM &&
    y > RIM &&
    y < screen.height - RIM &&
    covered.every(
      ({ left, right, bottom, top }) =>
        x + width / 2 < left || x - width / 2 > right || y + HEIGHT / 2 < bottom || y - HEIGHT / 2 > top
    ) &&
    taken.every(
      ({ at, width: other }) =>
        Math.abs(at[0] - x) > (width + other) / 2 + GAP || Math.abs(at[1] - y) > HEIGHT + GAP / 2
    );
  return wants.map(({ rings, width }) => {
    const ring = largest(rings);
    if (ring.length === 0 || extent(ring) < SMALLEST) return null;
    const step = Math.max(1, Math.floor(ring.length / TRIED));
    let best: Point | null = null;
    for (let k = 0; k < ring.length; k += step) {
      const at = ring[k]!;
      if ((!best || at[1] < best[1]) && isFree(at, width)) best = at;
    }
    if (best) taken.push({ at: best, width });
    return best;
  });
}
