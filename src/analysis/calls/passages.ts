/** What truly happened over one circuit's loops: when each vehicle of the lanes served was there, and how strongly. */
import type { Trajectory } from './results';
import type { Rules } from './rules';
import { nodeBefore, valueOn, type Curve } from './signal';

/** From one time to another, s. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface Passage {
  /** Its number in the traffic. */
  readonly vehicle: number;
  /** While its body is over the loops. */
  readonly stay: Span;
  /** From its own trip to its own release, if it were alone; null for one that never trips. */
  readonly zone: Span | null;
  /** Both together. */
  readonly reach: Span;
  /** The strongest that it would do alone. */
  readonly peak: { readonly time: number; readonly response: number };
  /** It has left again before the simulation ends. */
  readonly isOver: boolean;
}

/** When a vehicle first comes to a place, or last stands there; null where it never does. */
function timeAt({ times, places }: Trajectory, place: number, which: 'first' | 'last'): number | null {
  const last = places.length - 1;
  if (last < 1 || place > places[last]! || place < places[0]!) return null;
  let k = nodeBefore(places, place);
  if (which === 'first') {
    while (k > 0 && places[k]! >= place) k--;
    if (places[k]! >= place) return times[k]!;
  }
  if (k === last) return times[last]!;
  const share = (place - places[k]!) / (places[k + 1]! - places[k]!);
  return times[k]! + share * (times[k + 1]! - times[k]!);
}

/** Where a profile trips and releases, and its strongest place; the trip is null where it is too weak. */
export interface OwnZone {
  readonly trip: number | null;
  readonly release: number;
  readonly peak: number;
  readonly response: number;
}

export function ownZoneOf({ at, values }: Curve, { trip, release }: Rules): OwnZone {
  const crossing = (k: number, level: number): number =>
    at[k]! + ((level - values[k]!) / (values[k + 1]! - values[k]!)) * (at[k + 1]! - at[k]!);
  let peak = 0;
  values.forEach((value, k) => {
    if (value > values[peak]!) peak = k;
  });
  const strongest = { peak: at[peak] ?? 0, response: values[peak] ?? 0 };
  const first = values.findIndex((value) => value > trip);
  if (first < 1) return { trip: null, release: 0, ...strongest };
  const last = values.findLastIndex((value) => value >= release);
  return { trip: crossing(first - 1, trip), release: crossing(last, release), ...strongest };
}

/** Null for a vehicle that is not over the loops between the start and `end`. `extent`: the loops along its lane. */
export function passageOf(
  vehicle: number,
  trajectory: Trajectory,
  length: number,
  extent: Span,
  own: OwnZone,
  end: number
): Passage | null {
  const { times, places } = trajectory;
  const last = times.length - 1;
  if (last < 1) return null;
  const cameAt = (place: number): number =>
    place <= places[0]! ? times[0]! : (timeAt(trajectory, place, 'first') ?? Infinity);
  const leftAt = (place: number): number =>
    place < places[0]! ? times[0]! : (timeAt(trajectory, place, 'last') ?? times[last]!);
  const came = cameAt(extent.from - length / 2);
  const gone = leftAt(extent.to + length / 2);
  if (!(came < Math.min(gone, end)) || gone <= 0) return null;
  const clipped = (from: number, to: number): Span => ({ from: Math.max(0, from), to: Math.min(end, to) });
  const stay = clipped(came, gone);
  const tripped = own.trip === null ? Infinity : cameAt(own.trip);
  const zone = tripped < end ? clipped(tripped, leftAt(own.release)) : null;
  return {
    vehicle,
    stay,
    zone,
    reach: zone ? { from: Math.min(stay.from, zone.from), to: Math.max(stay.to, zone.to) } : stay,
    peak: {
      time: Math.min(end, Math.max(0, cameAt(own.peak))),
      response: own.peak <= places[last]! ? own.response : 0
    },
    isOver: gone < end
  };
}

/** What a vehicle does at a time if it is alone. */
export function ownResponse({ times, places }: Trajectory, profile: Curve, time: number): number {
  const last = times.length - 1;
  if (last < 1 || time < times[0]! || time > times[last]!) return 0;
  return valueOn(profile, valueOn({ at: times, values: places }, time));
}
