/** Circuits on which a setting's frequency can be measured. */
import { t } from '#i18n/message';
import type { Circuit, Site, Unit } from '#plan/schema';
import { nameOf } from '../names';

/** Those that are on the setting, then those of its unit, then the others; without those that cannot be wound. */
export function candidates(
  site: Pick<Site, 'circuits'>,
  unit: Pick<Unit, 'id'>,
  setting: number,
  solved: readonly { readonly id: string }[]
): readonly Circuit[] {
  const wound = new Set(solved.map(({ id }) => id));
  const rank = ({ channel }: Circuit): number => {
    if (channel?.unit !== unit.id) return 2;
    return channel.frequencySetting === setting && channel.frequency_Hz === null ? 0 : 1;
  };
  return site.circuits.filter(({ id }) => wound.has(id)).toSorted((a, b) => rank(a) - rank(b));
}

export function candidateText(circuit: Circuit, unit: Pick<Unit, 'id'>): string {
  const { channel } = circuit;
  if (channel?.unit !== unit.id) return nameOf(circuit);
  return t('calibrate.onThisUnit', {
    circuit: nameOf(circuit),
    number: channel.number,
    setting: channel.frequencySetting
  });
}
