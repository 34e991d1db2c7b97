/**
 * What a further reading is expected to tell about the cause: the mutual information I(C; Y) of the cause and the reading, in
 * bits, by quadrature over the reading. Each cause is a mixture of normal distributions, one for each place in the space of
 * its unknowns; a share of its readings may be over the meter's range.
 */
import { logSum } from '../inference/normal';

/** One place in the space of one cause's unknowns. */
export interface Possible {
  readonly cause: number;
  /** Of the posterior. */
  readonly mass: number;
  /** What would be read there, on any axis on which the meter's error is even, such as a logarithm. */
  readonly mean: number;
  readonly deviation: number;
  /** Probability that the meter is over its range. */
  readonly over: number;
}

/** Bins a standard deviation of the sharpest. */
const FINENESS = 4;
const MOST_BINS = 4_000;
const REACH = 6;

const massesBy = (possibles: readonly Possible[], of: (possible: Possible) => number): number[] => {
  const masses: number[] = [];
  for (const possible of possibles)
    masses[possible.cause] = (masses[possible.cause] ?? 0) + possible.mass * of(possible);
  return Array.from(masses, (mass) => mass ?? 0);
};

/** Σ m·log₂(m/(prior·all)) over the causes. */
const gainOf = (joint: readonly number[], prior: readonly number[]): number => {
  const all = joint.reduce((sum, mass) => sum + mass, 0);
  return joint.reduce(
    (sum, mass, c) => (mass > 0 ? sum + mass * Math.log2(mass / (prior[c]! * all)) : sum),
    0
  );
};

/** Masses need not add up to one. */
export const informationOf = (given: readonly Possible[]): number => {
  const whole = given.reduce((sum, { mass }) => sum + mass, 0);
  const possibles = given.map((each) => ({ ...each, mass: each.mass / whole }));
  const prior = massesBy(possibles, () => 1);
  const over = gainOf(
    massesBy(possibles, (each) => each.over),
    prior
  );
  const read = possibles.filter((each) => each.over < 1);
  if (read.length === 0) return over;
  const low = Math.min(...read.map(({ mean, deviation }) => mean - REACH * deviation));
  const high = Math.max(...read.map(({ mean, deviation }) => mean + REACH * deviation));
  const sharpest = Math.min(...read.map(({ deviation }) => deviation));
  const count = Math.min(MOST_BINS, Math.max(1, Math.ceil((FINENESS * (high - low)) / sharpest)));
  const width = (high - low) / count;
  const bins = prior.map(() => new Float64Array(count));
  for (const { cause, mass, mean, deviation, over: lost } of read) {
    const first = Math.max(0, Math.floor((mean - REACH * deviation - low) / width));
    const last = Math.min(count - 1, Math.ceil((mean + REACH * deviation - low) / width));
    const heights: number[] = [];
    for (let bin = first; bin <= last; bin++)
      heights.push(-0.5 * ((low + (bin + 0.5) * width - mean) / deviation) ** 2);
    // shares that add up to one also where a bin is wider than the distribution
    const norm = logSum(heights);
    heights.forEach((height, k) => {
      bins[cause]![first + k]! += mass * (1 - lost) * Math.exp(height - norm);
    });
  }
  let gain = over;
  for (let bin = 0; bin < count; bin++)
    gain += gainOf(
      bins.map((of) => of[bin]!),
      prior
    );
  return Math.max(0, gain);
};
