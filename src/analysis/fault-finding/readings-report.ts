/** Every visit's readings evaluated, for the report: what was expected of each figure, its verdict, and the causes. */
import type { Site } from '#plan/schema';
import { createMeans, type Means } from '../means';
import type { Steps } from '../steps';
import { diagnoseInSteps } from './diagnose';
import type { Diagnosis } from './results';
import { visitsOf } from './visits';

export interface VisitReport {
  readonly circuit: string;
  /** Calendar day, "2025-11-26"; null for readings without a time. */
  readonly day: string | null;
  /** Places in `site.readings`. */
  readonly readings: readonly number[];
  readonly diagnosis: Diagnosis;
}

/** Circuit by circuit, each with its newest visit first; circuits without readings, or that cannot be computed, have none. Says which share is done. */
export function* readingsReportInSteps(
  site: Site,
  means: Means = createMeans()
): Steps<readonly VisitReport[]> {
  const visits = site.circuits.flatMap(({ id: circuit }) =>
    visitsOf(site, circuit).map((visit) => ({ circuit, ...visit }))
  );
  const reports: VisitReport[] = [];
  for (const [done, { circuit, day, readings }] of visits.entries()) {
    const diagnosis = yield* diagnoseInSteps(site, { circuit, readings }, means);
    if (diagnosis) reports.push({ circuit, day, readings, diagnosis });
    yield (done + 1) / visits.length;
  }
  return reports;
}
