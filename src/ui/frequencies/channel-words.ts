/** A channel's frequencies as people read them. */
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import { vehicleName } from '../names';
import { responseText } from './pairs';
import type { ChannelRow } from './rows';

type Named = Pick<Site, 'displayUnits' | 'vehicles'>;

export const frequencyText = ({ displayUnits }: Pick<Site, 'displayUnits'>, hertz: number): string =>
  format(hertz, 'frequency', displayUnits, { unit: 'kHz' }).text;

/** The frequency that the document's setting stands for: the figures may be a moment older than the drawing. */
const restOf = ({ channel, readout: { settings, sweep } }: ChannelRow): number =>
  channel.frequency_Hz ??
  settings.find(({ setting }) => setting === channel.frequencySetting)?.frequency_Hz ??
  sweep.rest_Hz;

/** "setting 2, 44.1 kHz". */
export function settingWords(site: Named, row: ChannelRow): string {
  const { channel } = row;
  const frequency = frequencyText(site, restOf(row));
  if (channel.frequency_Hz !== null) return t('frequencies.givenAt', { frequency });
  const key = channel.pinned === true ? 'frequencies.settingAtPinned' : 'frequencies.settingAt';
  return t(key, { setting: channel.frequencySetting, frequency });
}

/** The figures of a channel, one a part. */
export function channelFigures(site: Named, row: ChannelRow): readonly string[] {
  const { low_Hz, high_Hz, cold_Hz, hot_Hz, deepest, vehicle } = row.readout.sweep;
  const say = (hertz: number) => frequencyText(site, hertz);
  return [
    settingWords(site, row),
    t('frequencies.sweeps', { low: say(low_Hz), high: say(high_Hz) }),
    t('frequencies.coldHot', { cold: say(cold_Hz), hot: say(hot_Hz) }),
    vehicle === null
      ? t('frequencies.noVehicle')
      : t('frequencies.deepest', {
          vehicle: vehicleName(site, vehicle),
          response: responseText(site, -deepest)
        })
  ];
}
