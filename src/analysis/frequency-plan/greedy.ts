/** A first plan: the channel with the most at stake first, each on the choice that is best beside those before it. */
import { pairsByChannel, ratioOf, type Plan, type PlanProblem } from './problem';

export const greedyPlan = (problem: PlanProblem): Plan => {
  const { choices, pairs, present } = problem;
  const lists = pairsByChannel(problem);
  const atStake = lists.map((list) =>
    list.reduce((sum, at) => sum + pairs[at]!.ratios.reduce((most, ratio) => Math.max(most, ratio), 0), 0)
  );
  // without a choice first: the others have to make way for them
  const order = choices
    .map((_, channel) => channel)
    .sort((a, b) => Number(choices[a]! > 1) - Number(choices[b]! > 1) || atStake[b]! - atStake[a]! || a - b);
  const plan = choices.map(() => 0);
  const isPlaced = choices.map(() => false);
  for (const channel of order) {
    let best = -1;
    let bestWorst = Infinity;
    for (let choice = 0; choice < choices[channel]!; choice++) {
      plan[channel] = choice;
      const worst = lists[channel]!.reduce((most, at) => {
        const pair = pairs[at]!;
        return isPlaced[pair.a === channel ? pair.b : pair.a]
          ? Math.max(most, ratioOf(problem, pair, plan))
          : most;
      }, 0);
      const isBetter = worst < bestWorst || (worst === bestWorst && choice === present[channel]);
      if (isBetter) [best, bestWorst] = [choice, worst];
    }
    plan[channel] = best;
    isPlaced[channel] = true;
  }
  return plan;
};
