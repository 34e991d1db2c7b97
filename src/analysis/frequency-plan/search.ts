/**
 * The search for a frequency plan, on plain data. First the smallest worst ratio, proven where the budget lasts; then,
 * without a claim of proof, the smallest next worst and so on while it matters; then as few changes as that allows. The
 * budget is counted in choices tried, so that equal problems have equal answers on every machine.
 */
import type { Steps } from '../steps';
import { bottleneck } from './bottleneck';
import type { Purse } from './attempt';
import { fewerChanges } from './fewer-changes';
import { greedyPlan } from './greedy';
import { improve, type Aim } from './improve';
import { isOpen, pairsByChannel, presentOf, ratioOf, worstOf, type Plan, type PlanProblem } from './problem';

export interface SearchWishes {
  /** Ratios up to this need not be improved once the worst is settled. */
  readonly calm: number;
  /** A worst ratio that is small enough: up to it fewer changes count for more. The smallest one there is, unless given. */
  readonly enough?: number;
  /** Choices that the search for the smallest worst ratio may try. */
  readonly budget?: number;
}

export interface PlanFound {
  readonly plan: Plan;
  /** The smallest worst ratio found, of the pairs with a channel that has a choice; 0 without any. The plan's own, unless more is enough. */
  readonly worst: number;
  readonly isProven: boolean;
  /** No plan has a smaller worst ratio; equal to `worst` where that is proven. */
  readonly lowerBound: number;
  /** Choices tried. */
  readonly nodes: number;
}

/** Trying one choice takes the longer the more channels there are: 1 500 000 choices for 12 channels, 300 000 for 60. */
const budgetFor = ({ choices }: PlanProblem): number => Math.round(18e6 / Math.max(8, choices.length));
/** What may be spent beside it on the next worst ratios, and on fewer changes. */
const AFTERWARDS = 40_000;
/** After the worst ratio, so many next ones are searched for by themselves. */
const ROUNDS = 8;
const PAIR_ROUNDS = 3;

/** Yields the share done, 0 to 1. */
export function* searchPlan(
  problem: PlanProblem,
  { calm, enough = 0, budget = budgetFor(problem) }: SearchWishes
): Steps<PlanFound> {
  const purse: Purse = { left: budget };
  const first = yield* firstPlan(problem);
  const work = bottleneck(problem, first, () => null, purse);
  const settled = yield* shared(work, (share) => 0.1 + 0.75 * Math.max(share, 1 - purse.left / budget));
  const { worst, lowerBound } = settled;
  const later: Purse = { left: AFTERWARDS };
  const cap = Math.max(worst, enough);
  // where the worst is below what matters, nothing else may become worse than it
  const aim: Aim = { calm: Math.min(calm, cap), cap, rounds: PAIR_ROUNDS };
  let plan = settled.plan;
  // what is there already is changed only where that is better
  if (worstOf(problem, presentOf(problem)) <= cap) plan = presentOf(problem);
  yield 0.85;
  plan = yield* quiet(improve(problem, plan, aim));
  if (cap > calm) plan = yield* nextWorst(problem, plan, aim, later);
  yield 0.95;
  plan = yield* quiet(fewerChanges(problem, plan, aim.calm, later));
  plan = yield* quiet(improve(problem, plan, aim));
  const nodes = budget - purse.left + (AFTERWARDS - later.left);
  return { plan, worst, isProven: lowerBound === worst, lowerBound, nodes };
}

/** The better of the present plan and a greedy one, each improved. */
function* firstPlan(problem: PlanProblem): Steps<Plan> {
  const aim: Aim = { calm: 0, cap: Infinity, rounds: 0 };
  const present = yield* quiet(improve(problem, presentOf(problem), aim));
  const greedy = yield* quiet(improve(problem, greedyPlan(problem), aim));
  return worstOf(problem, greedy) < worstOf(problem, present) ? greedy : present;
}

/** The worst pairs keep their ratio as a limit, and the worst of the others is made as small as can be; and so on. */
function* nextWorst(problem: PlanProblem, start: Plan, aim: Aim, purse: Purse): Steps<Plan> {
  const { pairs } = problem;
  const open = [...new Set(pairsByChannel(problem).flat())];
  const caps = new Map<number, number>();
  let plan = start;
  for (let round = 0; round < ROUNDS && purse.left > 0; round++) {
    const rated = open
      .filter((at) => !caps.has(at))
      .map((at) => ({ at, ratio: ratioOf(problem, pairs[at]!, plan) }));
    const worst = rated.reduce((most, { ratio }) => Math.max(most, ratio), 0);
    if (worst <= aim.calm) break;
    for (const { at, ratio } of rated) if (ratio === worst) caps.set(at, ratio);
    const found = yield* shared(
      bottleneck(problem, plan, (at) => caps.get(at) ?? null, purse),
      () => 0.9
    );
    const next = yield* quiet(improve(problem, found.plan, { ...aim, rounds: 0 }));
    if (isBetter(problem, next, plan, aim)) plan = next;
  }
  return plan;
}

const isBetter = (problem: PlanProblem, a: Plan, b: Plan, { calm }: Aim): boolean => {
  const sorted = (plan: Plan): number[] =>
    problem.pairs
      .filter((pair) => isOpen(problem, pair))
      .map((pair) => Math.max(calm, ratioOf(problem, pair, plan)))
      .sort((x, y) => y - x);
  const [ours, theirs] = [sorted(a), sorted(b)];
  const at = ours.findIndex((ratio, k) => ratio !== theirs[k]);
  return at >= 0 && ours[at]! < theirs[at]!;
};

function* quiet<T>(work: Generator<void, T>): Steps<T> {
  return yield* work;
}

function* shared<T>(work: Generator<number, T>, of: (share: number) => number): Steps<T> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield of(step.value);
  }
}
