/** Curves as paths, and what stands under a pointer. Pure. */
import type { Curve } from '#analysis/beat-simulation/simulation';

export type Scale = (value: number) => number;

/** Tenths of a pixel. */
const at = (value: number): string => value.toFixed(1);

/** From point to point. */
export const linePath = ({ times, values }: Curve, x: Scale, y: Scale): string =>
  times.map((time, n) => `${n === 0 ? 'M' : 'L'}${at(x(time))} ${at(y(values[n]!))}`).join('');

/** Every value holds for `hold` seconds. */
export const stepPath = ({ times, values }: Curve, hold: number, x: Scale, y: Scale): string =>
  times
    .map((time, n) => {
      const height = at(y(values[n]!));
      return `${n === 0 ? 'M' : 'L'}${at(x(time))} ${height}L${at(x(time + hold))} ${height}`;
    })
    .join('');

/** The value nearest to `time`; with `hold` that of the measurement which runs then. Null outside. */
export const valueAt = ({ times, values }: Curve, time: number, hold = 0): number | null => {
  if (times.length === 0) return null;
  if (hold > 0) {
    const n = Math.floor(time / hold);
    return values[n] ?? null;
  }
  let low = 0;
  let high = times.length - 1;
  if (time < times[0]! || time > times[high]!) return null;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= time) low = middle;
    else high = middle;
  }
  return values[time - times[low]! <= times[high]! - time ? low : high]!;
};

/** The largest distance from zero, of numbers and curves. */
export const reachOf = (...of: readonly (number | Curve)[]): number =>
  of.reduce<number>((most, each) => {
    const values = typeof each === 'number' ? [each] : each.values;
    return values.reduce((reach, value) => Math.max(reach, Math.abs(value)), most);
  }, 0);

/** At most `most` rows, evenly spread over a curve: the numbers of points. */
export const rowsOf = ({ times }: Curve, most: number): readonly number[] => {
  const count = Math.min(most, times.length);
  return Array.from({ length: count }, (_, n) =>
    count === 1 ? 0 : Math.round((n * (times.length - 1)) / (count - 1))
  );
};
