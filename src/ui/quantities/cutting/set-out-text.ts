import { decimals, typeset } from '#units/digits';
import { FOOT } from '#units/constants';
import type { UnitSystem } from '#units/kind';

/** Metres or feet without the unit, which the head of the column names: two decimals, as a tape is read. */
export const formatForSetOut = (metres: number, system: UnitSystem): string =>
  typeset(decimals(system === 'metric' ? metres : metres / FOOT, 2, 2));

export const setOutUnit = (system: UnitSystem): string => (system === 'metric' ? 'm' : 'ft');
