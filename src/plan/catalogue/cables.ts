import type { Cable, Site } from '../schema';
import data from './cables.json';
import type { CableEntry } from './entries';
import { entriesOf } from './entries-of';
import { withSpokenNames } from './spoken-names';

/** Relative permittivity of polyethylene, the usual insulation of a pair, where a cable does not state it. */
export const USUAL_DIELECTRIC = 2.3;

/** A lead-in cable, go and return together; see `entries.ts` for what the built-in figures mean. */
export type LeadInCable = Cable & { readonly source?: string };

export const builtInCables: readonly LeadInCable[] = withSpokenNames(entriesOf<CableEntry>(data));

/**
 * Built-in cables state their direct-current resistance at 20 °C and inductance at 50 kHz for information: with their
 * geometry known, the solver finds both at its own frequency and temperature. Told by identity: a field could stand in a file.
 */
export const isBuiltIn = (cable: LeadInCable): boolean => builtInCables.includes(cable);

/** The site's own cables first, then the built-in ones; undefined for an unknown id. */
export const cableOf = (id: string, site: Pick<Site, 'cables'>): LeadInCable | undefined =>
  site.cables.find((cable) => cable.id === id) ?? builtInCables.find((cable) => cable.id === id);

export function cablesOf(site: Pick<Site, 'cables'>): readonly LeadInCable[] {
  const own = new Set(site.cables.map(({ id }) => id));
  return [...site.cables, ...builtInCables.filter(({ id }) => !own.has(id))];
}
