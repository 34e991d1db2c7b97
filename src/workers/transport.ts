/** What the client asks of whatever calculates: a worker in the page, anything at all in a test. */
import type { AnswerTo, Asked, QuestionKind } from '#analysis/questions';
import type { Assessment } from '#analysis/results';
import type { Site } from '#plan/schema';

export interface Answer {
  readonly revision: number;
  readonly assessment: Assessment;
}

/** Beside the assessments: see `#analysis/questions`. */
export interface Question<K extends QuestionKind = QuestionKind> {
  readonly kind: K;
  /** Who asks, where the same kind may be asked from several places at a time: each has a newest question of its own. */
  readonly desk?: string;
  readonly site: Site;
  readonly asked: Asked<K>;
}

/** Of questions with equal keys only the newest is answered. */
export const questionKey = (kind: QuestionKind, desk = ''): string => `${kind} ${desk}`;

export interface Reply<K extends QuestionKind = QuestionKind> {
  readonly revision: number;
  readonly answer: AnswerTo<K>;
}

export interface Transport {
  /**
   * Rejects when the calculation threw. `prepare`: get one more vehicle ready first, for a site whose last answer was
   * pending.
   */
  assess(site: Site, revision: number, prepare: boolean): Promise<Answer>;
  /**
   * In steps, between which assessments get their turn. A newer question of the same kind and desk, or its end by `drop`,
   * leaves it without a reply (null). `onShare` hears how much is done, 0 to 1. Rejects when it threw.
   */
  ask<K extends QuestionKind>(
    question: Question<K>,
    revision: number,
    onShare: (share: number) => void
  ): Promise<Reply<K> | null>;
  /** Ends the open question of a kind and desk. */
  drop(kind: QuestionKind, desk?: string): void;
  close(): void;
}

/** Makes a fresh transport; `onCrash` is called with the reason when it dies outside a request. */
export type Connect = (onCrash: (reason: string) => void) => Transport;
