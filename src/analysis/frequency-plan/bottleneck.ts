/**
 * The plan whose worst ratio is smallest: a search for the smallest limit that some plan keeps, by halving the list of
 * all ratios there are. The limit just below the best plan is tried again with ever more; what remains open lies between
 * the best plan found and the largest limit proven to be kept by none.
 */
import { attempt, type Purse } from './attempt';
import { isOpen, ratioOf, type Plan, type PlanProblem } from './problem';

export interface Bottleneck {
  readonly plan: Plan;
  readonly worst: number;
  /** No plan is better than this. */
  readonly lowerBound: number;
}

/** Choices that a first try of a limit may take; each later one may take so many times more. */
const FIRST_TRY = 2_000;
const MORE = 4;
/** Share of the purse that is left for the bound where nothing is proven. */
const FOR_BELOW = 0.25;

/**
 * `start` is a plan that keeps `capOf`: the largest ratio of a pair that does not count (its limit all the same), null
 * for one that counts. Yields the share of the list that is decided, 0 to 1.
 */
export function* bottleneck(
  problem: PlanProblem,
  start: Plan,
  capOf: (pair: number) => number | null,
  purse: Purse
): Generator<number, Bottleneck> {
  const counting = problem.pairs.flatMap((pair, at) =>
    isOpen(problem, pair) && capOf(at) === null ? [pair] : []
  );
  const worstIn = (plan: Plan): number =>
    counting.reduce((worst, pair) => Math.max(worst, ratioOf(problem, pair, plan)), 0);
  let best = { plan: start, worst: worstIn(start) };
  const floor = counting.reduce((most, { ratios }) => Math.max(most, leastOf(ratios)), 0);
  const ratios = ratiosBetween(
    counting.map((pair) => pair.ratios),
    floor,
    best.worst
  );
  /** Position of the best plan's worst ratio, and of the largest that is proven to be kept by no plan. */
  let kept = ratios.length - 1;
  let refuted = -1;
  const begun = kept;
  const forBelow = FOR_BELOW * purse.left;
  const share = (): number => 1 - Math.log(kept - refuted) / Math.log(begun + 2);

  function* tryAt(position: number, most: number): Generator<void, 'found' | 'none' | 'given up'> {
    const limit = ratios[position]!;
    const result = yield* attempt(problem, (at) => capOf(at) ?? limit, purse, most);
    if (result.kind === 'found') {
      best = { plan: result.plan, worst: worstIn(result.plan) };
      kept = positionOf(ratios, best.worst);
    }
    if (result.kind === 'none') refuted = position;
    return result.kind;
  }

  /** The smallest limit that a plan is found for, by halving what lies between the best plan and what is refuted. */
  function* fromAbove(most: number): Generator<number, void> {
    let open = refuted;
    while (open + 1 < kept && purse.left > forBelow) {
      const middle = Math.floor((open + kept) / 2);
      if ((yield* quietly(tryAt(middle, most), share)) !== 'found') open = middle;
      yield share();
    }
  }

  /** The largest limit that is proven to be kept by none. */
  function* fromBelow(most: number): Generator<number, void> {
    let open = kept;
    while (refuted + 1 < open && purse.left > 0) {
      const middle = Math.floor((refuted + open) / 2);
      if ((yield* quietly(tryAt(middle, most), share)) !== 'none') open = middle;
      yield share();
    }
  }

  // one limit below the best plan decides: no plan keeps it, and the plan is proven best; or one does, and is better
  yield* fromAbove(FIRST_TRY);
  for (let most = FIRST_TRY * MORE; refuted + 1 < kept && purse.left > forBelow; most *= MORE)
    if ((yield* quietly(tryAt(kept - 1, most), share)) === 'found') yield* fromAbove(most);
  yield* fromBelow(forBelow / 8);
  const isProven = refuted + 1 >= kept;
  return { ...best, lowerBound: isProven ? best.worst : ratios[refuted + 1]! };
}

function* quietly<T>(work: Generator<void, T>, share: () => number): Generator<number, T> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield share();
  }
}

const leastOf = (ratios: Float64Array): number => ratios.reduce((least, ratio) => Math.min(least, ratio));

/** All that differ, ascending, from `low` to `high`; never empty. */
const ratiosBetween = (lists: readonly Float64Array[], low: number, high: number): Float64Array => {
  const within: number[] = [high];
  for (const list of lists) for (const ratio of list) if (ratio >= low && ratio < high) within.push(ratio);
  return Float64Array.from(within)
    .sort()
    .filter((ratio, k, all) => k === 0 || ratio !== all[k - 1]);
};

/** Position of a value that is in the list. */
const positionOf = (sorted: Float64Array, value: number): number => {
  let [low, high] = [0, sorted.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
};
