/**
 * The response of one circuit over time: the sum of what every vehicle adds at its place. That two vehicles over the same
 * loops see one another's currents is neglected: each adds as if it were alone.
 */
import type { Profile } from '../passing/results';
import type { Steps } from '../steps';
import type { Trajectory } from './results';

/** Straight between its nodes, nothing outside. For times in seconds or places in metres, ascending. */
export interface Curve {
  readonly at: Float64Array;
  readonly values: Float64Array;
}

export const NOTHING: Curve = { at: new Float64Array(0), values: new Float64Array(0) };

/** Number of the last node not beyond `at`; −1 before all of them. */
export const nodeBefore = (nodes: Float64Array, at: number): number => {
  let low = -1;
  let high = nodes.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (nodes[middle]! <= at) low = middle;
    else high = middle - 1;
  }
  return low;
};

export const valueOn = ({ at, values }: Curve, where: number): number => {
  const k = nodeBefore(at, where);
  if (k < 0 || (k === at.length - 1 && where > at[k]!)) return 0;
  if (k === at.length - 1) return values[k]!;
  const share = (where - at[k]!) / (at[k + 1]! - at[k]!);
  return values[k]! + share * (values[k + 1]! - values[k]!);
};

/** A profile is kept to within these shares of the trip threshold and of the response itself. */
const OF_THRESHOLD = 1e-3;
const OF_RESPONSE = 2e-3;

/** The profile with as few nodes as keep it (Ramer, Douglas and Peucker), led to nothing within a step at its ends. */
export function thinned({ from, step, values }: Profile, threshold: number): Curve {
  const last = values.length - 1;
  if (last < 1) return NOTHING;
  const kept = new Uint8Array(values.length);
  kept[0] = kept[last] = 1;
  const waiting: (readonly [number, number])[] = [[0, last]];
  for (let span = waiting.pop(); span; span = waiting.pop()) {
    const [low, high] = span;
    const slope = (values[high]! - values[low]!) / (high - low);
    let worst = 1;
    let at = -1;
    for (let k = low + 1; k < high; k++) {
      const apart = Math.abs(values[k]! - values[low]! - slope * (k - low));
      const share = apart / (OF_THRESHOLD * threshold + OF_RESPONSE * values[k]!);
      if (share > worst) [worst, at] = [share, k];
    }
    if (at < 0) continue;
    kept[at] = 1;
    waiting.push([low, at], [at, high]);
  }
  const nodes = Array.from(values.keys()).filter((k) => kept[k] === 1);
  if (nodes.every((k) => values[k]! < OF_THRESHOLD * threshold)) return NOTHING;
  return {
    at: Float64Array.of(from - step, ...nodes.map((k) => from + k * step), from + (last + 1) * step),
    values: Float64Array.of(0, ...nodes.map((k) => values[k]!), 0)
  };
}

/** One who comes or goes in the middle of a profile does so within this time, s. */
const SUDDENLY = 1e-3;

/** A curve that is written node by node into room for `most` of them. */
class CurveWriter {
  private readonly at: Float64Array;
  private readonly values: Float64Array;
  private count = 0;

  constructor(most: number) {
    this.at = new Float64Array(most);
    this.values = new Float64Array(most);
  }

  /** Left out where it is not after the last. */
  put(at: number, value: number): void {
    if (this.count > 0 && at <= this.at[this.count - 1]!) return;
    this.at[this.count] = at;
    this.values[this.count++] = value;
  }

  written(): Curve {
    return { at: this.at.subarray(0, this.count), values: this.values.subarray(0, this.count) };
  }
}

/** What one vehicle adds over time. */
export function contributionOf({ times, places }: Trajectory, profile: Curve): Curve {
  const nodes = profile.at;
  const last = nodes.length - 1;
  const end = times.length - 1;
  if (last < 1 || end < 1 || places[end]! <= nodes[0]! || places[0]! >= nodes[last]!) return NOTHING;
  const curve = new CurveWriter(nodes.length + times.length + 2);
  const isInside = (place: number): boolean => place > nodes[0]! && place < nodes[last]!;
  if (isInside(places[0]!)) curve.put(times[0]! - SUDDENLY, 0);
  let node = nodeBefore(nodes, places[0]!) + 1;
  for (let k = 0; k < end && node <= last; k++) {
    const [from, to] = [places[k]!, places[k + 1]!];
    const [came, went] = [times[k]!, times[k + 1]!];
    if (isInside(from)) curve.put(came, valueOn(profile, from));
    for (; node <= last && nodes[node]! <= to; node++)
      curve.put(came + ((nodes[node]! - from) / (to - from)) * (went - came), profile.values[node]!);
  }
  if (node <= last && isInside(places[end]!)) {
    curve.put(times[end]!, valueOn(profile, places[end]!));
    curve.put(times[end]! + SUDDENLY, 0);
  }
  return curve.written();
}

/** Nodes between two places where a newer drawing may come in. */
const AT_ONCE = 1 << 14;

/** The sum of curves from nothing to `end`, with a node wherever one of them bends. */
export function* sumInSteps(curves: readonly Curve[], end: number): Steps<Curve> {
  const waiting = curves
    .filter(({ at }) => at.length > 1 && at[at.length - 1]! > 0 && at[0]! < end)
    .sort((a, b) => b.at[0]! - a.at[0]!);
  const active: { readonly curve: Curve; next: number }[] = [];
  const sums = new CurveWriter(waiting.reduce((count, { at }) => count + at.length, 2));
  let time = 0;
  let steps = 0;
  for (;;) {
    while (waiting.length > 0 && waiting[waiting.length - 1]!.at[0]! <= time)
      active.push({ curve: waiting.pop()!, next: 1 });
    let sum = 0;
    let next = waiting.length > 0 ? waiting[waiting.length - 1]!.at[0]! : end;
    for (let k = active.length - 1; k >= 0; k--) {
      const each = active[k]!;
      const nodes = each.curve.at;
      while (each.next < nodes.length && nodes[each.next]! <= time) each.next++;
      if (each.next === nodes.length) {
        // the last node is nothing
        active[k] = active[active.length - 1]!;
        active.pop();
        continue;
      }
      const before = each.next - 1;
      const share = (time - nodes[before]!) / (nodes[each.next]! - nodes[before]!);
      const from = each.curve.values[before]!;
      sum += from + share * (each.curve.values[each.next]! - from);
      next = Math.min(next, nodes[each.next]!);
    }
    sums.put(time, sum);
    if (time >= end) return sums.written();
    if (++steps % AT_ONCE === 0) yield;
    time = Math.min(next, end);
  }
}
