/** What would clear the pair at which a way has ended. */
import { remediesInSteps } from '../../beating/remedies/index';
import type { Means } from '../../means';
import type { Remedy } from '../../results';
import type { Steps } from '../../steps';
import type { Gathered } from './gather';

export function* remediesFor(
  { scene, circuit }: Gathered,
  other: string | null,
  { surveyor }: Means
): Steps<readonly Remedy[]> {
  const rated = scene?.pairs.find(
    ({ pair }) => [pair.a, pair.b].includes(circuit.id) && [pair.a, pair.b].includes(other ?? '')
  );
  if (!scene || !rated || rated.pair.verdict === 'clear') return [];
  const { survey, tanks, responsesOf } = scene;
  return yield* remediesInSteps({ surveyor, survey, tanks, responsesOf, ...rated });
}
