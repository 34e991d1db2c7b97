/** A conduit of its own for one of the two lead-ins. */
import type { Site } from '#plan/schema';
import type { Remedy } from '../../results';
import type { Steps } from '../../steps';
import { effectOf, type RemedyContext, type Trial } from './trial';

export function* ownConduit({ a, b, survey: { site } }: RemedyContext, attempt: Trial): Steps<Remedy[]> {
  const shared = site.conduits.filter(({ circuits }) =>
    [a, b].every(({ circuit }) => circuits.includes(circuit.id))
  );
  if (shared.length === 0) return [];
  const conduits = shared.map(({ id }) => id);
  const edit = (before: Site): Site => ({
    ...before,
    conduits: before.conduits.map((conduit) =>
      conduits.includes(conduit.id)
        ? { ...conduit, circuits: conduit.circuits.filter((id) => id !== b.circuit.id) }
        : conduit
    )
  });
  const outcome = attempt(edit, [b.circuit.id]);
  yield;
  return outcome ? [{ kind: 'conduit', conduits, ...effectOf(outcome) }] : [];
}
