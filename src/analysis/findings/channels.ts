/** Channels and frequencies: two circuits on one channel, a frequency outside the usual band, a circuit or loop left out. */
import { t } from '#i18n/message';
import { loopsIn } from '#plan/wiring';
import { isUsualFrequency, USUAL_BAND } from '../band';
import { called, type FindingRule } from './finding';

/** A loop's own resonance should lie this many times over its working frequency, or the model's lumped capacitance decides. */
const RESONANCE_DISTANCE = 4;

export const sharedChannel: FindingRule = ({ site }) =>
  site.circuits.flatMap((circuit, i) => {
    const { channel } = circuit;
    const other = site.circuits
      .slice(0, i)
      .find(
        (each) => channel && each.channel?.unit === channel.unit && each.channel.number === channel.number
      );
    if (!channel || !other) return [];
    return [
      {
        severity: 'problem' as const,
        code: 'channel-taken',
        subject: circuit.id,
        selects: [...loopsIn(circuit), ...loopsIn(other)],
        message: t('finding.channelTaken', {
          a: called(circuit),
          b: called(other),
          number: channel.number,
          unit: channel.unit
        }),
        advice: t('finding.channelTaken.advice')
      }
    ];
  });

export const frequencyBand: FindingRule = ({ circuits, say }) =>
  circuits.flatMap(({ circuit, readout }) => {
    const f = readout.frequency_Hz;
    if (readout.frequencyFrom === 'assumed' || isUsualFrequency(f)) return [];
    return [
      {
        severity: 'caution' as const,
        code: 'frequency-band',
        subject: circuit.id,
        selects: loopsIn(circuit),
        message: t('finding.frequencyBand', {
          circuit: called(circuit),
          frequency: say(f, 'frequency'),
          least: say(USUAL_BAND[0], 'frequency'),
          most: say(USUAL_BAND[1], 'frequency')
        }),
        advice: t('finding.frequencyBand.advice')
      }
    ];
  });

export const notOscillating: FindingRule = ({ site, circuits, say }) =>
  circuits.flatMap(({ circuit, readout }) => {
    const unit = site.units.find(({ id }) => id === circuit.channel?.unit);
    if (!circuit.channel || !unit || readout.frequencyFrom !== 'assumed') return [];
    const setting = circuit.channel.frequencySetting;
    const capacitance = say(unit.settings_F[setting - 1] ?? 0, 'capacitance');
    return [
      {
        severity: 'problem' as const,
        code: 'no-oscillation',
        subject: circuit.id,
        selects: loopsIn(circuit),
        message: t('finding.noOscillation', {
          circuit: called(circuit),
          setting,
          unit: called(unit),
          capacitance
        }),
        advice: t('finding.noOscillation.advice')
      }
    ];
  });

export const nearResonance: FindingRule = ({ circuits, say }) =>
  circuits
    .filter(({ readout }) => readout.selfResonance_Hz < RESONANCE_DISTANCE * readout.frequency_Hz)
    .map(({ circuit, readout }) => ({
      severity: 'caution' as const,
      code: 'resonance',
      subject: circuit.id,
      selects: loopsIn(circuit),
      message: t('finding.resonance', {
        circuit: called(circuit),
        resonance: say(readout.selfResonance_Hz, 'frequency'),
        frequency: say(readout.frequency_Hz, 'frequency')
      }),
      advice: t('finding.resonance.advice')
    }));

export const unconnected: FindingRule = ({ site }) => {
  const wired = new Set(site.circuits.flatMap(loopsIn));
  return [
    ...site.loops
      .filter(({ id }) => !wired.has(id))
      .map((loop) => ({
        severity: 'note' as const,
        code: 'no-circuit',
        subject: loop.id,
        selects: [loop.id],
        message: t('finding.noCircuit', { loop: called(loop) }),
        advice: t('finding.noCircuit.advice')
      })),
    ...site.circuits
      .filter(({ channel }) => channel === null)
      .map((circuit) => ({
        severity: 'note' as const,
        code: 'no-channel',
        subject: circuit.id,
        selects: loopsIn(circuit),
        message: t('finding.noChannel', { circuit: called(circuit) }),
        advice: t('finding.noChannel.advice')
      }))
  ];
};
