/** What each field of a lesson allows, but not together: names that name nothing, curves that are not there, predictions that overlap. */
import { t } from '#i18n/message';
import { statedLength } from './lesson-lengths';
import type { Lesson, Measure, Words } from './lesson-schema';
import { type Path, type Problem, inWords, problem, quoted } from './reading/problem';

const BRACES = /\{([^{}]*)\}/gu;

const inBraces = (text: string): readonly string[] =>
  [...text.matchAll(BRACES)].flatMap(([, inner]) => (inner === undefined ? [] : [inner]));

/** Names in braces; lengths that stand there are none. */
export const namesIn = (text: string): readonly string[] =>
  inBraces(text).filter((each) => statedLength(each) === null);

/** Without `known`: a text that is read before the outcome. */
function wordsConflicts(words: Words, path: Path, known?: ReadonlySet<string>): readonly Problem[] {
  const expected = t(known ? 'lesson.measureOrLength' : 'lesson.lengthAlone');
  return Object.entries(words).flatMap(([language, text]) =>
    namesIn(text ?? '')
      .filter((each) => !known?.has(each))
      .map((each) => problem([...path, language], t('lesson.braces', { name: quoted(each) }), expected))
  );
}

function measureConflicts(
  { is }: Measure,
  path: Path,
  { x, figures }: Lesson['experiment'],
  curves: number,
  above: ReadonlySet<string>
): readonly Problem[] {
  if (is.kind === 'ratio' || is.kind === 'difference')
    return (['of', 'to'] as const)
      .filter((key) => !above.has(is[key]))
      .map((key) => problem([...path, 'is', key], inWords(is[key]), t('lesson.measureAbove')));
  const least = Math.min(...x.values);
  const most = Math.max(...x.values);
  const places = Object.entries(is).filter(([key]) => key === 'x' || key === 'from' || key === 'to');
  const outside = places.filter(([, value]) => typeof value === 'number' && (value < least || value > most));
  return [
    ...(is.figure < figures.length
      ? []
      : [
          problem(
            [...path, 'is', 'figure'],
            String(is.figure),
            t('lesson.placeIn', { most: figures.length - 1, list: 'experiment.figures' })
          )
        ]),
    ...(is.curve < curves
      ? []
      : [problem([...path, 'is', 'curve'], String(is.curve), t('lesson.curve', { most: curves - 1 }))]),
    ...outside.map(([key, value]) =>
      problem(
        [...path, 'is', key],
        String(value),
        t('read.number', { min: String(least), max: String(most) })
      )
    )
  ];
}

/** Conditions on one measure that could hold at once. */
function overlaps({ predictions }: Lesson): readonly Problem[] {
  return predictions.flatMap(({ when }, index) =>
    predictions.slice(0, index).flatMap((earlier, place) => {
      const other = earlier.when;
      const low = Math.max(when.atLeast ?? -Infinity, other.atLeast ?? -Infinity);
      const high = Math.min(when.below ?? Infinity, other.below ?? Infinity);
      return when.measure === other.measure && low < high
        ? [
            problem(
              ['predictions', index, 'when'],
              t('lesson.overlaps', { place: `predictions[${place}]` }),
              t('lesson.apart')
            )
          ]
        : [];
    })
  );
}

/** A condition that no figure can meet. */
const empty = ({ predictions }: Lesson): readonly Problem[] =>
  predictions.flatMap(({ when: { atLeast = -Infinity, below = Infinity } }, index) =>
    atLeast < below
      ? []
      : [
          problem(
            ['predictions', index, 'when', 'below'],
            String(below),
            t('lesson.above', { least: String(atLeast) })
          )
        ]
  );

/** A value that stands twice would be two places of one slider. */
const repeated = (values: readonly number[], path: Path): readonly Problem[] =>
  values.flatMap((value, index) =>
    values.indexOf(value) < index
      ? [problem([...path, 'values', index], String(value), t('lesson.once'))]
      : []
  );

export function lessonConflicts(lesson: Lesson): readonly Problem[] {
  const { experiment, measures, predictions, explanation, published } = lesson;
  const known = new Set(Object.keys(measures));
  const curves = experiment.designs?.length ?? experiment.family?.values.length ?? 1;
  const above = new Set<string>();
  const ofMeasures = Object.entries(measures).flatMap(([name, each]) => {
    const found = measureConflicts(each, ['measures', name], experiment, curves, above);
    above.add(name);
    return found;
  });
  return [
    ...(experiment.family && experiment.designs
      ? [problem(['experiment', 'designs'], inWords(experiment.designs), t('lesson.eitherFamily'))]
      : []),
    ...ofMeasures,
    ...predictions.flatMap(({ when }, index) =>
      known.has(when.measure)
        ? []
        : [problem(['predictions', index, 'when', 'measure'], inWords(when.measure), t('lesson.measureName'))]
    ),
    ...repeated(experiment.x.values, ['experiment', 'x']),
    ...repeated(experiment.family?.values ?? [], ['experiment', 'family']),
    ...empty(lesson),
    ...overlaps(lesson),
    ...wordsConflicts(lesson.title, ['title']),
    ...wordsConflicts(lesson.question, ['question']),
    ...predictions.flatMap(({ says }, index) => wordsConflicts(says, ['predictions', index, 'says'])),
    ...(experiment.designs ?? []).flatMap(({ label }, index) =>
      wordsConflicts(label, ['experiment', 'designs', index, 'label'])
    ),
    ...explanation.flatMap((each, index) => wordsConflicts(each, ['explanation', index], known)),
    ...(published
      ? [
          ...wordsConflicts(published.says, ['published', 'says'], known),
          ...wordsConflicts(published.source, ['published', 'source'])
        ]
      : [])
  ];
}
