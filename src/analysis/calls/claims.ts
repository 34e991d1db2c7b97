/**
 * Which calls are whose. A call may be for every vehicle that was over the loops while it began or held; one of them, the
 * first that has no call yet, owns it. So every vehicle is owner of a call, without one (merged with another, or missed),
 * and every call is owned, an extra one of its vehicles (split), or nobody's (false):
 * calls = vehicles − missed − merged + split + false.
 */
import type { Detection, MadeCall } from './outcome';
import type { Passage, Span } from './passages';
import type { Rules } from './rules';

export interface Claimed {
  readonly call: MadeCall;
  /** Numbers in the list of passages, in the order of their coming. */
  readonly passages: readonly number[];
  readonly owner: number | null;
}

const overlap = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;

/** The middle half: a weak vehicle is not called by what only touches its coming or leaving. */
const middleOf = ({ from, to }: Span): Span => ({
  from: from + (to - from) / 4,
  to: to - (to - from) / 4
});

/** A pulse says when its detection began; a call's presence holds from its own beginning. */
const spanOf = (call: MadeCall, detections: readonly Detection[], { isPulse }: Rules): Span =>
  isPulse ? { from: detections[call.detection]?.from ?? call.from, to: call.to } : call;

const isFor = (call: Span, { zone, stay, reach }: Passage, { isPulse }: Rules): boolean => {
  if (!zone) return overlap(call, middleOf(stay));
  return overlap(call, isPulse ? reach : zone);
};

/** Both lists in the order of their beginnings. */
export function claimsOf(
  calls: readonly MadeCall[],
  passages: readonly Passage[],
  detections: readonly Detection[],
  rules: Rules
): readonly Claimed[] {
  const owned = new Set<number>();
  let near: number[] = [];
  let next = 0;
  return calls.map((call) => {
    const span = spanOf(call, detections, rules);
    while (next < passages.length && passages[next]!.reach.from < span.to) near.push(next++);
    near = near.filter((k) => passages[k]!.reach.to > span.from);
    const mine = near.filter((k) => isFor(span, passages[k]!, rules));
    const free = mine.filter((k) => !owned.has(k));
    const owner = free.find((k) => passages[k]!.zone !== null) ?? free[0] ?? null;
    if (owner !== null) owned.add(owner);
    return { call, passages: mine, owner };
  });
}
