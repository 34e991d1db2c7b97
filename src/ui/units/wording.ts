/** Units, settings and calibrations as people read them. */
import { listed } from '#i18n/locale';
import type { ChannelReadout } from '#analysis/results';
import { t } from '#i18n/message';
import type { Calibration, Circuit, Site, Unit } from '#plan/schema';
import { statedFrequency } from '#plan/unit-settings';
import { format } from '#units/format';
import { circuitName } from '../names';

type Shown = Pick<Site, 'displayUnits'>;

export const capacitanceText = ({ displayUnits }: Shown, farads: number): string =>
  format(farads, 'capacitance', displayUnits, { digits: 4 }).text;

export const frequencyText = ({ displayUnits }: Shown, hertz: number): string =>
  format(hertz, 'frequency', displayUnits, { unit: 'kHz', digits: 4 }).text;

export const inductanceText = ({ displayUnits }: Shown, henries: number): string =>
  format(henries, 'inductance', displayUnits).text;

/** As the unit states its settings: a frequency, or a capacitance. */
export function settingText(site: Shown, unit: Unit, setting: number): string {
  const stated = statedFrequency(unit, setting);
  if (stated !== undefined) return frequencyText(site, stated);
  return capacitanceText(site, unit.settings_F[setting - 1] ?? Number.NaN);
}

/** Where the circuit on the channel would run on a setting; as the unit states it while that is not known. */
export function tunedText(
  site: Shown,
  unit: Unit,
  setting: number,
  known: Pick<ChannelReadout, 'unit' | 'settings'> | undefined
): string {
  const there = known?.unit === unit.id ? known.settings.find((each) => each.setting === setting) : undefined;
  if (!there) return settingText(site, unit, setting);
  return there.frequency_Hz === null ? t('units.notOscillating') : frequencyText(site, there.frequency_Hz);
}

export const usersOf = (site: Pick<Site, 'circuits'>, unit: string): readonly Circuit[] =>
  site.circuits.filter(({ channel }) => channel?.unit === unit);

/** "2 of 4 in use, in turn". */
export function unitGist(site: Pick<Site, 'circuits'>, { id, channels, scansInTurn }: Unit): string {
  const used = t('units.used', { used: usersOf(site, id).length, channels });
  const run = t(channels === 1 ? 'units.oneChannel' : scansInTurn ? 'units.inTurn' : 'units.atOnce');
  return `${used}, ${run}`;
}

/** "Stop line and Exit are". */
export const circuitsAre = (site: Pick<Site, 'circuits'>, ids: readonly string[]): string =>
  t('units.circuitsAre', {
    count: ids.length,
    names: listed(ids.map((id) => circuitName(site, id)))
  });

export const calibrationText = (
  site: Shown,
  { frequency_Hz, circuit, inductance_H, before_F }: Calibration
): string =>
  t('units.calibrated', {
    circuit,
    frequency: frequencyText(site, frequency_Hz),
    inductance: inductanceText(site, inductance_H),
    before: capacitanceText(site, before_F)
  });
