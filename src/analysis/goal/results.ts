/** The smallest change of one number that makes a finding go away. */
import type { Variable } from '#plan/variables/variable';
import type { Severity } from '../results';

/** A finding, as it is known from one drawing to the next. */
export interface FindingRef {
  readonly code: string;
  readonly subject: string;
  readonly severity: Severity;
}

export interface GoalWish {
  readonly variable: Variable;
  readonly finding: FindingRef;
}

export type GoalReason =
  /** The finding does not depend on this number. */
  | 'no effect'
  /** It gets better, but not enough within what the number can be. */
  | 'not enough'
  /** The number cannot be changed here, or the finding is not there. */
  | 'not possible';

export type Goal =
  | {
      readonly kind: 'found';
      readonly from: number;
      readonly to: number;
      /** To what accuracy `to` is the smallest change: the variable's step, or finer. */
      readonly within: number;
      /** Findings that the change brings, and others that it takes away. */
      readonly brings: readonly FindingRef[];
      readonly clears: readonly FindingRef[];
      readonly tried: number;
    }
  | {
      readonly kind: 'none';
      readonly reason: GoalReason;
      readonly from: number | null;
      /** Where it comes nearest, and how near; null where nothing can be said. */
      readonly best: { readonly at: number; readonly told: string } | null;
      readonly least: number;
      readonly most: number;
      readonly tried: number;
    };
