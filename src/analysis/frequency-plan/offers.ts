/** Which settings a frequency plan may give to a circuit, each as the oscillator that it makes. */
import type { Circuit } from '#plan/schema';
import { isUsualFrequency } from '../band';
import { sweepOf, type BeatTank, type Deepest } from '../beating/tank';
import { tankAt } from '../beating/tanks';
import { RecentCache } from '../recent-cache';
import type { Survey } from '../survey';
import type { ExcludedSetting, KeptReason, PlannedChannel, Tuning } from './plan';

const isUsual = ({ sweep }: BeatTank): boolean => isUsualFrequency(sweep.rest_Hz);

export interface Offer {
  readonly channel: Omit<PlannedChannel, 'after'>;
  /** What it may be tuned to: one where it is kept, none where it does not oscillate. */
  readonly tanks: readonly BeatTank[];
  /** Position in `tanks` of what it is tuned to now; −1 where that is not offered. */
  readonly present: number;
  /** As it is, if it oscillates. */
  readonly now: BeatTank | null;
}

export type OfferMaker = (circuit: Circuit, survey: Survey, shift: Deepest) => Offer | null;

const settingOf = ({ channel }: Pick<BeatTank, 'channel'>): number | null =>
  channel.frequency_Hz === null ? channel.frequencySetting : null;

/** `running`: the same, or null where it does not oscillate. */
export const tuningOf = (tank: BeatTank, running: BeatTank | null = tank): Tuning => ({
  setting: settingOf(tank),
  frequency_Hz: running?.sweep.rest_Hz ?? null
});

/** Null for a circuit that is on no channel, or cannot be wound. What has been solved is kept. */
export const createOfferMaker = (): OfferMaker => {
  const kept = new RecentCache<string, BeatTank | null>(4_000);

  /** The present channel as an oscillator, whether it oscillates or not: what the others are made from. */
  const presentTank = (circuit: Circuit, survey: Survey, shift: Deepest): BeatTank | null => {
    const { channel } = circuit;
    const unit = survey.site.units.find(({ id }) => id === channel?.unit);
    const studied = survey.circuits.get(circuit.id);
    if (!channel || !unit || !studied) return null;
    const { solved, readout } = studied;
    const isGiven = solved.frequencyFrom === 'given';
    return {
      circuit,
      channel,
      unit,
      solved,
      sweep: sweepOf(readout, readout.cold, readout.hot, isGiven, shift)
    };
  };

  const oscillates = ({ solved }: BeatTank): boolean =>
    solved.inductance > 0 && solved.frequencyFrom !== 'assumed';

  const tunedTo = (present: BeatTank, setting: number, survey: Survey): BeatTank | null => {
    const { circuit, channel, unit, sweep } = present;
    if (settingOf(present) === setting) return oscillates(present) ? present : null;
    const { key } = survey.circuits.get(circuit.id)!;
    const text = `${key} ${unit.settings_F[setting - 1]} ${sweep.deepest} ${sweep.vehicle}`;
    const made = kept.get(text, () => tankAt(present, setting, survey));
    // what is kept may be of a circuit with another threshold, or of an earlier name of the unit
    const tuned = { ...channel, frequencySetting: setting, frequency_Hz: null };
    return made && { ...made, circuit: { ...circuit, channel: tuned }, channel: tuned, unit };
  };

  return (circuit, survey, shift) => {
    const present = presentTank(circuit, survey, shift);
    if (!present) return null;
    const { channel, unit } = present;
    const now = oscillates(present) ? present : null;
    const isSilent = now === null;
    const before = tuningOf(present, now);
    const own = { circuit: circuit.id, unit: unit.id, number: channel.number, before };
    const only = (reason: KeptReason): Offer => ({
      channel: { ...own, kept: isSilent ? 'no oscillation' : reason, excluded: [] },
      tanks: isSilent ? [] : [present],
      present: isSilent ? -1 : 0,
      now
    });
    if (channel.frequency_Hz !== null) return only('given');
    if (channel.pinned) return only('pinned');
    const tuned = unit.settings_F.map((_, k) => ({
      setting: k + 1,
      tank: tunedTo(present, k + 1, survey)
    }));
    const hasUsual = tuned.some(({ tank }) => tank && isUsual(tank));
    const tanks = tuned.flatMap(({ tank }) => (tank && (!hasUsual || isUsual(tank)) ? [tank] : []));
    const excluded = tuned.flatMap(({ setting, tank }): ExcludedSetting[] => {
      if (!tank) return [{ setting, frequency_Hz: null, why: 'no oscillation' }];
      if (tanks.includes(tank)) return [];
      return [{ ...tuningOf(tank), setting, why: 'outside the usual band' }];
    });
    const kept = tanks.length === 0 ? 'no oscillation' : tanks.length === 1 ? 'one setting' : null;
    return {
      channel: { ...own, kept, excluded },
      tanks,
      present: tanks.findIndex((tank) => settingOf(tank) === before.setting),
      now
    };
  };
};
