/** Fields of what is wired, of the user's own entries, and of the drawing as a whole. */
import type { Cable, Circuit, Conduit, OwnWire, Site, Unit, Vehicle } from '../schema';
import { cableName, circuitName, unitName, vehicleName, wiringText } from './names';
import { drawn, named, value, type Rule } from './rule';

const cablesOf = ({ leadIn: { cable, further = [] } }: Circuit): readonly string[] => [
  cable,
  ...further.map((each) => each.cable)
];

const leadInLength = ({ leadIn: { length, further = [] } }: Circuit): number =>
  further.reduce((sum, each) => sum + each.length, length);

export const circuitRules: readonly Rule<Circuit>[] = [
  value('name', 'text', ({ name }) => name),
  named('wiring', 'text', ({ strings }) => strings, wiringText),
  named('cable', 'text', cablesOf, (circuit, site) =>
    cablesOf(circuit)
      .map((id) => cableName(id, site))
      .join(' + ')
  ),
  value('leadInLength', 'length', leadInLength),
  drawn('way', ({ leadIn }) => [leadIn.route, leadIn.further?.map(({ length }) => length)]),
  named(
    'unit',
    'text',
    ({ channel }) => channel?.unit,
    ({ channel }, site) => (channel ? unitName(channel.unit, site) : null)
  ),
  value('channelNumber', 'count', ({ channel }) => channel?.number),
  value('frequencySetting', 'count', ({ channel }) => channel?.frequencySetting),
  value('frequency', 'frequency', ({ channel }) => channel?.frequency_Hz),
  value('tripThreshold', 'ratio', ({ channel }) => channel?.tripThreshold),
  value('releaseRatio', 'ratio', ({ channel }) => channel?.releaseRatio),
  value('outputMode', 'word', ({ channel }) => channel?.output.mode),
  value('delay', 'time', ({ channel }) => channel?.output.delay_s),
  value('extension', 'time', ({ channel }) => channel?.output.extension_s),
  value('longestPresence', 'time', ({ channel }) => channel?.output.longestPresence_s),
  named(
    'vehicles',
    'names',
    ({ detect }) => detect.toSorted(),
    ({ detect }, site) => detect.map((id) => vehicleName(id, site))
  ),
  drawn('more', ({ channel }) => [
    channel?.pinned,
    channel?.output.pulse_s,
    channel?.output.rearm_s,
    channel?.output.recovery_s,
    channel?.output.adaptation_s
  ])
];

export const unitRules: readonly Rule<Unit>[] = [
  value('name', 'text', ({ name }) => name),
  value('channels', 'count', ({ channels }) => channels),
  value('scansInTurn', 'choice', ({ scansInTurn }) => scansInTurn),
  value('measuringTime', 'time', ({ measuringTime_s }) => measuringTime_s),
  drawn('settings', ({ settings_F }) => settings_F),
  drawn('more', ({ statedInductance_H, calibrations, inductanceRange_H }) => [
    statedInductance_H,
    calibrations,
    inductanceRange_H
  ])
];

export const conduitRules: readonly Rule<Conduit>[] = [
  value('name', 'text', ({ name }) => name),
  named(
    'circuits',
    'names',
    ({ circuits }) => circuits.toSorted(),
    ({ circuits }, site) => circuits.map((id) => circuitName(id, site))
  ),
  value('length', 'length', ({ length }) => length),
  drawn('more', ({ mutualPerMetre_H }) => mutualPerMetre_H)
];

/** Of entries whose figures nobody reads side by side. */
const entryRules = <T extends { readonly id: string; readonly name: string }>(): readonly Rule<T>[] => [
  value('name', 'text', ({ name }) => name),
  drawn('more', (entry) => ({ ...entry, name: null }))
];
export const wireRules: readonly Rule<OwnWire>[] = entryRules();
export const cableRules: readonly Rule<Cable>[] = entryRules();

export const vehicleRules: readonly Rule<Vehicle>[] = [
  value('name', 'text', ({ name }) => name),
  drawn('parts', ({ parts }) => parts),
  drawn('more', ({ body, calibration }) => [body, calibration])
];

export const siteRules: readonly Rule<Site>[] = [
  value('temperature', 'temperature', ({ temperature_C }) => temperature_C),
  drawn('temperatureRange', ({ temperatureRange_C }) => temperatureRange_C),
  value('pavement', 'word', ({ pavement }) => pavement.material),
  value('permittivity', 'plain', ({ pavement }) => pavement.relativePermittivity),
  value('conductivity', 'plain', ({ pavement }) => pavement.conductivity_S_m),
  drawn('tolerances', ({ tolerances }) => tolerances),
  value('steelCost', 'ratio', ({ acceptedSteelCost }) => acceptedSteelCost),
  value('notes', 'text', ({ notes }) => notes),
  drawn('traffic', ({ traffic }) => traffic)
];
