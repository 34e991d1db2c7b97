import type { Cable, Site } from '../schema';
import data from './cables.json';
import { cableEntries } from './entries';

/** A lead-in cable, go and return together; see `entries.ts` for what the built-in figures mean. */
export interface LeadInCable extends Cable {
  /** Metres; present on built-in cables, whose resistance is then the direct-current one at 20 °C. */
  readonly conductorDiameter?: number;
  /** Metres between the axes of the two wires. */
  readonly spacing?: number;
  readonly source?: string;
}

export const builtInCables: readonly LeadInCable[] = cableEntries.parse(data);

/** Declared fields only: a stray `conductorDiameter` in a file must not turn the user's figure into a direct-current one. */
const own = ({ id, name, resistancePerMetre_ohm, inductancePerMetre_H, capacitancePerMetre_F }: Cable) => ({
  id,
  name,
  resistancePerMetre_ohm,
  inductancePerMetre_H,
  capacitancePerMetre_F
});

/** The site's own cables first, then the built-in ones; undefined for an unknown id. */
export function cableOf(id: string, site: Pick<Site, 'cables'>): LeadInCable | undefined {
  const found = site.cables.find((cable) => cable.id === id);
  return found ? own(found) : builtInCables.find((cable) => cable.id === id);
}

export function cablesOf(site: Pick<Site, 'cables'>): readonly LeadInCable[] {
  const taken = new Set(site.cables.map((cable) => cable.id));
  return [...site.cables.map(own), ...builtInCables.filter((cable) => !taken.has(cable.id))];
}
