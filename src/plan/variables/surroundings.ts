/** What lies around the loops and what measures them: steel, the unit, temperature and pavement. */
import { updateSite } from '../edits/site-fields';
import { updateSteel } from '../edits/steel';
import { updateUnit } from '../edits/units';
import { all, around, byId, continuous, onSite, stepsOf, WHOLE, type VariableDefinition } from './definition';

export const steelDepth: VariableDefinition = {
  value: ({ site }, { subject }) => byId(site.steel, subject)?.depth ?? null,
  put: (experiment, { subject }, value) =>
    onSite(experiment, updateSteel(experiment.site, subject!, { depth: value })),
  range: ({ site }, { subject }) =>
    continuous(...around(byId(site.steel, subject)!.depth, 0.02, 1), 2 * stepsOf(site).depth),
  subjects: ({ steel }) => all(steel)
};

/** Of a mat's bars. */
export const steelPitch: VariableDefinition = {
  value: ({ site }, { subject }) => {
    const steel = byId(site.steel, subject);
    return steel?.kind === 'mat' ? steel.pitch : null;
  },
  put: (experiment, { subject }, value) =>
    onSite(experiment, updateSteel(experiment.site, subject!, { pitch: value })),
  range: (experiment, variable) =>
    continuous(
      ...around(steelPitch.value(experiment, variable)!, 0.05, 0.6),
      2 * stepsOf(experiment.site).depth
    ),
  subjects: ({ steel }) => all(steel.filter(({ kind }) => kind === 'mat'))
};

export const measuringTime: VariableDefinition = {
  value: ({ site }, { subject }) => byId(site.units, subject)?.measuringTime_s ?? null,
  put: (experiment, { subject }, value) =>
    onSite(experiment, updateUnit(experiment.site, subject!, { measuringTime_s: value })),
  range: ({ site }, { subject }) =>
    continuous(...around(byId(site.units, subject)!.measuringTime_s, 0.0005, 0.2), 0.0005),
  subjects: ({ units }) => all(units)
};

/** °C, of the wires. */
export const temperature: VariableDefinition = {
  value: ({ site }) => site.temperature_C,
  put: (experiment, _, value) => onSite(experiment, updateSite(experiment.site, { temperature_C: value })),
  range: ({ site }) => continuous(...around(site.temperature_C, -40, 70), 5),
  subjects: () => WHOLE
};

/** Relative, of the pavement. */
export const permittivity: VariableDefinition = {
  value: ({ site }) => site.pavement.relativePermittivity,
  put: (experiment, _, value) => {
    const pavement = { ...experiment.site.pavement, relativePermittivity: value };
    return onSite(experiment, updateSite(experiment.site, { pavement }));
  },
  range: ({ site }) => continuous(...around(site.pavement.relativePermittivity, 1, 30), 1),
  subjects: () => WHOLE
};
