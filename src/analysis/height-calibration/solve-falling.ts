/**
 * Where a positive figure that falls nearly exponentially has a stated value: the false-position rule on its logarithm,
 * the weight of an end halved when it stays a second time (the Illinois rule), which closes in from both sides.
 */
import type { Steps } from '../steps';

/** Places nearer than this are one. */
const FINE_ENOUGH = 1e-8;
/** Of the logarithm. */
const CLOSE_ENOUGH = 1e-7;
const MOST_TRIALS = 60;

interface End {
  readonly at: number;
  /** Logarithm of the figure over the one wanted; the low end's is positive. */
  readonly off: number;
}

/**
 * `wanted` lies between the figures at both ends; the search begins at `first` where that lies between them. One step for
 * each trial.
 */
export function* solveFalling(
  figure: (at: number) => number,
  wanted: number,
  [from, to]: readonly [number, number],
  first: number
): Steps<number> {
  const tried = (at: number): End => ({
    at,
    off: Math.log(Math.max(figure(at), Number.MIN_VALUE) / wanted)
  });
  let low = tried(from);
  yield;
  let high = tried(to);
  let best = Math.abs(low.off) < Math.abs(high.off) ? low : high;
  /** The end that moved last. */
  let replaced: End | null = null;
  let weights = { low: 1, high: 1 };
  let next = first > from && first < to ? first : (from + to) / 2;
  for (let trial = 0; trial < MOST_TRIALS; trial++) {
    yield;
    const middle = tried(next);
    if (Math.abs(middle.off) < Math.abs(best.off)) best = middle;
    if (Math.abs(middle.off) < CLOSE_ENOUGH || high.at - low.at < FINE_ENOUGH) break;
    if (middle.off > 0) {
      weights = { low: 1, high: low === replaced ? weights.high / 2 : 1 };
      low = replaced = middle;
    } else {
      weights = { low: high === replaced ? weights.low / 2 : 1, high: 1 };
      high = replaced = middle;
    }
    const [a, b] = [low.off * weights.low, high.off * weights.high];
    const between = low.at + ((high.at - low.at) * a) / (a - b);
    next = between > low.at && between < high.at ? between : (low.at + high.at) / 2;
  }
  return best.at;
}
