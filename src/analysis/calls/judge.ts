/** An output against the truth: counts, and each mistake with its cause. */
import { causeOfFalse, causeOfMerged, causeOfMissed, causeOfSplit, type Case } from './causes';
import { claimsOf, type Claimed } from './claims';
import type { Passage } from './passages';
import type { Call, CallSummary, Mistake, MistakeKind } from './results';

export interface Judgement {
  readonly summary: Omit<CallSummary, 'circuit'>;
  readonly calls: readonly Call[];
  readonly mistakes: readonly Mistake[];
}

const shareOf = (spans: readonly { readonly from: number; readonly to: number }[], end: number): number => {
  let covered = 0;
  let until = 0;
  for (const { from, to } of spans) {
    covered += Math.max(0, to - Math.max(from, until));
    until = Math.max(until, to);
  }
  return end > 0 ? covered / end : 0;
};

const mistakesOf = (given: Case, claims: readonly Claimed[]): readonly Mistake[] => {
  const { passages } = given;
  const owner = new Set(claims.flatMap((each) => (each.owner === null ? [] : [each.owner])));
  const callsOf = new Map<number, number[]>();
  claims.forEach((claim, number) =>
    claim.passages.forEach((k) => callsOf.set(k, [...(callsOf.get(k) ?? []), number]))
  );
  const withoutOwn = passages.flatMap((passage, k): Mistake[] => {
    if (owner.has(k)) return [];
    const [first] = callsOf.get(k) ?? [];
    if (first !== undefined) return [causeOfMerged(given, claims, k, first)];
    return passage.isOver ? [causeOfMissed(given, k)] : [];
  });
  const withoutOwner = claims.flatMap((claim, number): Mistake[] => {
    if (claim.owner !== null) return [];
    return [
      claim.passages.length > 0
        ? causeOfSplit(given, claims, number, claim.passages[0]!)
        : causeOfFalse(given, claims, number)
    ];
  });
  return [...withoutOwn, ...withoutOwner].sort((a, b) => a.time_s - b.time_s);
};

/** A vehicle that is still on its way when the simulation ends counts where it has made a call already. */
const isKnown = (passage: Passage, k: number, claims: readonly Claimed[]): boolean =>
  passage.isOver || claims.some((claim) => claim.passages.includes(k));

export function judged(given: Case): Judgement {
  const { passages, outcome, end } = given;
  const claims = claimsOf(outcome.calls, passages, outcome.detections, given.rules);
  const mistakes = mistakesOf(given, claims);
  const count = (kind: MistakeKind): number => mistakes.filter((each) => each.kind === kind).length;
  return {
    summary: {
      vehicles: passages.filter((passage, k) => isKnown(passage, k, claims)).length,
      calls: outcome.calls.length,
      missed: count('missed'),
      merged: count('merged'),
      split: count('split'),
      false: count('false'),
      occupancy: shareOf(outcome.calls, end),
      trueOccupancy: shareOf(
        passages.map(({ stay }) => stay).sort((a, b) => a.from - b.from),
        end
      )
    },
    calls: claims.map(({ call, passages: mine }) => ({
      from_s: call.from,
      to_s: call.to,
      vehicles: mine.map((k) => passages[k]!.vehicle)
    })),
    mistakes
  };
}
