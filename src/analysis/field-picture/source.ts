/**
 * Which loops carry the current of a picture, and how much of it. Of a circuit each loop has its share of the current at the
 * terminals, in the circuit's own wiring and sense: the real part, which is nearly all of it well below resonance, as it is
 * without the vehicle: that it changes the shares of strings side by side by a little is left out. Tails and lead-ins are
 * twisted pairs and count as without field.
 */
import type { Site } from '#plan/schema';
import type { LoopModel } from '../electrical/loop-model';
import type { Means } from '../means';
import type { FieldPicture, FieldSource } from './results';

export interface SourceLoop {
  readonly id: string;
  readonly model: LoopModel;
  /** Amperes per ampere at the terminals, in the winding's own sense. */
  readonly current: number;
}

export interface Source {
  readonly loops: readonly SourceLoop[];
  readonly hasSteel: boolean;
}

/** Null where it is not there, cannot be wound or is not wired. */
export const sourceOf = (site: Site, { kind, id }: FieldSource, { surveyor }: Means): Source | null => {
  const { modelled, circuits, means } = surveyor.survey(site);
  if (kind === 'loop') {
    const found = modelled.get(id);
    if (!found) return null;
    const { model } = found;
    return { loops: [{ id, model, current: 1 }], hasSteel: means.steel([model], site) !== null };
  }
  const circuit = circuits.get(id);
  if (!circuit) return null;
  const { input, shares, steel } = circuit.solved;
  return {
    loops: input.loops.map((loop, k) => ({ id: loop.id, model: loop.model, current: shares[k]! })),
    hasSteel: steel !== null
  };
};

export const leftOutOf = (
  { hasSteel }: Source,
  { pavement }: Pick<Site, 'pavement'>,
  hasVehicle: boolean
): FieldPicture['leftOut'] => [
  ...(hasSteel ? (['steel'] as const) : []),
  ...((pavement.conductivity_S_m ?? 0) > 0 ? (['pavement'] as const) : []),
  ...(hasVehicle ? (['iron'] as const) : [])
];
