/** Stretches of time, in order and apart, and what holds at a time. */
import type { ChannelCalls } from '#analysis/calls/results';

export interface Stretch {
  readonly from_s: number;
  readonly to_s: number;
}

/** Number of the last of `count` ordered values that is not above `value`; −1 if all are. */
export function lastUpTo(count: number, valueOf: (index: number) => number, value: number): number {
  let low = -1;
  let high = count - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (valueOf(middle) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Ordered by their beginnings; a stretch holds from its beginning up to, but not at, its end. */
export function holdsAt(stretches: readonly Stretch[], time: number): boolean {
  const last = lastUpTo(stretches.length, (index) => stretches[index]!.from_s, time);
  return last >= 0 && time < stretches[last]!.to_s;
}

/** When the response was over the threshold; what has not ended lasts to the end. */
export function detectionsOf({ events }: Pick<ChannelCalls, 'events'>, end_s: number): readonly Stretch[] {
  const found: Stretch[] = [];
  let since: number | null = null;
  for (const { kind, time_s } of events) {
    if (kind === 'detected') since ??= time_s;
    else if (since !== null && (kind === 'left' || kind === 'tuned-out')) {
      found.push({ from_s: since, to_s: time_s });
      since = null;
    }
  }
  if (since !== null) found.push({ from_s: since, to_s: end_s });
  return found;
}

/** Those that lie in part within the window. */
export const within = <T extends Stretch>(stretches: readonly T[], { from_s, to_s }: Stretch): readonly T[] =>
  stretches.filter((each) => each.to_s >= from_s && each.from_s <= to_s);
