/** Every pair of circuits whose channels run at the same time, rated. */
import { coupleCircuits } from '../beating/couple';
import { canRunTogether, ratePair } from '../beating/rate';
import type { BeatTank } from '../beating/tank';
import type { Beat } from '../results';
import type { Survey } from '../survey';

export const beatsOf = (
  tanks: readonly BeatTank[],
  { site, means }: Pick<Survey, 'site' | 'means'>,
  remediesOf: (a: BeatTank, b: BeatTank, rated: Omit<Beat, 'remedies'>) => Beat['remedies']
): Beat[] =>
  tanks.flatMap((a, i) =>
    tanks
      .slice(i + 1)
      .filter((b) => canRunTogether(a, b))
      .map((b): Beat => {
        const coupling = coupleCircuits(a, b, site, means);
        const rated = { a: a.circuit.id, b: b.circuit.id, coupling, ...ratePair(a, b, coupling) };
        return { ...rated, remedies: rated.verdict === 'clear' ? [] : remediesOf(a, b, rated) };
      })
  );
