/** As good a plan with fewer channels changed. */
import { attempt, type Purse } from './attempt';
import { pairsByChannel, ratioOf, type Plan, type PlanProblem } from './problem';

/** Choices that one way back may try. */
const PER_CHANNEL = 1_000;

/**
 * No pair gets worse than it is, or than `calm`. Each changed channel in turn goes back to its present choice if the rest
 * can be arranged; once with those that are as they were staying so, and once from nothing, the channels with least at stake
 * first. Few changes, not proven to be the fewest.
 */
export function* fewerChanges(
  problem: PlanProblem,
  start: Plan,
  calm: number,
  purse: Purse
): Generator<void, Plan> {
  const { present, pairs, choices } = problem;
  const changes = (plan: Plan): number =>
    plan.filter((choice, channel) => choice !== present[channel]).length;
  const limitOf = (at: number): number => Math.max(ratioOf(problem, pairs[at]!, start), calm);

  function* backInTurn(order: readonly number[], staying: readonly number[]): Generator<void, Plan> {
    const back = new Set(staying);
    let plan = start;
    for (const channel of order) {
      if (present[channel]! < 0 || back.has(channel)) continue;
      back.add(channel);
      if (plan[channel] === present[channel]) continue;
      const result = yield* attempt(problem, limitOf, purse, PER_CHANNEL, (other) =>
        back.has(other) ? present[other]! : null
      );
      if (result.kind === 'found') plan = result.plan;
      else back.delete(channel);
    }
    return plan;
  }

  const channels = choices.map((_, channel) => channel);
  const unchanged = channels.filter((channel) => start[channel] === present[channel]);
  const near = yield* backInTurn(channels, unchanged);
  if (changes(near) < 2) return near;
  const lists = pairsByChannel(problem);
  const atStake = lists.map((list) =>
    list.reduce((sum, at) => sum + pairs[at]!.ratios.reduce((most, ratio) => Math.max(most, ratio), 0), 0)
  );
  const far = yield* backInTurn(
    [...channels].sort((a, b) => atStake[a]! - atStake[b]! || a - b),
    []
  );
  return changes(far) < changes(near) ? far : near;
}
