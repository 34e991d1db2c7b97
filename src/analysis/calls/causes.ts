/**
 * Why an output did not say what happened. Beside each cause stand the numbers that it rests on: a response and what would
 * have been needed, or a time and what it would have had to be.
 */
import type { Claimed } from './claims';
import type { Detection, Outcome } from './outcome';
import type { Passage, Span } from './passages';
import type { Cause, Mistake, MistakeKind } from './results';
import type { Rules } from './rules';
import { nodeBefore, valueOn, type Curve } from './signal';

export interface Adding {
  readonly vehicle: number;
  /** Now, and at its strongest place. */
  readonly response: number;
  readonly peak: number;
}

/** One channel's simulation, with all that a cause may hang on. */
export interface Case {
  readonly rules: Rules;
  readonly end: number;
  readonly response: Curve;
  readonly outcome: Outcome;
  /** In the order of their coming. */
  readonly passages: readonly Passage[];
  readonly referenceAt: (time: number) => number;
  /** Of one vehicle alone. */
  readonly ownResponse: (vehicle: number, time: number) => number;
  /** Everybody who adds something at a time, other lanes too, the strongest first. */
  readonly adding: (time: number) => readonly Adding[];
}

type Numbers = Partial<Pick<Mistake, 'response' | 'needed' | 'seconds' | 'neededSeconds'>>;

const mistake = (
  kind: MistakeKind,
  time: number,
  cause: Cause,
  who: { readonly vehicles: readonly number[]; readonly calls?: readonly number[] },
  numbers: Numbers
): Mistake => ({
  kind,
  time_s: time,
  cause,
  vehicles: who.vehicles,
  calls: who.calls ?? [],
  response: numbers.response ?? null,
  needed: numbers.needed ?? null,
  seconds: numbers.seconds ?? null,
  neededSeconds: numbers.neededSeconds ?? null
});

/** To the last digits that rounding leaves. */
const ALIKE = 1e-6;

const overlap = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;

/** Between two times, ends included: what a function that is straight between nodes takes at most or at least. */
function extremeBetween(
  valueAt: (time: number) => number,
  nodes: Float64Array,
  { from, to }: Span,
  which: 'lowest' | 'highest'
): number {
  const better = which === 'lowest' ? Math.min : Math.max;
  let best = better(valueAt(from), valueAt(to));
  for (let k = nodeBefore(nodes, from) + 1; k < nodes.length && nodes[k]! < to; k++)
    best = better(best, valueAt(nodes[k]!));
  return best;
}

const ownLowest = ({ ownResponse, response }: Case, vehicle: number, span: Span): number =>
  extremeBetween((time) => ownResponse(vehicle, time), response.at, span, 'lowest');

/** The last before a time at which the unit took a vehicle for the road. */
const tunedOutBefore = ({ outcome }: Case, time: number): Detection | undefined =>
  outcome.detections.findLast(({ to, by }) => by !== 'leaving' && by !== 'end' && to <= time);

export function causeOfMissed(given: Case, k: number): Mistake {
  const { rules, outcome } = given;
  const { vehicle, zone, peak } = given.passages[k]!;
  const missed = (cause: Cause, numbers: Numbers, others: readonly number[] = []): Mistake =>
    mistake('missed', zone?.from ?? peak.time, cause, { vehicles: [vehicle, ...others] }, numbers);
  if (!zone) return missed('too-weak', { response: peak.response, needed: rules.trip });
  const during = outcome.detections.filter((each) => overlap(each, zone));
  const [first] = during;
  const last = during[during.length - 1];
  if (!first || !last) return insensitive(given, zone, peak, missed);
  const longest = Math.max(...during.map(({ from, to }) => to - from));
  const stayed = { seconds: longest, neededSeconds: rules.delay };
  if (rules.delay > 0 && longest <= rules.delay + ALIKE) {
    if (last.by === 'longest presence') return missed('timed-out', stayed);
    if (during.length === 1 || last.to - first.from <= rules.delay)
      return missed('left-before-delay', stayed);
    const between = { from: first.to, to: last.from };
    const weakest = ownLowest(given, vehicle, between);
    return missed('lost-in-between', { response: weakest, needed: rules.release, ...stayed });
  }
  // the detection went on for somebody else, and its call began only when this one had left
  const lasting = during.find(({ from, to }) => to - from === longest)!;
  if (rules.delay > 0 && !rules.isPulse)
    return missed('left-before-delay', {
      seconds: Math.max(0, zone.to - Math.max(zone.from, lasting.from)),
      neededSeconds: rules.delay
    });
  const before = given.passages[k - 1];
  const others = before && overlap(before.reach, first) ? [before.vehicle] : [];
  const pulse = first.from + rules.delay;
  return missed(
    rules.isPulse ? 'not-re-armed' : 'still-occupied',
    {
      seconds: Math.max(0, zone.from - pulse),
      neededSeconds: rules.isPulse ? rules.rearm : first.to - pulse
    },
    others
  );
}

/** It would have tripped on an empty road, and nothing was detected. */
function insensitive(
  given: Case,
  zone: Span,
  peak: Passage['peak'],
  missed: (cause: Cause, numbers: Numbers) => Mistake
): Mistake {
  const { rules } = given;
  const reference = given.referenceAt(peak.time);
  const by = tunedOutBefore(given, zone.to);
  const needed = { response: peak.response, needed: rules.trip + reference };
  // the reference may also have come up under one that then moved on
  if (!by) return missed(reference > ALIKE * rules.trip ? 'tuned-out' : 'too-weak', needed);
  const recovery = rules.recovery * Math.log(100);
  return missed(by.by === 'longest presence' ? 'timed-out' : 'tuned-out', {
    ...needed,
    seconds: Math.max(0, zone.from - by.to),
    neededSeconds: recovery
  });
}

export function causeOfMerged(given: Case, claims: readonly Claimed[], k: number, number: number): Mistake {
  const { rules, outcome, passages } = given;
  const { vehicle, zone, peak } = passages[k]!;
  const claim = claims[number]!;
  const time = zone?.from ?? peak.time;
  // who of the same call came last before it; the owner where nobody did
  const earlier = claim.passages.findLast((each) => each < k) ?? claim.owner ?? k;
  const other = passages[earlier]!;
  const merged = (cause: Cause, numbers: Numbers, who = [other.vehicle, vehicle]): Mistake =>
    mistake('merged', time, cause, { vehicles: who, calls: [number] }, numbers);
  if (rules.isPulse)
    return merged('not-re-armed', {
      seconds: Math.max(0, time - claim.call.from),
      neededSeconds: rules.rearm
    });
  const running = outcome.detections.find(({ from, to }) => from < time - ALIKE && to >= time);
  if (!running) {
    const ended = outcome.detections.findLast(({ to }) => to <= time + ALIKE);
    const seconds = ended ? Math.max(0, time - ended.to) : Infinity;
    // the call began after it had come, for somebody else
    if (!zone && seconds > rules.extension)
      return merged('too-weak', { response: peak.response, needed: rules.trip });
    return merged('still-extended', {
      seconds: Number.isFinite(seconds) ? seconds : 0,
      neededSeconds: rules.extension
    });
  }
  const there = other.zone ?? other.stay;
  const apart = { seconds: Math.max(0, time - there.from), neededSeconds: there.to - there.from };
  if (there.to >= time) return merged('still-occupied', apart);
  const bridge = { from: there.to, to: time };
  const response = extremeBetween((at) => valueOn(given.response, at), given.response.at, bridge, 'lowest');
  const middle = (bridge.from + bridge.to) / 2;
  const added = given.adding(middle);
  const foreign = added.find((each) => passages.every((passage) => passage.vehicle !== each.vehicle));
  const numbers = { response, needed: rules.release, ...apart };
  // without the other lane the response would have fallen below the release
  if (
    foreign &&
    valueOn(given.response, middle) - foreign.response < rules.release + given.referenceAt(middle)
  )
    return merged('other-lane', numbers, [other.vehicle, vehicle, foreign.vehicle]);
  return merged('still-occupied', numbers);
}

export function causeOfSplit(given: Case, claims: readonly Claimed[], number: number, k: number): Mistake {
  const { rules, outcome, passages } = given;
  const { vehicle } = passages[k]!;
  const { call } = claims[number]!;
  const earlier = claims.findLastIndex((claim, at) => at < number && claim.passages.includes(k));
  const begun = outcome.detections[call.detection];
  const before = outcome.detections[call.detection - 1];
  const calls = earlier < 0 ? [number] : [earlier, number];
  const split = (cause: Cause, numbers: Numbers): Mistake =>
    mistake('split', call.from, cause, { vehicles: [vehicle], calls }, numbers);
  if (!begun || !before) return split('lost-in-between', {});
  const stood = { seconds: before.to - before.from };
  if (before.by === 'longest presence')
    return split('timed-out', {
      ...stood,
      neededSeconds: Number.isFinite(rules.longest) ? rules.longest : null
    });
  const weakest = ownLowest(given, vehicle, { from: before.to, to: begun.from });
  if (before.by === 'leaving' && weakest < rules.release)
    return split('lost-in-between', {
      response: weakest,
      needed: rules.release,
      seconds: begun.from - before.to,
      neededSeconds: rules.extension
    });
  return split('tuned-out', { ...stood, neededSeconds: rules.isPulse ? rules.rearm : null });
}

export function causeOfFalse(given: Case, claims: readonly Claimed[], number: number): Mistake {
  const { rules, outcome, passages } = given;
  const { call } = claims[number]!;
  const detection = outcome.detections[call.detection] ?? call;
  const added = given.adding(detection.from);
  const needed = rules.trip + given.referenceAt(detection.from);
  const about = (cause: Cause, vehicles: readonly number[], response: number): Mistake =>
    mistake('false', call.from, cause, { vehicles, calls: [number] }, { response, needed });
  const foreign = added.find((each) => passages.every((passage) => passage.vehicle !== each.vehicle));
  if (foreign && foreign.peak > needed) return about('other-lane', [foreign.vehicle], foreign.peak);
  const highest = extremeBetween(
    (time) => valueOn(given.response, time),
    given.response.at,
    detection,
    'highest'
  );
  return about(
    'several-together',
    added.map(({ vehicle }) => vehicle),
    highest
  );
}
