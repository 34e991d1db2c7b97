/** What is said before any cause is. */
import type { Diagnosis } from '#analysis/fault-finding/results';

export type Standing = 'doubt' | 'limit' | 'fits';

/** Whoever accepts the work must not read "fits" over a figure that a limit forbids. */
export function standingOf({ figures, fits }: Pick<Diagnosis, 'figures' | 'fits'>): Standing | null {
  const has = (wanted: Diagnosis['figures'][number]['verdict']): boolean =>
    figures.some(({ verdict }) => verdict === wanted);
  if (has('in doubt')) return 'doubt';
  if (!fits) return null;
  return has('beyond a limit') ? 'limit' : 'fits';
}
