/** Numbers of a circuit: its lead-in, its channel's threshold and setting. */
import { format } from '#units/format';
import { cablesOf } from '../catalogue/cables';
import { updateChannel } from '../edits/circuits';
import { updateLeadInPart } from '../edits/lead-in';
import type { Channel, Circuit, Site } from '../schema';
import {
  all,
  around,
  byId,
  chosen,
  continuous,
  onSite,
  stepsOf,
  type VariableDefinition
} from './definition';

const leadIn = (
  read: (leadIn: Circuit['leadIn'], site: Site) => number | null,
  put: (site: Site, id: string, value: number) => Site,
  range: (present: number, site: Site) => ReturnType<VariableDefinition['range']>
): VariableDefinition => {
  const value: VariableDefinition['value'] = ({ site }, { subject }) => {
    const circuit = byId(site.circuits, subject);
    return circuit ? read(circuit.leadIn, site) : null;
  };
  return {
    value,
    put: (experiment, { subject }, next) => onSite(experiment, put(experiment.site, subject!, next)),
    range: (experiment, variable) => range(value(experiment, variable)!, experiment.site),
    subjects: ({ circuits }) => all(circuits)
  };
};

/** Of the first cable; a typed length ends that it is drawn. */
export const leadInLength = leadIn(
  ({ length }) => length,
  (site, id, length) => updateLeadInPart(site, id, 0, { length }),
  (present, site) => continuous(...around(present, 0, 500), stepsOf(site).way)
);

export const leadInCable = leadIn(
  ({ cable }, site) => {
    const at = cablesOf(site).findIndex(({ id }) => id === cable);
    return at < 0 ? null : at;
  },
  (site, id, value) => {
    const cable = cablesOf(site)[value];
    return cable ? updateLeadInPart(site, id, 0, { cable: cable.id }) : site;
  },
  (_, site) => chosen(cablesOf(site).map(({ name, id }) => name || id))
);

const channelOf = (site: Site, id: string | null): Channel | null | undefined =>
  byId(site.circuits, id)?.channel;

const connected = ({ circuits }: Site) => circuits.filter(({ channel }) => channel !== null);

export const tripThreshold: VariableDefinition = {
  value: ({ site }, { subject }) => channelOf(site, subject)?.tripThreshold ?? null,
  put: (experiment, { subject }, value) =>
    onSite(experiment, updateChannel(experiment.site, subject!, { tripThreshold: value })),
  range: ({ site }, { subject }) =>
    continuous(...around(channelOf(site, subject)!.tripThreshold, 0.0001, 0.02), 0.0001),
  subjects: (site) => all(connected(site))
};

const settingsOf = (site: Site, id: string | null): readonly number[] => {
  const channel = channelOf(site, id);
  return byId(site.units, channel?.unit)?.settings_F ?? [];
};

/** A channel whose frequency is given has no setting that would count. */
export const frequencySetting: VariableDefinition = {
  value: ({ site }, { subject }) => {
    const channel = channelOf(site, subject);
    if (!channel || channel.frequency_Hz !== null) return null;
    const at = channel.frequencySetting - 1;
    return settingsOf(site, subject)[at] === undefined ? null : at;
  },
  put: (experiment, { subject }, value) =>
    onSite(experiment, updateChannel(experiment.site, subject!, { frequencySetting: value + 1 })),
  range: ({ site }, { subject }) =>
    chosen(
      settingsOf(site, subject).map(
        (farads, at) => `${at + 1} (${format(farads, 'capacitance', site.displayUnits).text})`
      )
    ),
  subjects: (site) => all(connected(site).filter(({ channel }) => channel!.frequency_Hz === null))
};
