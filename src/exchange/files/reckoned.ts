/** What is made of readings asks the surroundings for them. */
import type { AnswerTo, Asked } from '#analysis/questions';
import type { Site } from '#plan/schema';
import type { Job } from '../job';
import type { Reckoned, Surroundings } from './exported';

/** Rejects as the surroundings do; a mistake of whoever leaves them out. */
export function reckoned<K extends Reckoned>(
  { reckon }: Surroundings,
  kind: K,
  asked: Asked<K>,
  site: Site,
  job: Job
): Promise<AnswerTo<K>> {
  if (!reckon) throw new TypeError(`nobody is there to answer ${kind}`);
  return reckon(kind, asked, site, job);
}
