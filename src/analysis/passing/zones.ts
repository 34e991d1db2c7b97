/** Where along a pass a circuit detects the vehicle: from the trip to the release, as often as that happens. */
import type { Profile, Zone } from './results';

/** Response at a place, straight between the nodes. */
export const responseAt = ({ from, step, values }: Profile, along: number): number => {
  const place = (along - from) / step;
  const k = Math.floor(place);
  if (k < 0 || k >= values.length - 1) return k === values.length - 1 && place === k ? values[k]! : 0;
  return values[k]! + (place - k) * (values[k + 1]! - values[k]!);
};

/** Driven forwards: what trips at `threshold` releases below `release`, which is not above it. */
export const zonesOf = ({ from, step, values }: Profile, threshold: number, release: number): Zone[] => {
  const zones: Zone[] = [];
  let begun: number | null = values.length > 0 && values[0]! >= threshold ? from : null;
  const crossing = (k: number, level: number): number =>
    from + step * (k - 1 + (level - values[k - 1]!) / (values[k]! - values[k - 1]!));
  for (let k = 1; k < values.length; k++) {
    if (begun === null) {
      if (values[k - 1]! < threshold && values[k]! >= threshold) begun = crossing(k, threshold);
    } else if (values[k]! < release) {
      zones.push({ from_m: begun, to_m: crossing(k, release) });
      begun = null;
    }
  }
  if (begun !== null) zones.push({ from_m: begun, to_m: from + step * (values.length - 1) });
  return zones;
};

export const strongestOf = ({ from, step, values }: Profile): { along_m: number; response: number } => {
  const best = values.reduce((most, value, k) => (value > values[most]! ? k : most), 0);
  return { along_m: from + best * step, response: values[best] ?? 0 };
};
