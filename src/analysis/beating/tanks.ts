/** The oscillators of a drawing: every circuit on a channel, on its own setting and on the others. */
import { temperaturesOf } from '#plan/catalogue/tolerances';
import type { Circuit, Site } from '#plan/schema';
import { circuitInput } from '../electrical/circuit-input';
import { solveCircuit } from '../electrical/circuit-model';
import { loopShareOf } from '../electrical/loop-share';
import { solveConditional } from '../electrical/conditional';
import { RecentCache } from '../recent-cache';
import type { ChannelReadout } from '../results';
import type { Survey } from '../survey';
import { sweepOf, type BeatTank, type Deepest } from './tank';

/** Those that oscillate, in the order of the document. */
export const tanksOf = (
  { site, circuits }: Pick<Survey, 'site' | 'circuits'>,
  deepestOf: (circuit: string) => Deepest
): BeatTank[] =>
  site.circuits.flatMap((circuit): BeatTank[] => {
    const { channel } = circuit;
    const unit = site.units.find(({ id }) => id === channel?.unit);
    const studied = circuits.get(circuit.id);
    if (!channel || !unit || !studied || !(studied.solved.inductance > 0)) return [];
    const { solved, readout } = studied;
    if (solved.frequencyFrom === 'assumed') return [];
    const isGiven = solved.frequencyFrom === 'given';
    const sweep = sweepOf(readout, readout.cold, readout.hot, isGiven, deepestOf(circuit.id));
    return [{ circuit, channel, unit, solved, sweep }];
  });

/** On a setting of its unit, whatever the channel says. */
const tunedTo = (circuit: Circuit, frequencySetting: number): Circuit => ({
  ...circuit,
  channel: circuit.channel && { ...circuit.channel, frequencySetting, frequency_Hz: null }
});

/**
 * The same circuit on another setting of its unit; null where it would not oscillate. The vehicle's ΔL/L follows what the
 * terminals see of the loops at that frequency: short lead-ins change it by less than a hundredth of itself, long ones by
 * more.
 */
export const tankAt = (
  { circuit, unit, sweep, solved: present }: BeatTank,
  setting: number,
  { site, modelled, means }: Pick<Survey, 'site' | 'modelled' | 'means'>
): BeatTank | null => {
  const tuned = tunedTo(circuit, setting);
  const conditional = solveConditional(tuned, site, modelled, means);
  if (!conditional || conditional.solved.frequencyFrom !== 'setting') return null;
  const { solved, rest, under } = conditional;
  const [cold, hot] = temperaturesOf(site).map((temperature_C) => under({ temperature_C }));
  const { deepest, vehicle } = sweep;
  const deltaLOverL = deepest === 0 ? 0 : (deepest * loopShareOf(solved, present)) / loopShareOf(present);
  return {
    circuit: tuned,
    channel: tuned.channel!,
    unit,
    solved,
    sweep: sweepOf(rest, cold!, hot!, false, { deltaLOverL, vehicle })
  };
};

export type SettingFrequencies = ChannelReadout['settings'];

/** Where each setting of a tank's unit would let it run; kept by everything that decides it. */
export const createSettingsKeeper = (): ((
  tank: BeatTank,
  key: number,
  survey: Pick<Survey, 'site' | 'modelled' | 'means'>
) => SettingFrequencies) => {
  const kept = new RecentCache<string, SettingFrequencies>(2_000);
  return ({ circuit, channel, unit, solved }, key, survey) =>
    kept.get(`${key} ${unit.settings_F.join()}`, () =>
      unit.settings_F.map((_, at) => {
        const setting = at + 1;
        if (channel.frequency_Hz === null && channel.frequencySetting === setting)
          return { setting, frequency_Hz: solved.frequency };
        return { setting, frequency_Hz: restAt(tunedTo(circuit, setting), survey) };
      })
    );
};

const restAt = (
  circuit: Circuit,
  { site, modelled, means }: { readonly site: Site } & Pick<Survey, 'modelled' | 'means'>
): number | null => {
  const input = circuitInput(circuit, site, modelled, means);
  const solved = input && solveCircuit(input);
  return solved?.frequencyFrom === 'setting' ? solved.frequency : null;
};

export const channelReadout = (
  { circuit, channel, unit, sweep }: BeatTank,
  settings: SettingFrequencies
): ChannelReadout => ({
  circuit: circuit.id,
  unit: unit.id,
  number: channel.number,
  setting: channel.frequency_Hz === null ? channel.frequencySetting : null,
  sweep,
  settings
});
