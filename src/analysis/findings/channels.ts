/** Channels and frequencies: two circuits on one channel, a frequency outside the usual band, a circuit or loop left out. */
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
        message: `${called(circuit)} and ${called(other)} are both on channel ${channel.number} of ${channel.unit}.`,
        advice: 'Give one of them another channel, or join their loops into one circuit.'
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
        message: `${called(circuit)} would run at ${say(f, 'frequency')}, outside the usual ${say(USUAL_BAND[0], 'frequency')} to ${say(USUAL_BAND[1], 'frequency')}.`,
        advice: 'Choose another frequency setting or another number of turns.'
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
        message: `${called(circuit)} would not oscillate on setting ${setting} of ${called(unit)} (${capacitance}): it is damped too much, or its lead-in makes it look capacitive. Its figures hold for 50 kHz.`,
        advice: 'Choose a setting of higher frequency, more turns, or a shorter or heavier lead-in.'
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
      message: `A loop of ${called(circuit)} resonates with its own capacitance at about ${say(readout.selfResonance_Hz, 'frequency')}, near its ${say(readout.frequency_Hz, 'frequency')}: the apparent inductance depends on the weather.`,
      advice: 'Use fewer turns or a lower frequency.'
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
        message: `${called(loop)} belongs to no circuit: its figures hold for 50 kHz.`,
        advice: 'Connect it to a circuit to see what the unit sees.'
      })),
    ...site.circuits
      .filter(({ channel }) => channel === null)
      .map((circuit) => ({
        severity: 'note' as const,
        code: 'no-channel',
        subject: circuit.id,
        selects: loopsIn(circuit),
        message: `${called(circuit)} is on no channel: its figures hold for 50 kHz and nothing is compared with a threshold.`,
        advice: 'Choose a unit and a channel.'
      }))
  ];
};
