/** What numbers and results are of: loops, circuits and so on, each group with its things, for a list to choose from. */
import { FIGURES_OF_LOOPS, type Figure } from '#analysis/sweep/results';
import { t, type PlainMessageKey } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Variable } from '#plan/variables/variable';
import { resultSubject } from './words/figure';
import { ownerKindOf, subjectName, type OwnerKind } from './words/variable';

export interface ChoiceGroup {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

const GROUPS = {
  loops: 'sweep.group.loops',
  circuits: 'sweep.group.circuits',
  vehicles: 'sweep.group.vehicles',
  steel: 'sweep.group.steel',
  units: 'sweep.group.units',
  site: 'sweep.group.site'
} as const satisfies Record<OwnerKind, PlainMessageKey>;

/** A loop and a circuit may have the same id. */
export const ownerOf = (variable: Variable): string =>
  JSON.stringify([ownerKindOf(variable), variable.subject]);

function grouped<Each>(
  all: readonly Each[],
  of: (each: Each) => { readonly group: OwnerKind; readonly value: string; readonly label: string }
): readonly ChoiceGroup[] {
  const found = new Map<OwnerKind, Map<string, string>>();
  for (const { group, value, label } of all.map(of)) {
    const options = found.get(group) ?? new Map<string, string>();
    found.set(group, options.set(value, options.get(value) ?? label));
  }
  return (Object.keys(GROUPS) as OwnerKind[]).flatMap((group) => {
    const options = [...(found.get(group) ?? [])].map(([value, label]) => ({ value, label }));
    return options.length > 0 ? [{ label: t(GROUPS[group]), options }] : [];
  });
}

/** What has numbers to vary. */
export const owners = (site: Site, variables: readonly Variable[]): readonly ChoiceGroup[] =>
  grouped(variables, (variable) => ({
    group: ownerKindOf(variable),
    value: ownerOf(variable),
    label: subjectName(site, variable)
  }));

const figureGroup = ({ kind, subject }: Figure): OwnerKind =>
  subject === null ? 'site' : FIGURES_OF_LOOPS.has(kind) ? 'loops' : 'circuits';

export const figureOwner = (figure: Figure): string => JSON.stringify([figureGroup(figure), figure.subject]);

/** What has results to look at. */
export const figureOwners = (site: Site, figures: readonly Figure[]): readonly ChoiceGroup[] =>
  grouped(figures, (figure) => ({
    group: figureGroup(figure),
    value: figureOwner(figure),
    label: resultSubject(site, figure)
  }));
