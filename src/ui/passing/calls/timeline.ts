/** The part of the time that is in sight, and how values become pixels. Seconds, pixels. */
import { lastUpTo, type Stretch } from './stretches';

/** Nobody looks at less, s. */
const SHORTEST = 0.5;
/** What is in sight at first, s. */
const AT_FIRST = 60;
/** Responses need many nodes; over a longer time only the bars are drawn, s. */
export const LONGEST_TRACE = 600;

export const firstWindow = (duration_s: number): Stretch => ({
  from_s: 0,
  to_s: Math.max(SHORTEST, Math.min(AT_FIRST, duration_s))
});

/** The window of that length nearest to where it is wanted, all of it in the simulated time. */
function placed(from_s: number, length: number, duration_s: number): Stretch {
  const size = Math.min(Math.max(length, SHORTEST), Math.max(duration_s, SHORTEST));
  const from = Math.min(Math.max(0, from_s), Math.max(0, duration_s - size));
  return { from_s: from, to_s: from + size };
}

/** A factor over 1 shows less, about a time that keeps its place. */
export function zoomed(
  { from_s, to_s }: Stretch,
  factor: number,
  about_s: number,
  duration_s: number
): Stretch {
  const length = Math.min(Math.max((to_s - from_s) / factor, SHORTEST), Math.max(duration_s, SHORTEST));
  const about = Math.min(to_s, Math.max(from_s, about_s));
  const share = (about - from_s) / (to_s - from_s);
  return placed(about - share * length, length, duration_s);
}

/** By a share of what is in sight. */
export const panned = ({ from_s, to_s }: Stretch, share: number, duration_s: number): Stretch =>
  placed(from_s + share * (to_s - from_s), to_s - from_s, duration_s);

/** The same window while the time is in it; else a page with the time at a share of it, near its beginning unless told. */
export function following(window: Stretch, time: number, duration_s: number, share = 0.05): Stretch {
  if (time >= window.from_s && time <= window.to_s) return window;
  const length = window.to_s - window.from_s;
  return placed(time - share * length, length, duration_s);
}

/** The window cut to the simulated time. */
export const fitted = ({ from_s, to_s }: Stretch, duration_s: number): Stretch =>
  placed(from_s, to_s - from_s, duration_s);

/** The first of the ordered times after `time`, or the last before it; null at the end. */
export function neighbouring(times: readonly number[], time: number, direction: 1 | -1): number | null {
  // What is on the time to the last digit that is shown is where one already is.
  const near = 5e-4;
  return direction === 1
    ? (times.find((each) => each > time + near) ?? null)
    : (times.findLast((each) => each < time - near) ?? null);
}

/**
 * A piecewise linear curve as a path, cut to the window. Where several nodes fall on one pixel, their highest and lowest
 * stand for them, so that no peak is lost and the path stays short.
 */
export function curvePath(
  times: Float64Array,
  valueOf: (index: number) => number,
  { from_s, to_s }: Stretch,
  x: (time: number) => number,
  y: (value: number) => number
): string {
  const points: string[] = [];
  let column = Number.NaN;
  let low = 0;
  let high = 0;
  let last = 0;
  const put = (at: number, value: number) => points.push(`${at.toFixed(1)} ${y(value).toFixed(1)}`);
  const finish = () => {
    if (Number.isNaN(column)) return;
    if (high !== low) {
      put(column, high);
      put(column, low);
    }
    put(column, last);
  };
  for (let index = 0; index < times.length; index++) {
    // One node on either side of the window leads the line to its edges.
    if (index + 1 < times.length && times[index + 1]! < from_s) continue;
    if (index > 0 && times[index - 1]! > to_s) break;
    const at = Math.round(x(times[index]!) * 2) / 2;
    const value = valueOf(index);
    if (at === column) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    } else {
      finish();
      column = at;
      low = high = value;
    }
    last = value;
  }
  finish();
  return points.length > 1 ? `M${points.join('L')}` : '';
}

/** Straight between the nodes; null outside of them. */
export function valueAt(times: Float64Array, values: Float64Array, time: number): number | null {
  const last = times.length - 1;
  if (last < 0 || time < times[0]! || time > times[last]!) return null;
  const low = lastUpTo(times.length, (index) => times[index]!, time);
  if (low === last) return values[last]!;
  const span = times[low + 1]! - times[low]!;
  const share = span > 0 ? (time - times[low]!) / span : 0;
  return values[low]! + share * (values[low + 1]! - values[low]!);
}

/** Bars as one path; what would be less than a pixel apart is one bar, and none is narrower than a pixel. */
export function barsPath(
  stretches: readonly Stretch[],
  x: (time: number) => number,
  top: number,
  height: number
): string {
  const bars: { left: number; right: number }[] = [];
  for (const { from_s, to_s } of stretches) {
    const left = x(from_s);
    const right = Math.max(left + 1, x(to_s));
    const before = bars.at(-1);
    if (before && left - before.right < 0.5) before.right = Math.max(before.right, right);
    else bars.push({ left, right });
  }
  return bars
    .map(
      ({ left, right }) =>
        `M${left.toFixed(1)} ${top}H${right.toFixed(1)}V${top + height}H${left.toFixed(1)}Z`
    )
    .join('');
}

/** The round number, 1, 2 or 5 with noughts, that is not below the value; for a scale that does not jump with every page. */
export function roundAbove(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value));
  const factor = [1, 2, 5, 10].find((each) => each * decade >= value * (1 - 1e-12)) ?? 10;
  return factor * decade;
}

/** Round in seconds, minutes and hours. */
const TICK_STEPS = [
  0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1_800, 3_600, 7_200, 14_400
];

/** Round times in the window, at most so many, and how far they are apart. */
export function timeTicks(
  { from_s, to_s }: Stretch,
  most: number
): { readonly step: number; readonly times: readonly number[] } {
  const length = to_s - from_s;
  const step = TICK_STEPS.find((each) => length / each <= most) ?? TICK_STEPS.at(-1)!;
  const first = Math.ceil(from_s / step - 1e-9);
  const last = Math.floor(to_s / step + 1e-9);
  const times = Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step);
  return { step, times };
}
