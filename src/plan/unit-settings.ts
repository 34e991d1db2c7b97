/** What a unit's frequency settings say. A setting is a capacitance; its number counts from 1. */
import type { Calibration, Unit } from './schema';

/** Hz: of a capacitance, F, on an inductance, H, without losses, as the settings of a unit are stated. */
const resonance = (inductance: number, capacitance: number): number =>
  1 / (2 * Math.PI * Math.sqrt(inductance * capacitance));

/** F: what has that frequency, Hz, on that inductance, H. */
export const capacitanceFor = (frequency: number, inductance: number): number =>
  1 / ((2 * Math.PI * frequency) ** 2 * inductance);

/** The setting's frequency, Hz, on the unit's stated inductance; undefined where none is stated. */
export function statedFrequency(
  { settings_F, statedInductance_H }: Unit,
  setting: number
): number | undefined {
  const capacitance = settings_F[setting - 1];
  if (capacitance === undefined || statedInductance_H === undefined) return undefined;
  return resonance(statedInductance_H, capacitance);
}

/** How the setting was calibrated; undefined also where its capacitance is another meanwhile. */
export const calibrationOf = ({ settings_F, calibrations }: Unit, setting: number): Calibration | undefined =>
  calibrations?.find((each) => each.setting === setting && each.capacitance_F === settings_F[setting - 1]);

/** No calibration is of a setting that the unit does not have, and no setting has two of them. */
export const hasOneEach = ({ settings_F, calibrations = [] }: Unit): boolean =>
  calibrations.every(
    ({ setting }, at) =>
      setting <= settings_F.length && calibrations.findIndex((each) => each.setting === setting) === at
  );
