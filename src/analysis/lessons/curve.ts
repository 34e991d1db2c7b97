/** Reading a curve that is known at places: straight between two of them, along both axes or along their logarithms. */

export interface Curve {
  /** In ascending order. */
  readonly xs: readonly number[];
  readonly ys: readonly (number | null)[];
  /** A power is a straight line between logarithms; only where everything is positive. */
  readonly isLogarithmic: boolean;
}

/** Ascending, whatever the order of the values. */
export function curveOf(
  values: readonly number[],
  results: readonly (number | null)[],
  isLogarithmic: boolean
): Curve {
  const order = values.map((_, index) => index).sort((a, b) => values[a]! - values[b]!);
  return {
    xs: order.map((index) => values[index]!),
    ys: order.map((index) => results[index] ?? null),
    isLogarithmic
  };
}

type Known = readonly [x: number, y: number];

/** Of the straight line through two points, at `at`. */
const straight = ([x0, y0]: Known, [x1, y1]: Known, at: number): number =>
  y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);

function between(a: Known, b: Known, at: number, isLogarithmic: boolean): number {
  if (!isLogarithmic || [...a, ...b, at].some((each) => each <= 0)) return straight(a, b, at);
  const logarithm = ([x, y]: Known): Known => [Math.log(x), Math.log(y)];
  return Math.exp(straight(logarithm(a), logarithm(b), Math.log(at)));
}

/** Null outside the values, and beside a place without a result; exact at a place of the curve. */
export function valueAt({ xs, ys, isLogarithmic }: Curve, x: number): number | null {
  const after = xs.findIndex((each) => each >= x);
  if (after < 0) return null;
  const y = ys[after] ?? null;
  if (xs[after] === x || after === 0 || y === null) return xs[after] === x ? y : null;
  const before = ys[after - 1] ?? null;
  return before === null ? null : between([xs[after - 1]!, before], [xs[after]!, y], x, isLogarithmic);
}

/** The part of the curve between two values of x, ends interpolated; places without a result are left out. */
function stretch(curve: Curve, from = -Infinity, to = Infinity): readonly Known[] {
  const inside = curve.xs.filter((x) => x > from && x < to);
  const xs = [from, ...inside, to].filter((x) => Number.isFinite(x));
  return xs.flatMap((x) => {
    const y = valueAt(curve, x);
    return y === null ? [] : [[x, y] as const];
  });
}

/** The highest point (`sign` 1) or the lowest (−1), the first of equal ones; null where nothing is known. */
export const extreme = (curve: Curve, sign: 1 | -1, from?: number, to?: number): Known | null =>
  stretch(curve, from, to).reduce<Known | null>(
    (best, each) => (best === null || sign * each[1] > sign * best[1] ? each : best),
    null
  );

/** n of y ∝ xⁿ between two values of x; null where either is not positive. */
export function exponentOf(curve: Curve, from: number, to: number): number | null {
  const first = valueAt(curve, from);
  const last = valueAt(curve, to);
  if (first === null || last === null || from === to) return null;
  return first <= 0 || last <= 0 || from <= 0 || to <= 0
    ? null
    : Math.log(last / first) / Math.log(to / from);
}

/** The first x at which the curve passes the level, upwards or downwards; null where it does not. */
export function crossing(curve: Curve, level: number): number | null {
  const { xs, ys, isLogarithmic } = curve;
  for (let index = 1; index < xs.length; index += 1) {
    const y0 = ys[index - 1] ?? null;
    const y1 = ys[index] ?? null;
    if (y0 === null || y1 === null || y0 === y1 || (y0 - level) * (y1 - level) > 0) continue;
    return between([y0, xs[index - 1]!], [y1, xs[index]!], level, isLogarithmic);
  }
  return null;
}
