/** The worker's entry: one assessor, kept, so that an edit recomputes only what it touches. */
import { expose } from 'comlink';
import { createAssessor } from '#analysis/assess';
import type { Site } from '#plan/schema';
import type { Answer } from './transport';

const assessor = createAssessor();

const api = {
  /** Answers at once with the vehicles that are ready; preparing one takes long, so each is a step of its own. */
  assess(site: Site, revision: number, prepare: boolean): Answer {
    if (prepare) assessor.prepareNext(site);
    return { revision, assessment: assessor.assess(site, 'prepared') };
  }
};

export type CalculationApi = typeof api;

expose(api);
