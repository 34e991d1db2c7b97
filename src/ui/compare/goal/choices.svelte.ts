/** Which finding is to go away, and by which number: kept while other views are open, stored nowhere. */
import type { FindingRef } from '#analysis/goal/results';
import type { Variable } from '#plan/variables/variable';

class GoalChoices {
  /** Null: the gravest. */
  finding = $state.raw<Pick<FindingRef, 'code' | 'subject'> | null>(null);
  /** Null: a number of what the finding is about. */
  variable = $state.raw<Variable | null>(null);
}

export const goalChoices = new GoalChoices();
