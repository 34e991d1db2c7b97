/** What a lesson's experiment names and its site, or the program, does not have. */
import { t } from '#i18n/message';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Lesson } from '#plan/lesson';
import { type Path, type Problem, inWords, problem } from '#plan/reading/problem';
import type { Site } from '#plan/schema';
import { experimentOn, valueOf, withValue } from '#plan/variables/index';
import { designSite } from '#plan/variants';
import { FIGURE_KINDS, FIGURES_OF_LOOPS, type FigureKind } from '../sweep/results';
import { isFigureKind, variableOf } from './wish';

type Experiment = Lesson['experiment'];
type Figure = Experiment['figures'][number];

const OF_SITE: readonly FigureKind[] = ['wire', 'sawCut', 'cost'];
const OF_PAIRS: readonly FigureKind[] = ['mutual', 'coupling', 'separation', 'ripple', 'beatRatio'];
const OF_VEHICLES: readonly FigureKind[] = ['response', 'margin'];

function figureProblems(figure: Figure, site: Site, path: Path): readonly Problem[] {
  const { kind, subject, other, vehicle } = figure;
  const choices = FIGURE_KINDS.map((each) => `"${each}"`).join(', ');
  if (!isFigureKind(kind)) return [problem([...path, 'kind'], inWords(kind), t('read.oneOf', { choices }))];
  const isOfLoop = FIGURES_OF_LOOPS.has(kind);
  const expected = t(isOfLoop ? 'read.id.loop' : 'read.id.circuit');
  const has = (id: string | null | undefined): boolean =>
    (isOfLoop ? site.loops : site.circuits).some((each) => each.id === id);
  const isWhole = OF_SITE.includes(kind) && subject === null;
  const needed = [
    ...(isWhole || has(subject) ? [] : [problem([...path, 'subject'], inWords(subject), expected)]),
    ...(!OF_PAIRS.includes(kind) || has(other) ? [] : [problem([...path, 'other'], inWords(other), expected)])
  ];
  if (!OF_VEHICLES.includes(kind) || (vehicle !== undefined && vehicleOf(vehicle, site))) return needed;
  return [...needed, problem([...path, 'vehicle'], inWords(vehicle), t('read.id.vehicle'))];
}

function fieldProblems({ field }: Experiment, site: Site): readonly Problem[] {
  if (!field) return [];
  const { kind, id } = field.source;
  const list: readonly { readonly id: string }[] = kind === 'loop' ? site.loops : site.circuits;
  if (list.some((each) => each.id === id)) return [];
  const expected = t(kind === 'loop' ? 'read.id.loop' : 'read.id.circuit');
  return [problem(['experiment', 'field', 'source', 'id'], inWords(id), expected)];
}

/** The number must be there, and take every value. */
function sweptProblems(
  { variable, values }: Experiment['x'],
  { place }: Experiment,
  site: Site,
  path: Path
): readonly Problem[] {
  const swept = variableOf(variable);
  const present = experimentOn(site, place);
  if (valueOf(present, swept) === null) {
    const found = [swept.kind, swept.subject, swept.other].filter((each) => typeof each === 'string');
    return [problem([...path, 'variable'], found.join(', '), t('lesson.variable'))];
  }
  return values.flatMap((value, index) =>
    withValue(present, swept, value)
      ? []
      : [problem([...path, 'values', index], String(value), t('lesson.value'))]
  );
}

const designProblems = ({ designs }: Experiment, site: Site): readonly Problem[] =>
  (designs ?? []).flatMap(({ variant }, index) =>
    designSite(site, variant)
      ? []
      : [problem(['experiment', 'designs', index, 'variant'], inWords(variant), t('lesson.variant'))]
  );

export function experimentProblems({ experiment }: Lesson, site: Site): readonly Problem[] {
  const { x, family } = experiment;
  return [
    ...sweptProblems(x, experiment, site, ['experiment', 'x']),
    ...(family ? sweptProblems(family, experiment, site, ['experiment', 'family']) : []),
    ...designProblems(experiment, site),
    ...experiment.figures.flatMap((figure, index) =>
      figureProblems(figure, site, ['experiment', 'figures', index])
    ),
    ...fieldProblems(experiment, site)
  ];
}
