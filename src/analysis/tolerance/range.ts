/**
 * From what a figure is with each input off by its tolerance to where it plausibly lies.
 *
 * A tolerance is a plus-or-minus that holds nineteen times in twenty: 1.96 standard deviations of a normal distribution,
 * inputs independent. Linear: half widths add as squares. A figure that bends is sampled on a model of it: for every input
 * the parabola through the logarithm of its three values, all of them added, since what moves these figures multiplies
 * rather than adds (length and thickness of a wire, height and depth under a vehicle). Tests solve the circuit itself for
 * thousands of samples: the ends of linear ranges lie within 5 % of the width of where they should, those of sampled ones
 * within 4 %, also at tolerances ten times the usual.
 */
import { TOLERANCE_INPUTS, type PlausibleRange, type ToleranceInput } from '../results';
import { normalPoints } from './normal-points';

/** A figure with one input off by `share` of its tolerance: negative below, positive above, 0 where there is no room. */
export interface Shifted {
  readonly share: number;
  readonly value: number;
}

export interface Bend {
  readonly input: ToleranceInput;
  readonly below: Shifted;
  readonly above: Shifted;
}

/** Standard deviations in a tolerance. */
export const DEVIATIONS = 1.959963984540054;
/** What lies outside, at either end. */
const OUTSIDE = 0.025;
const POINTS = 4_096;
/** Up to this share of curvature in the half width a range counts as straight: its ends are off by about as much. */
const STRAIGHT = 0.05;

interface Parabola {
  readonly slope: number;
  readonly bend: number;
  /** Where the input stops, in units of its tolerance. */
  readonly least: number;
  readonly most: number;
}

/** Through 0 at 0, in units of the tolerance. */
const parabolaOf = ({ below, above }: Bend): Parabola => {
  const limits = {
    least: below.share > -1 ? below.share : -Infinity,
    most: above.share < 1 ? above.share : Infinity
  };
  if (above.share === 0) return { slope: below.value / (below.share || -1), bend: 0, ...limits };
  const rise = above.value / above.share;
  if (below.share === 0) return { slope: rise, bend: 0, ...limits };
  const bend = (rise - below.value / below.share) / (above.share - below.share);
  return { slope: rise - bend * above.share, bend, ...limits };
};

let points: Float64Array | null = null;
const DIMENSIONS = TOLERANCE_INPUTS.length;

/** Ends of the sum of all parabolas, against its value of 0 as designed. */
const sampled = (bends: readonly Bend[]): readonly [number, number] => {
  points ??= normalPoints(POINTS, DIMENSIONS);
  const sums = new Float64Array(POINTS);
  for (const each of bends) {
    const { slope, bend, least, most } = parabolaOf(each);
    const axis = TOLERANCE_INPUTS.indexOf(each.input);
    for (let n = 0; n < POINTS; n++) {
      const at = Math.min(most, Math.max(least, points[n * DIMENSIONS + axis]! / DEVIATIONS));
      sums[n]! += (slope + bend * at) * at;
    }
  }
  sums.sort();
  return [quantile(sums, OUTSIDE), quantile(sums, 1 - OUTSIDE)];
};

/** Of sorted values, between neighbours in proportion. */
export const quantile = (sorted: Float64Array, share: number): number => {
  const place = Math.min(sorted.length - 1, Math.max(0, share * sorted.length - 0.5));
  const low = Math.floor(place);
  const high = Math.min(sorted.length - 1, low + 1);
  return sorted[low]! + (sorted[high]! - sorted[low]!) * (place - low);
};

const mapped = (bends: readonly Bend[], of: (value: number) => number): readonly Bend[] =>
  bends.map(({ input, below, above }) => ({
    input,
    below: { ...below, value: of(below.value) },
    above: { ...above, value: of(above.value) }
  }));

/** Logarithms want a figure that keeps its sign; one that does not is taken as it is. */
const sampledEnds = (value: number, bends: readonly Bend[]): readonly number[] => {
  const keepsSign = bends.every(({ below, above }) => below.value * value > 0 && above.value * value > 0);
  return keepsSign
    ? sampled(mapped(bends, (each) => Math.log(each / value))).map((log) => value * Math.exp(log))
    : sampled(mapped(bends, (each) => each - value)).map((by) => value + by);
};

/** `value` is the figure as designed, which always lies inside. */
export const rangeOf = (value: number, bends: readonly Bend[]): PlausibleRange => {
  const contributions = bends
    .map(({ input, below, above }) => ({ input, halfWidth: Math.abs(above.value - below.value) / 2 }))
    .filter(({ halfWidth }) => halfWidth > 0)
    .sort((a, b) => b.halfWidth - a.halfWidth);
  const half = Math.hypot(...contributions.map(({ halfWidth }) => halfWidth));
  const curvature = bends.reduce(
    (sum, { below, above }) => sum + Math.abs(above.value + below.value - 2 * value) / 2,
    0
  );
  if (curvature <= STRAIGHT * half)
    return { low: value - half, high: value + half, method: 'linear', contributions };
  const ends = sampledEnds(value, bends);
  return {
    low: Math.min(value, ...ends),
    high: Math.max(value, ...ends),
    method: 'sampled',
    contributions
  };
};
