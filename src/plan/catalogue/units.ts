/** Detector units as they commonly are, nobody's product: what a new unit can begin as. */
import type { Unit } from '../schema';
import type { UnitEntry } from './entries';
import { entriesOf } from './entries-of';
import { withSpokenNames } from './spoken-names';
import data from './units.json';

export interface CatalogueUnit extends Unit {
  readonly source: string;
}

export const builtInUnits: readonly CatalogueUnit[] = withSpokenNames(entriesOf<UnitEntry>(data));

/** What a unit is where nobody chose one. */
export const usualUnit: CatalogueUnit = builtInUnits[0]!;

/** Another unit with the same figures. Where a setting was calibrated is known of that one device only. */
export const unitLike = (from: Unit, { id, name }: Pick<Unit, 'id' | 'name'>): Unit => {
  const { channels, scansInTurn, measuringTime_s, settings_F, statedInductance_H, inductanceRange_H } = from;
  return {
    ...{ id, name, channels, scansInTurn, measuringTime_s, settings_F },
    ...(statedInductance_H === undefined ? {} : { statedInductance_H }),
    inductanceRange_H
  };
};
