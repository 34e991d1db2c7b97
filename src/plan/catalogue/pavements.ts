import type { PavementEntry } from './entries';
import { entriesOf } from './entries-of';
import data from './pavements.json';
import { withSpokenNames } from './spoken-names';

export interface Pavement {
  readonly id: string;
  readonly name: string;
  readonly relativePermittivity: number;
  /** Dry to wet. */
  readonly range: readonly [number, number];
  readonly source: string;
}

export const pavements: readonly Pavement[] = withSpokenNames(entriesOf<PavementEntry>(data));

/** Undefined for a material that the user named. */
export const pavementOf = (material: string): Pavement | undefined =>
  pavements.find((pavement) => pavement.id === material);
