/**
 * Speed and length from a pair of loops, the usual way:
 *   speed = (leading edge to leading edge)/(time between the trips)
 *   length = speed · (time occupied) − loop length, the mean over the two loops
 * and how far each is from the truth, by cause. Trips happen at fixed places, so a distance between the trips that is not
 * that of the leading edges puts every vehicle of a kind off by the same share; the tolerance of the spacing and the moment
 * at which the unit looks add a spread. Independent spreads add by their squares.
 */
import type { Profile } from '../passing/results';
import { zonesOf } from '../passing/zones';
import type { Crossing, PairDirection, PairPass, SpeedMeasurement, Spread } from './results';
import { timeSpread } from './timing';

/** Null where it never trips. */
export const crossingOf = (profile: Profile, threshold: number, release: number): Crossing | null => {
  const zones = zonesOf(profile, threshold, release);
  const [first, last] = [zones[0], zones.at(-1)];
  return first && last ? { trip_m: first.from_m, release_m: last.to_m, detections: zones.length } : null;
};

const sharesOf = (
  pass: PairPass,
  spacing_m: number,
  trips: number
): { readonly thresholds: number | null; readonly responses: number | null } => {
  const even = pass.evenTripDistance_m;
  if (even === null || even <= 0) return { thresholds: null, responses: null };
  const responses = spacing_m / even - 1;
  return { thresholds: trips - responses, responses };
};

/** Share of a speed that a time off by `seconds` makes of a time of `between_s`; Infinity where it may swallow all of it. */
const worstShare = (seconds: number, between_s: number): number =>
  seconds < between_s ? seconds / (between_s - seconds) : Infinity;

/** Null where a circuit misses the vehicle, or the second trips no later than the first: then there is no speed. */
export const measureSpeed = (
  { sides, spacing_m }: Pick<PairDirection, 'sides' | 'spacing_m'>,
  spacingTolerance_m: number,
  pass: PairPass,
  speed: number
): SpeedMeasurement | null => {
  if (!pass.crossings) return null;
  const [first, second] = pass.crossings;
  const tripDistance = second.trip_m - first.trip_m;
  if (!(tripDistance > 0) || !(speed > 0)) return null;
  const between_s = tripDistance / speed;
  const measured = spacing_m / between_s;
  const trips = spacing_m / tripDistance - 1;
  const on = [first, second].map(({ trip_m, release_m }) => (release_m - trip_m) / speed) as [number, number];
  const length =
    sides.reduce((sum, { from_m, to_m }, k) => sum + measured * on[k]! - (to_m - from_m), 0) / sides.length;
  const seconds = timeSpread(sides[0].scan_s, sides[1].scan_s);
  const spacing = spacingTolerance_m / tripDistance;
  const time: Spread = { usual: seconds.usual / between_s, worst: worstShare(seconds.worst, between_s) };
  const chance: Spread = { usual: Math.hypot(spacing, time.usual), worst: spacing + time.worst };
  const occupied = (on[0] + on[1]) / 2;
  // each time occupied is itself off by two looks of its own circuit; the mean of two by less
  const looks = sides.map(({ scan_s }) => timeSpread(scan_s, scan_s).usual);
  const lengthChance = Math.hypot(
    measured * occupied * chance.usual,
    (measured * Math.hypot(looks[0]!, looks[1]!)) / 2
  );
  return {
    tripDistance_m: tripDistance,
    between_s,
    on_s: on,
    speed_m_s: measured,
    length_m: length,
    errors: { trips, ...sharesOf(pass, spacing_m, trips), spacing, time, chance },
    lengthChance_m: lengthChance
  };
};

/** The share of the true speed that a measurement is off by, nineteen times in twenty. */
export const shareOff = ({ errors }: SpeedMeasurement): number =>
  Math.abs(errors.trips) + errors.chance.usual;

/**
 * The spacing, leading edge to leading edge, at which `shareOff` becomes `share`: the trips stay off by the same distance
 * o, the spread at this speed by the same r, so with a spacing of d the share is (|o| + r)/(d + o). Metres.
 */
export const spacingFor = (
  { tripDistance_m, errors }: SpeedMeasurement,
  spacing_m: number,
  share: number
): number => {
  const off = tripDistance_m - spacing_m;
  const spread = errors.chance.usual * tripDistance_m;
  return (Math.abs(off) + spread) / share - off;
};
