/** What the client asks of whatever calculates: a worker in the page, anything at all in a test. */
import type { Assessment } from '#analysis/results';
import type { Site } from '#plan/schema';

export interface Answer {
  readonly revision: number;
  readonly assessment: Assessment;
}

export interface Transport {
  /**
   * Rejects when the calculation threw. `prepare`: get one more vehicle ready first, for a site whose last answer was
   * pending.
   */
  assess(site: Site, revision: number, prepare: boolean): Promise<Answer>;
  close(): void;
}

/** Makes a fresh transport; `onCrash` is called with the reason when it dies outside a request. */
export type Connect = (onCrash: (reason: string) => void) => Transport;
