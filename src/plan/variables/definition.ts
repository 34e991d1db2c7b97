/** What the program must know of a kind of variable; a file a subject fills them in, `index.ts` lists them. */
import { FOOT, INCH } from '#units/constants';
import type { Site } from '../schema';
import type { Experiment, Variable, VariableRange } from './variable';

export interface VariableDefinition {
  /** What it is in this experiment; null where it has no such number. */
  value(experiment: Experiment, variable: Variable): number | null;
  /** Another value; the same or null where a document may not hold it. Called only where `value` is a number. */
  put(experiment: Experiment, variable: Variable, value: number): Experiment | null;
  /** Called only where `value` is a number. */
  range(experiment: Experiment, variable: Variable): VariableRange | null;
  /** Ids that may be its subject, and of a second one. */
  subjects(site: Site): readonly (Pick<Variable, 'subject'> & { readonly other?: string })[];
}

/** Another site; null where the edit was refused. */
export const onSite = (experiment: Experiment, site: Site): Experiment | null =>
  site === experiment.site ? null : { ...experiment, site };

export const byId = <T extends { readonly id: string }>(
  list: readonly T[],
  id: string | null | undefined
): T | undefined => list.find((each) => each.id === id);

export const all = (list: readonly { readonly id: string }[]): readonly { readonly subject: string }[] =>
  list.map(({ id }) => ({ subject: id }));

/** The whole site. */
export const WHOLE = [{ subject: null }] as const;

export const continuous = (least: number, most: number, step: number): VariableRange => ({
  ...{ least, most, step },
  isWhole: false,
  choices: null
});

export const counted = (least: number, most: number): VariableRange => ({
  ...{ least, most, step: 1 },
  isWhole: true,
  choices: null
});

export const chosen = (choices: readonly string[]): VariableRange => ({
  ...{ least: 0, most: choices.length - 1, step: 1 },
  isWhole: true,
  choices
});

/** Steps that people take on the site's own scale, metres: of sides and distances, of lead-ins, and of depths. */
export const stepsOf = ({ displayUnits }: Pick<Site, 'displayUnits'>) =>
  displayUnits === 'imperial'
    ? { side: 2 * INCH, way: 5 * FOOT, depth: INCH / 4, fine: INCH / 16 }
    : { side: 0.05, way: 1, depth: 0.005, fine: 0.001 };

/** A practical range, widened to what is there already. */
export const around = (value: number, least: number, most: number): readonly [number, number] => [
  Math.min(least, value),
  Math.max(most, value)
];
