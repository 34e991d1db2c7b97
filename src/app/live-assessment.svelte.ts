/** What the worker says of the drawing that is shown: the newest answer, whether it is of this drawing, and questions beside it. */
import type { Asked, QuestionKind } from '#analysis/questions';
import type { Assessment } from '#analysis/results';
import type { Site } from '#plan/schema';
import type { Calculation } from '#ui/bench';
import { createAssessmentClient, type AssessmentClient } from '#workers/client';
import type { Connect } from '#workers/transport';
import { after } from './after';
import { toWorker } from './to-worker';

/** Seconds. A first answer on a large site on a slow tablet must not count as a dead worker. */
const PATIENCE = 20;

export class LiveAssessment {
  #revision = $state.raw(0);
  #answer = $state.raw<{ readonly revision: number; readonly assessment: Assessment } | null>(null);
  #calculation = $state.raw<Calculation>({ kind: 'working' });

  readonly #client: AssessmentClient;
  #asked: Site | null = null;
  /** Of the site that is open. */
  #firstRevision = 0;

  constructor(connect: Connect) {
    this.#client = createAssessmentClient({
      connect,
      patience: PATIENCE,
      timer: { after },
      onAnswer: (answer) => {
        if (answer.revision >= this.#firstRevision) this.#answer = answer;
      },
      onState: (calculation) => {
        this.#calculation = calculation;
      }
    });
  }

  get newest(): Assessment | null {
    return this.#answer?.assessment ?? null;
  }
  get isStale(): boolean {
    return this.#answer?.revision !== this.#revision;
  }
  get calculation(): Calculation {
    return this.#calculation;
  }

  /** Each drawing, a gesture's draft included, is a revision that is asked about. */
  follow(shown: Site): void {
    if (shown !== this.#asked) this.request(shown);
  }

  /** Also of a drawing that was asked about before: in another language its texts are others. */
  request(shown: Site): void {
    this.#asked = shown;
    this.#revision++;
    this.#client.request(toWorker(shown), this.#revision);
  }

  retry(): void {
    this.#client.retry();
  }

  ask<K extends QuestionKind>(
    site: Site,
    kind: K,
    asked: Asked<K>,
    onShare?: (share: number) => void,
    desk?: string
  ) {
    const question = { kind, site: toWorker(site, kind), asked };
    return this.#client.ask(desk === undefined ? question : { ...question, desk }, onShare);
  }

  drop(kind: QuestionKind, desk?: string): void {
    this.#client.drop(kind, desk);
  }

  /** Another site's figures are not stale, they are wrong, also those that are still on their way. */
  forget(): void {
    this.#answer = null;
    this.#firstRevision = this.#revision + 1;
  }
}
