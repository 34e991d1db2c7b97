/**
 * A frequency plan as a bare problem: channels with choices, and for every pair of channels the ratio that each pair of
 * their choices gives. It knows nothing of sites; a choice is a position, counted from 0.
 */
export interface PairTable {
  /** Positions of the two channels. */
  readonly a: number;
  readonly b: number;
  /** By choice of `a`, then of `b`: at `x · choices[b] + y`. Finite, 0 or more. */
  readonly ratios: Float64Array;
}

export interface PlanProblem {
  /** How many choices each channel has, 1 to 64. */
  readonly choices: readonly number[];
  /** The choice that each channel has now; −1 where it is none of them. */
  readonly present: readonly number[];
  readonly pairs: readonly PairTable[];
  /** Of every channel's choices a number; choices that disturb one another lie close together, such as frequencies. A help, no more. */
  readonly ranks?: readonly (readonly number[])[];
}

/** The choice of every channel. */
export type Plan = readonly number[];

export const ratioOf = ({ choices }: PlanProblem, { a, b, ratios }: PairTable, plan: Plan): number =>
  ratios[plan[a]! * choices[b]! + plan[b]!]!;

/** A pair of two channels that have no choice is what it is: no plan is better or worse by it. */
export const isOpen = ({ choices }: PlanProblem, { a, b }: PairTable): boolean =>
  choices[a]! > 1 || choices[b]! > 1;

/** The worst of the pairs about which a plan can do something; 0 without any. */
export const worstOf = (problem: PlanProblem, plan: Plan): number =>
  problem.pairs.reduce(
    (worst, pair) => (isOpen(problem, pair) ? Math.max(worst, ratioOf(problem, pair, plan)) : worst),
    0
  );

/** The present plan, with the first choice where the present one is not offered. */
export const presentOf = ({ present }: PlanProblem): number[] => present.map((choice) => Math.max(0, choice));

/** Of every channel the open pairs that it is part of, as positions in `pairs`. */
export const pairsByChannel = (problem: PlanProblem): readonly (readonly number[])[] => {
  const lists = problem.choices.map((): number[] => []);
  problem.pairs.forEach((pair, at) => {
    if (!isOpen(problem, pair)) return;
    lists[pair.a]!.push(at);
    lists[pair.b]!.push(at);
  });
  return lists;
};
