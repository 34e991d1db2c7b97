/** Responses that rise and fall straight, of which every crossing can be told by hand. */
import type { Profile } from '#analysis/passing/results';
import { crossingOf } from '#analysis/speed-pair/measure';
import type { PairPass, PairSide } from '#analysis/speed-pair/results';

/** Rises from nought at `middle − half` to `peak` at `middle`. Crosses T at middle ± half·(1 − T/peak). */
export const triangle = (middle: number, peak: number, half = 3): Profile => {
  const from = Math.floor(middle - half - 1);
  const step = 0.05;
  const values = Float64Array.from({ length: Math.round((2 * half + 3) / step) }, (_, k) =>
    Math.max(0, peak * (1 - Math.abs(from + k * step - middle) / half))
  );
  return { circuit: 'C', vehicle: 'car', from, step, values };
};

export const side = (from_m: number, threshold: number, over: Partial<PairSide> = {}): PairSide => ({
  circuit: 'C',
  from_m,
  to_m: from_m + 1.8,
  threshold,
  release: 0.6 * threshold,
  scan_s: 0,
  ...over
});

export const passOf = (
  profiles: readonly [Profile, Profile],
  [a, b]: readonly [PairSide, PairSide]
): PairPass => {
  const [one, other] = [
    crossingOf(profiles[0], a.threshold, a.release),
    crossingOf(profiles[1], b.threshold, b.release)
  ];
  const even = crossingOf(profiles[1], a.threshold, a.release);
  return {
    vehicle: 'car',
    vehicleLength_m: 4.5,
    profiles,
    crossings: one && other ? [one, other] : null,
    evenTripDistance_m: one && even ? even.trip_m - one.trip_m : null
  };
};
