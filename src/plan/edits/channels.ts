/** Where a new circuit is connected. */
import { t } from '#i18n/message';
import { COUNTS } from '../bounds';
import { usualUnit } from '../catalogue/units';
import type { Channel, Site, Unit } from '../schema';
import { newUnit } from './units';

/** ΔL/L at which a new channel calls: 0.1 %. */
const TRIP_THRESHOLD = 0.001;

/** The first of the unit's channels that no circuit is on; null where all are taken. */
export function freeNumber({ circuits }: Pick<Site, 'circuits'>, unit: Unit): number | null {
  const taken = new Set(
    circuits.filter(({ channel }) => channel?.unit === unit.id).map(({ channel }) => channel?.number)
  );
  for (let number = 1; number <= unit.channels; number++) if (!taken.has(number)) return number;
  return null;
}

/** The setting that fewest channels of the site use, so that new neighbours start on different frequencies. */
export function quietSetting(site: Site, unit: Unit): number {
  const uses = unit.settings_F.map(
    (_, index) => site.circuits.filter(({ channel }) => channel?.frequencySetting === index + 1).length
  );
  return uses.indexOf(Math.min(...uses)) + 1;
}

/** Which channel it is, is not asked: the number has to be one of the unit's and free. */
export const channelOn = (site: Site, unit: Unit, number: number): Channel => ({
  unit: unit.id,
  number,
  frequencySetting: quietSetting(site, unit),
  frequency_Hz: null,
  tripThreshold: TRIP_THRESHOLD,
  releaseRatio: 0.6,
  output: { mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null }
});

/** The first free channel, on a new unit if all are taken; no channel when the site holds no more units. */
export function withFreeChannel(site: Site): { readonly site: Site; readonly channel: Channel | null } {
  for (const unit of site.units) {
    const number = freeNumber(site, unit);
    if (number !== null) return { site, channel: channelOn(site, unit, number) };
  }
  if (site.units.length >= COUNTS.units) return { site, channel: null };
  const unit = newUnit(site, usualUnit, t('unit.numbered', { number: site.units.length + 1 }));
  return { site: { ...site, units: [...site.units, unit] }, channel: channelOn(site, unit, 1) };
}
