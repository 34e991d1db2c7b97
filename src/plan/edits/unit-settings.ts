/** The frequency settings of a unit: their table, and what was found on the site. A setting's number counts from 1. */
import { BOUNDS, COUNTS } from '../bounds';
import type { Calibration, Site, Unit } from '../schema';
import { capacitanceFor } from '../unit-settings';
import { kept, mapped, withList } from './list';
import { updateUnit } from './units';

type Settings = Pick<Unit, 'settings_F' | 'calibrations'>;

/** Without an empty list: a unit that was never calibrated says nothing of it. */
function withSettings(site: Site, unit: Unit, { settings_F, calibrations = [] }: Settings): Site {
  return updateUnit(site, unit.id, {
    settings_F,
    calibrations: calibrations.length > 0 ? calibrations : undefined
  });
}

function changed(site: Site, id: string, setting: number, next: (unit: Unit) => Settings): Site {
  const unit = site.units.find((each) => each.id === id);
  if (unit?.settings_F[setting - 1] === undefined) return site;
  const settings = next(unit);
  return settings === unit ? site : withSettings(site, unit, settings);
}

const replaced = ({ settings_F }: Unit, setting: number, capacitance: number): readonly number[] =>
  settings_F.map((each, at) => (at === setting - 1 ? capacitance : each));

const without = ({ calibrations = [] }: Unit, setting: number): readonly Calibration[] =>
  calibrations.filter((each) => each.setting !== setting);

/** Farads. What was found on the site no longer counts for the setting. */
export const setSetting = (site: Site, id: string, setting: number, capacitance: number): Site =>
  changed(site, id, setting, (unit) =>
    unit.settings_F[setting - 1] === capacitance
      ? unit
      : { settings_F: replaced(unit, setting, capacitance), calibrations: without(unit, setting) }
  );

/** Hz on the unit's stated inductance; the same site where none is stated. */
export function setSettingFrequency(site: Site, id: string, setting: number, frequency: number): Site {
  const stated = site.units.find((each) => each.id === id)?.statedInductance_H;
  if (stated === undefined || !(frequency > 0)) return site;
  return setSetting(site, id, setting, capacitanceFor(frequency, stated));
}

/** Where only one setting is there to go by. */
const USUAL_STEP = 2 / 3;

/** One more at the end, as far from the last as that is from the one before it. */
export function addSetting(site: Site, id: string): Site {
  const unit = site.units.find((each) => each.id === id);
  if (!unit || unit.settings_F.length >= COUNTS.settings) return site;
  const [last = BOUNDS.settingCapacitance.max, before] = unit.settings_F.toReversed();
  const step = before === undefined || before === last ? USUAL_STEP : last / before;
  const { min, max } = BOUNDS.settingCapacitance;
  const next = Number(Math.min(max, Math.max(min, last * step)).toPrecision(2));
  return withSettings(site, unit, { ...unit, settings_F: [...unit.settings_F, next] });
}

/** Ids of the circuits that are on it, a given frequency or not. */
export const usesOfSetting = (site: Site, id: string, setting: number): readonly string[] =>
  site.circuits
    .filter(({ channel }) => channel?.unit === id && channel.frequencySetting === setting)
    .map((circuit) => circuit.id);

const oneLess = (number: number, removed: number): number => (number > removed ? number - 1 : number);

/** Those behind it move up, with the channels that are on them and what was found on the site. */
export function removeSetting(site: Site, id: string, setting: number): Site {
  const unit = site.units.find((each) => each.id === id);
  if (!unit || unit.settings_F[setting - 1] === undefined || unit.settings_F.length < 2) return site;
  if (usesOfSetting(site, id, setting).length > 0) return site;
  const circuits = mapped(site.circuits, (circuit) => {
    const { channel } = circuit;
    if (channel?.unit !== id || channel.frequencySetting < setting) return circuit;
    return { ...circuit, channel: { ...channel, frequencySetting: channel.frequencySetting - 1 } };
  });
  return withSettings(withList(site, 'circuits', circuits), unit, {
    settings_F: kept(unit.settings_F, (_, at) => at !== setting - 1),
    calibrations: without(unit, setting).map((each) => ({
      ...each,
      setting: oneLess(each.setting, setting)
    }))
  });
}

/** What was found: all of a calibration but its place, and what the setting had been before. */
export type Found = Omit<Calibration, 'setting' | 'before_F'>;

/**
 * The capacitance that was found counts from now on. A setting that is calibrated again still remembers what it had been
 * before the first time.
 */
export const calibrateSetting = (site: Site, id: string, setting: number, found: Found): Site =>
  changed(site, id, setting, (unit) => {
    const earlier = unit.calibrations?.find((each) => each.setting === setting);
    const before_F = earlier?.before_F ?? unit.settings_F[setting - 1]!;
    return {
      settings_F: replaced(unit, setting, found.capacitance_F),
      calibrations: [...without(unit, setting), { ...found, setting, before_F }]
    };
  });

/** Back to the capacitance before; the same site for a setting that is not calibrated. */
export const undoCalibration = (site: Site, id: string, setting: number): Site =>
  changed(site, id, setting, (unit) => {
    const calibration = unit.calibrations?.find((each) => each.setting === setting);
    if (!calibration) return unit;
    return {
      settings_F: replaced(unit, setting, calibration.before_F),
      calibrations: without(unit, setting)
    };
  });
