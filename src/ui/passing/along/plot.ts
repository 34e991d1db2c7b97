/** From curves of a pass to a picture: ranges, lines, and what stands under a pointer. Pure. */
import { scaleLinear } from 'd3-scale';
import { responseAt } from '#analysis/passing/zones';
import type { PassCurve, PassPicture } from '#analysis/passing/results';

export type Scale = (value: number) => number;

export interface CircuitCurves {
  readonly circuit: string;
  readonly curves: readonly PassCurve[];
  readonly loops: PassPicture['loops'];
}

/** Decades below the strongest response, and below the threshold, that a logarithmic scale shows. */
const DECADES = 2.5;
const BELOW_THRESHOLD = 0.3;
/** Room above what is highest. */
const HEAD = { logarithmic: 1.6, linear: 1.25 } as const;
/** Share of what is under the threshold that is left free above it at least, for its name. */
const NAME_ROOM = 0.2;
/** Under a response of this nothing is told from noise. */
const LEAST = 1e-6;

/** Those that detect anything first, else in the order in which the circuits come. */
export function byCircuit({ curves, loops }: PassPicture, only: string | null): readonly CircuitCurves[] {
  const ids = [...new Set(curves.map(({ profile }) => profile.circuit))];
  return ids
    .filter((id) => only === null || id === only)
    .map((circuit) => ({
      circuit,
      curves: curves.filter(({ profile }) => profile.circuit === circuit),
      loops: loops.filter((loop) => loop.circuit === circuit)
    }))
    .sort((a, b) => Number(detects(b)) - Number(detects(a)));
}

const detects = ({ curves }: CircuitCurves): boolean => curves.some(({ zones }) => zones.length > 0);

/** Metres along the way: all that the curves cover. */
export function extentOf(curves: readonly PassCurve[]): readonly [number, number] {
  let [from, to] = [Infinity, -Infinity];
  for (const { profile } of curves) {
    from = Math.min(from, profile.from);
    to = Math.max(to, profile.from + profile.step * (profile.values.length - 1));
  }
  return from < to ? [from, to] : [0, 1];
}

/** Of the responses of all these curves, with the thresholds in sight. */
export function rangeOf(
  curves: readonly PassCurve[],
  kind: 'logarithmic' | 'linear'
): readonly [number, number] {
  const strongest = Math.max(LEAST, ...curves.map((curve) => curve.strongest.response));
  const thresholds = curves.flatMap(({ threshold }) => threshold ?? []);
  const releases = curves.flatMap(({ release }) => release ?? []);
  const high = HEAD[kind] * Math.max(strongest, ...thresholds);
  if (kind === 'linear') return [0, high];
  const low = Math.max(
    LEAST,
    Math.min(strongest / 10 ** DECADES, ...releases.map((level) => level * BELOW_THRESHOLD))
  );
  return [low, Math.max(high, ...thresholds.map((level) => level * (level / low) ** NAME_ROOM))];
}

/** Tenths of a pixel; what is under the range runs along its lower end. */
export function curvePath({ profile }: PassCurve, x: Scale, y: Scale, least: number): string {
  const { from, step, values } = profile;
  let path = '';
  values.forEach((value, k) => {
    path += `${k === 0 ? 'M' : 'L'}${x(from + k * step).toFixed(1)} ${y(Math.max(least, value)).toFixed(1)}`;
  });
  return path;
}

/** The curve that passes nearest to a height of the picture at a place; null without any. */
export function nearestCurve(
  curves: readonly PassCurve[],
  along: number,
  height: number,
  y: Scale,
  least: number
): PassCurve | null {
  let best: PassCurve | null = null;
  let apart = Infinity;
  for (const curve of curves) {
    const away = Math.abs(y(Math.max(least, responseAt(curve.profile, along))) - height);
    if (away >= apart) continue;
    apart = away;
    best = curve;
  }
  return best;
}

/** About so many places, metres, that are round numbers in a unit of `metres`. */
export const roundPlaces = (
  [from, to]: readonly [number, number],
  metres: number,
  most: number
): readonly number[] =>
  scaleLinear([from / metres, to / metres], [0, 1])
    .ticks(most)
    .map((tick) => tick * metres);

export interface Placed {
  readonly text: 'after' | 'before' | 'inside' | 'none';
}

/** Where a text of `width` pixels goes that belongs to a bar. */
export function textBeside(
  from: number,
  to: number,
  width: number,
  left: number,
  right: number
): Placed['text'] {
  if (to + width < right) return 'after';
  if (from - width > left) return 'before';
  return to - from > width ? 'inside' : 'none';
}
