/** The ratio of every two channels on every two of their settings, by the same rules as the assessment's pairs. */
import type { Site } from '#plan/schema';
import { coupleCircuits } from '../beating/couple';
import { canRunTogether, ratePair } from '../beating/rate';
import type { BeatTank } from '../beating/tank';
import type { Steps } from '../steps';
import type { SurveyMeans } from '../survey';
import type { PairTable } from './problem';

/** Yields the share done, 0 to 1, row by row. `channels`: what each may be tuned to, at least one. */
export function* pairTables(
  channels: readonly (readonly BeatTank[])[],
  site: Site,
  means: SurveyMeans
): Steps<PairTable[]> {
  const tables: PairTable[] = [];
  for (const [a, ours] of channels.entries()) {
    for (let b = a + 1; b < channels.length; b++) {
      const theirs = channels[b]!;
      if (!canRunTogether(ours[0]!, theirs[0]!)) continue;
      const ratios = new Float64Array(ours.length * theirs.length);
      ours.forEach((x, i) =>
        theirs.forEach((y, j) => {
          ratios[i * theirs.length + j] = ratePair(x, y, coupleCircuits(x, y, site, means)).ratio;
        })
      );
      tables.push({ a, b, ratios });
      yield;
    }
    yield (a + 1) / channels.length;
  }
  return tables;
}
