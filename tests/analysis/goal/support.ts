/** A goal found by trying every value there is: what a search is held against. */
import { createAssessor } from '#analysis/assess';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { FindingRef, Goal } from '#analysis/goal/results';
import { seekGoalInSteps } from '#analysis/goal/seek-goal';
import type { Finding } from '#analysis/results';
import { experimentOn, withValue } from '#plan/variables/index';
import type { Variable } from '#plan/variables/variable';
import type { Site } from '#plan/schema';

const assessor = createAssessor();

/** By a whole assessment, as the page and the report have it. */
export const findingsIn = (site: Site): readonly Finding[] => assessor.assess(site, 'complete').findings;

/** Without what an assessment leaves for later: quick enough for trying many values. */
export const firstFindingsIn = (site: Site): readonly Finding[] => assessor.assess(site, 'all').findings;

const has = (
  findings: readonly Finding[],
  { code, subject }: Pick<FindingRef, 'code' | 'subject'>
): boolean => findings.some((each) => each.code === code && each.subject === subject);

/** Null for a value that the drawing cannot take. */
export const isGoneAt = (
  site: Site,
  variable: Variable,
  finding: Pick<FindingRef, 'code' | 'subject'>,
  value: number,
  findings = firstFindingsIn
): boolean | null => {
  const there = withValue(experimentOn(site), variable, value)?.site;
  return there ? !has(findings(there), finding) : null;
};

export const refIn = (site: Site, code: string, subject: string, findings = firstFindingsIn): FindingRef => {
  const found = findings(site).find((each) => each.code === code && each.subject === subject);
  if (!found) throw new Error(`there is no ${code} of ${subject}`);
  return { code, subject, severity: found.severity };
};

export const seek = (site: Site, variable: Variable, finding: FindingRef, means = createMeans()): Goal =>
  finish(seekGoalInSteps(site, { variable, finding }, means));
