import { wireEntries } from './entries';
import data from './wires.json';

export interface Wire {
  readonly id: string;
  readonly name: string;
  /** Metres. */
  readonly conductorDiameter: number;
  readonly insulatedDiameter: number;
  /** Relative permittivity of the insulation. */
  readonly insulationPermittivity: number;
  readonly source: string;
}

export const wires: readonly Wire[] = wireEntries.parse(data);

const byId = new Map(wires.map((wire) => [wire.id, wire]));

/** Undefined for an id that the catalogue does not know; a document that was read holds none. */
export const wireOf = (id: string): Wire | undefined => byId.get(id);
