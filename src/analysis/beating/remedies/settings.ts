/** Another frequency setting for one of the two: the one that leaves the smallest worst ratio. */
import { updateChannel } from '#plan/edits/index';
import type { Remedy } from '../../results';
import type { Steps } from '../../steps';
import { isUsualFrequency } from '../../band';
import type { BeatTank } from '../tank';
import { effectOf, type RemedyContext, type Trial } from './trial';

export function* otherSettings({ a, b }: RemedyContext, attempt: Trial): Steps<Remedy[]> {
  const found: Remedy[] = [];
  for (const tank of [a, b]) {
    if (tank.channel.pinned === true || tank.channel.frequency_Hz !== null) continue;
    let best: Remedy | null = null;
    for (const setting of otherThan(tank)) {
      const remedy = onSetting(tank, setting, attempt);
      if (remedy && (!best || remedy.worstRatio < best.worstRatio)) best = remedy;
      yield;
    }
    if (best) found.push(best);
  }
  return found;
}

const otherThan = ({ unit, channel }: BeatTank): number[] =>
  unit.settings_F.map((_, at) => at + 1).filter((setting) => setting !== channel.frequencySetting);

const onSetting = ({ circuit: { id } }: BeatTank, setting: number, attempt: Trial): Remedy | null => {
  const outcome = attempt((site) => updateChannel(site, id, { frequencySetting: setting }), [id]);
  const frequency_Hz = outcome?.tanks.find(({ circuit }) => circuit.id === id)?.sweep.rest_Hz;
  if (!outcome || frequency_Hz === undefined || !isUsualFrequency(frequency_Hz)) return null;
  return { kind: 'setting', circuit: id, setting, frequency_Hz, ...effectOf(outcome) };
};
