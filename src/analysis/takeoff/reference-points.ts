/**
 * What is found on the site by itself, as the tape finds it from the line that cuts are set out from: by these whoever saws
 * finds where that line begins, which may lie beyond what the paper shows, and checks that the drawing fits the site.
 */
import type { MarkKind, Mark, Site } from '#plan/schema';
import { baselineOf, setOutFrom } from './baseline';
import type { SetOut } from './results';

export interface ReferencePoint {
  readonly mark: Mark;
  readonly from: SetOut;
  /** The other end of a line; null for what is a point. */
  readonly to: SetOut | null;
}

/** Built or painted, and with ends that can be told. */
const FOUND: ReadonlySet<MarkKind> = new Set([
  'stop-line',
  'kerb',
  'gate',
  'joint',
  'cover',
  'pull-box',
  'cabinet'
]);

/** In the order in which one comes to them along the line; none where there is no line to measure from. */
export function referencePointsOf(site: Site): readonly ReferencePoint[] {
  const baseline = baselineOf(site);
  if (!baseline) return [];
  return site.marks
    .filter(({ kind }) => FOUND.has(kind))
    .map((mark): ReferencePoint => {
      const [first, last] = [mark.points[0]!, mark.points.at(-1)!];
      const isLine = mark.points.length > 1;
      return { mark, from: setOutFrom(baseline, first), to: isLine ? setOutFrom(baseline, last) : null };
    })
    .toSorted((a, b) => a.from.station - b.from.station);
}
