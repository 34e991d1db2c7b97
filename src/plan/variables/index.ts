/** All numbers of a drawing that can be varied. A new kind is a member of `VARIABLE_KINDS`, a definition and a line here. */
import type { Site } from '../schema';
import { frequencySetting, leadInCable, leadInLength, tripThreshold } from './circuits';
import type { VariableDefinition } from './definition';
import { gap } from './gap';
import { cornerCut, length, rotation, width } from './sizes';
import { measuringTime, permittivity, steelDepth, steelPitch, temperature } from './surroundings';
import {
  VARIABLE_KINDS,
  type Experiment,
  type Variable,
  type VariableKind,
  type VariableRange
} from './variable';
import { along, offset, shortedTurns, vehicleHeight } from './vehicles';
import { slotDepth, slotWidth, tailLength, turns, wire } from './winding';

const DEFINITIONS: Readonly<Record<VariableKind, VariableDefinition>> = {
  ...{ turns, width, length, rotation, slotDepth, slotWidth, cornerCut, wire, tailLength },
  ...{ leadInLength, leadInCable, gap, vehicleHeight, offset, along, shortedTurns },
  ...{ steelDepth, steelPitch, measuringTime, tripThreshold, frequencySetting, temperature, permittivity }
};

/** The drawing as it is, with nothing varied. */
export const experimentOn = (
  site: Site,
  { offset_m, along_m }: Pick<Experiment, 'offset_m' | 'along_m'> = { offset_m: 0, along_m: 0 }
): Experiment => ({ site, offset_m, along_m, shorted: null });

/** SI, degrees or a count; null where the experiment has no such number. */
export const valueOf = (experiment: Experiment, variable: Variable): number | null =>
  DEFINITIONS[variable.kind].value(experiment, variable);

/**
 * The experiment with another value of the variable, all else as it was; the same one for the value that it has. Null where
 * it has no such number or a document may not hold that value. Its site is what a drawing becomes by taking the value.
 */
export const withValue = (experiment: Experiment, variable: Variable, value: number): Experiment | null => {
  const present = valueOf(experiment, variable);
  if (present === null || !Number.isFinite(value)) return null;
  return value === present ? experiment : DEFINITIONS[variable.kind].put(experiment, variable, value);
};

/** Within what a document may hold, as far as practice goes; null where there is no such number, or nothing to choose. */
export const rangeOf = (experiment: Experiment, variable: Variable): VariableRange | null => {
  const present = valueOf(experiment, variable);
  const range = present === null ? null : DEFINITIONS[variable.kind].range(experiment, variable);
  return range && range.least < range.most ? range : null;
};

/** All that a drawing has, by kind. */
export const variablesOf = (site: Site): readonly Variable[] => {
  const experiment = experimentOn(site);
  return VARIABLE_KINDS.flatMap((kind) =>
    DEFINITIONS[kind]
      .subjects(site)
      .map((each): Variable => ({ kind, ...each }))
      .filter((variable) => valueOf(experiment, variable) !== null)
  );
};
