import type { Site } from '../schema';
import type { WireEntry } from './entries';
import { entriesOf } from './entries-of';
import { withSpokenNames } from './spoken-names';
import data from './wires.json';

export interface Wire {
  readonly id: string;
  readonly name: string;
  /** Metres. */
  readonly conductorDiameter: number;
  readonly insulatedDiameter: number;
  /** Relative permittivity of the insulation. */
  readonly insulationPermittivity: number;
  readonly source?: string;
}

export const builtInWires: readonly Wire[] = withSpokenNames(entriesOf<WireEntry>(data));

/** The site's own wires first, then the built-in ones; undefined for an unknown id. */
export const wireOf = (id: string, site: Pick<Site, 'wires'>): Wire | undefined =>
  site.wires.find((wire) => wire.id === id) ?? builtInWires.find((wire) => wire.id === id);

export function wiresOf(site: Pick<Site, 'wires'>): readonly Wire[] {
  const own = new Set(site.wires.map(({ id }) => id));
  return [...site.wires, ...builtInWires.filter(({ id }) => !own.has(id))];
}
