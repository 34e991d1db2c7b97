/** The worker's entry: one assessor, kept, so that an edit recomputes only what it touches. */
import { expose } from 'comlink';
import { createAssessor } from '#analysis/assess';
import type { Site } from '#plan/schema';
import type { Answer } from './transport';

const assessor = createAssessor();

/** Milliseconds of work after which the newest drawing gets its turn. */
const TURN = 40;

/** One vehicle made ready, which takes long, or as much of what follows as fits a turn. */
const goOn = (site: Site): void => {
  if (assessor.prepareNext(site)) return;
  const start = performance.now();
  while (performance.now() - start < TURN && assessor.followNext(site));
};

const api = {
  /** Answers at once with what is ready; `prepare` first gets more of it ready. */
  assess(site: Site, revision: number, prepare: boolean): Answer {
    if (prepare) goOn(site);
    return { revision, assessment: assessor.assess(site, 'prepared') };
  }
};

export type CalculationApi = typeof api;

expose(api);
