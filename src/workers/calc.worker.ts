/** The worker's entry: one assessor, kept, so that an edit recomputes only what it touches. */
import { expose } from 'comlink';
import { adviseTurnsInSteps } from '#analysis/advice/advise-turns';
import { createAssessor } from '#analysis/assess';
import type { Site } from '#plan/schema';
import type { AdviceAnswer, Answer, Question } from './transport';

const assessor = createAssessor();

/** Milliseconds of work after which the newest drawing gets its turn. */
const TURN = 24;

/** One vehicle made ready, which takes long, or as much of what follows as fits a turn. */
const goOn = (site: Site): void => {
  if (assessor.prepareNext(site)) return;
  const start = performance.now();
  while (performance.now() - start < TURN && assessor.followNext(site));
};

/** Lets messages that wait be heard. */
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

let newestQuestion = 0;

const api = {
  /** Answers at once with what is ready; `prepare` first gets more of it ready. */
  assess(site: Site, revision: number, prepare: boolean): Answer {
    if (prepare) goOn(site);
    return { revision, assessment: assessor.assess(site, 'prepared') };
  },

  /** One wire a step: an edit that is made meanwhile waits for a step at most. */
  async advise({ site, circuit, wish }: Question, revision: number): Promise<AdviceAnswer> {
    newestQuestion = revision;
    const steps = adviseTurnsInSteps(site, circuit, wish);
    for (;;) {
      const step = steps.next();
      if (step.done) return { revision, advice: step.value };
      await pause();
      if (newestQuestion !== revision) return { revision, advice: null };
    }
  }
};

export type CalculationApi = typeof api;

expose(api);
