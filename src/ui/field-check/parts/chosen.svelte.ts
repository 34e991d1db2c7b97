/** The circuit that the field check looks at: the same in all of its modes, stored nowhere. */
import type { Circuit, Site } from '#plan/schema';

class Chosen {
  circuit = $state.raw<string | null>(null);
  /** Of the selection that was followed last, so that coming back to a mode does not follow it again. */
  followed: string | null = null;
}

export const chosen = new Chosen();

/** The first circuit where the chosen one is no longer there; none on a site without circuits. */
export const chosenCircuit = ({ circuits }: Pick<Site, 'circuits'>): Circuit | undefined =>
  circuits.find(({ id }) => id === chosen.circuit) ?? circuits[0];
