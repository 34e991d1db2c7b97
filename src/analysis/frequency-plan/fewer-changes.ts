/** As good a plan with fewer channels changed: each changed one in turn goes back to its present choice if the rest can be arranged. */
import { attempt, type Purse } from './attempt';
import { ratioOf, type Plan, type PlanProblem } from './problem';

/** Choices that one way back may try. */
const PER_CHANNEL = 1_000;

/** No pair gets worse than it is, or than `calm`; the channels that are as they were stay so. */
export function* fewerChanges(
  problem: PlanProblem,
  start: Plan,
  calm: number,
  purse: Purse
): Generator<void, Plan> {
  const { present, pairs } = problem;
  let plan = start;
  for (const channel of present.keys()) {
    if (plan[channel] === present[channel] || present[channel]! < 0) continue;
    const known = plan;
    const result = yield* attempt(
      problem,
      (at) => Math.max(ratioOf(problem, pairs[at]!, known), calm),
      purse,
      PER_CHANNEL,
      (other) => (other === channel || known[other] === present[other] ? present[other]! : null)
    );
    if (result.kind === 'found') plan = result.plan;
  }
  return plan;
}
