/** The worker's entry: one assessor, kept, so that an edit recomputes only what it touches. */
import { expose } from 'comlink';
import { createAssessor } from '#analysis/assess';
import type { Site } from '#plan/schema';
import type { Answer } from './transport';

const assessor = createAssessor();

const api = {
  assess: (site: Site, revision: number): Answer => ({ revision, assessment: assessor.assess(site) })
};

export type CalculationApi = typeof api;

expose(api);
