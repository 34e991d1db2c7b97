/** What the client asks of whatever calculates: a worker in the page, anything at all in a test. */
import type { TurnsAdvice, TurnsWish } from '#analysis/advice/advice';
import type { Assessment } from '#analysis/results';
import type { Site } from '#plan/schema';

export interface Answer {
  readonly revision: number;
  readonly assessment: Assessment;
}

/** Which turns and which wire suit a circuit. */
export interface Question {
  readonly site: Site;
  readonly circuit: string;
  readonly wish: TurnsWish;
}

export interface AdviceAnswer {
  readonly revision: number;
  /** Null for a circuit that cannot be advised on. */
  readonly advice: TurnsAdvice | null;
}

export interface Transport {
  /**
   * Rejects when the calculation threw. `prepare`: get one more vehicle ready first, for a site whose last answer was
   * pending.
   */
  assess(site: Site, revision: number, prepare: boolean): Promise<Answer>;
  /** In steps, between which assessments get their turn; a newer question ends it. Rejects when it threw. */
  advise(question: Question, revision: number): Promise<AdviceAnswer>;
  close(): void;
}

/** Makes a fresh transport; `onCrash` is called with the reason when it dies outside a request. */
export type Connect = (onCrash: (reason: string) => void) => Transport;
