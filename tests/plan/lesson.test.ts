/** The format of a lesson: what is read, and with which sentence everything else is refused. */
import { describe, expect, it } from 'vitest';
import { readLesson } from '#plan/lesson';
import { soundLesson } from './lesson-document';
import { withValue } from './reading/sound-document';

const problemsOf = (document: unknown) => {
  const reading = readLesson(typeof document === 'string' ? document : JSON.stringify(document));
  return reading.ok ? [] : reading.problems;
};
const spoilt = (path: string, value: unknown) => problemsOf(withValue(soundLesson(), path, value));

describe('a sound lesson', () => {
  it('is read with its site, and with what is usual where nothing is said', () => {
    const reading = readLesson(JSON.stringify(soundLesson()));
    if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join(' '));
    expect(reading.site.loops.map(({ id }) => id)).toEqual(['L1']);
    expect(reading.site.temperature_C).toBe(20);
    expect(reading.lesson.experiment).toMatchObject({
      family: null,
      designs: null,
      place: { offset_m: 0, along_m: 0 },
      isLogarithmic: false
    });
    expect(reading.lesson.measures['two']?.is).toEqual({ kind: 'value', figure: 0, curve: 0, x: 2 });
  });

  it('may have a byte order mark in front', () => {
    expect(problemsOf(`\uFEFF${JSON.stringify(soundLesson())}`)).toEqual([]);
  });
});

describe('what is no lesson', () => {
  it.each([
    ['', '', 'an empty file', 'a lesson'],
    ['[]', '', 'a list of 0 entries', 'an object'],
    ['{', '', 'the end of the file', 'a name in double quotes or "}"'],
    ['{"format":"kerfline-site","version":1}', 'format', '"kerfline-site" (text)', '"kerfline-lesson"'],
    ['{"format":"kerfline-lesson"}', 'version', 'nothing', 'the whole number 1'],
    ['{"format":"kerfline-lesson","version":1.5}', 'version', '1.5', 'the whole number 1']
  ])('%s', (text, path, found, expected) => {
    expect(problemsOf(text)).toEqual([expect.objectContaining({ path, found, expected })]);
  });

  it('is told apart from one of a newer version', () => {
    expect(problemsOf({ ...soundLesson(), version: 2 })[0]?.message).toContain('newer version');
  });

  it('names what would reach into a prototype', () => {
    const text = JSON.stringify(soundLesson()).replace('"two":', '"__proto__":');
    expect(problemsOf(text)[0]).toMatchObject({ found: 'a field named "__proto__"' });
  });

  it('counts no more than fifty problems', () => {
    const measures = Object.fromEntries(Array.from({ length: 80 }, (_, at) => [`m${at}`, {}]));
    expect(spoilt('measures', measures)).toHaveLength(50);
  });
});

type Row = readonly [path: string, value: unknown, found: string, expected: string, blamed?: string];
const MEASURE_OR_LENGTH = 'the name of a measure of the lesson, or a length such as “20 cm”';
const LENGTH_ALONE = 'a length such as “20 cm”; measures have no place in what is read before the outcome';
const rows: readonly Row[] = [
  ['id', 'Two words', '"Two words" (text)', 'small letters, digits and hyphens, a letter first'],
  ['title', 'Sound', '"Sound" (text)', 'an object'],
  ['title.en', '', '"" (text)', 'a text of 1 to 4000 printable characters'],
  ['title.fr', 'Bien', 'a field that lessons do not have', 'a field of the format'],
  ['question', undefined, 'nothing', 'an object'],
  ['site', undefined, 'nothing', 'an object'],
  ['site.loops[0].turns', 0, '0', 'a whole number from 1 to 50'],
  ['site.circuits[0].strings[0][0].loop', 'L9', '"L9" (text)', 'the id of a loop in the file'],
  ['site.format', 'other', '"other" (text)', '"kerfline-site"'],
  ['experiment.famly', null, 'a field that lessons do not have', 'a field of the format'],
  ['experiment.x.values', [1], 'a list of 1 entry', 'a list of 2 to 400 entries'],
  ['experiment.x.values[1]', 'two', '"two" (text)', 'a number from -1000000000000 to 1000000000000'],
  ['experiment.figures', [], 'a list of 0 entries', 'a list of 1 to 3 entries'],
  [
    'measures.two.is.kind',
    'mean',
    '"mean" (text)',
    'one of "value", "highest", "lowest", "highestAt", "lowestAt", "exponent", "crossesAt", "ratio", "difference"'
  ],
  ['measures.two.is.x', undefined, 'nothing', 'a number from -1000000000000 to 1000000000000'],
  ['measures.two.is.x', 5, '5', 'a number from 1 to 4'],
  ['measures.two.is.figure', 1, '1', 'a place in experiment.figures, 0 to 0'],
  ['measures.two.is.curve', 1, '1', 'a curve of the experiment, 0 to 0'],
  ['measures.times.is.of', 'three', '"three" (text)', 'the name of a measure that stands above this one'],
  ['measures.times.is.of', 'times', '"times" (text)', 'the name of a measure that stands above this one'],
  ['measures.Two', {}, '"Two" (text)', 'letters and digits, a small letter first'],
  ['predictions', [], 'a list of 0 entries', 'a list of 2 to 5 entries'],
  ['predictions[0].when.measure', 'none', '"none" (text)', 'the name of a measure of the lesson'],
  [
    'predictions[1].when.atLeast',
    1.5,
    'a range that overlaps that of predictions[0]',
    'ranges of which only one can hold',
    'predictions[1].when'
  ],
  [
    'predictions[1].when',
    { measure: 'times', atLeast: 4, below: 3 },
    '3',
    'a number above 4, where the range begins',
    'predictions[1].when.below'
  ],
  ['experiment.x.values', [1, 2, 2, 4], '2', 'each value once', 'experiment.x.values[2]'],
  ['explanation[0].en', 'It grows {often} times.', '"often" in braces', MEASURE_OR_LENGTH],
  ['explanation[0].en', 'It is {2 ft} wide.', '"2 ft" in braces', MEASURE_OR_LENGTH],
  ['question.en', 'From {two} to {four}?', '"two" in braces', LENGTH_ALONE],
  ['title.en', 'The {times}', '"times" in braces', LENGTH_ALONE],
  ['predictions[1].says.en', '{times} times.', '"times" in braces', LENGTH_ALONE],
  [
    'experiment.designs',
    [{ variant: null, label: { en: '{four}' } }],
    '"four" in braces',
    LENGTH_ALONE,
    'experiment.designs[0].label.en'
  ],
  [
    'published',
    { source: { en: 'Page {two}' }, says: { en: '{times}' } },
    '"two" in braces',
    LENGTH_ALONE,
    'published.source.en'
  ]
];

describe('a lesson with a slip is refused with its place', () => {
  it.each(
    rows.map(([path, value, found, expected, blamed = path]) => ({ path, value, found, expected, blamed }))
  )('$path = $value', ({ path, value, found, expected, blamed }) => {
    const problems = spoilt(path, value);
    expect(problems).toContainEqual(expect.objectContaining({ path: blamed, found, expected }));
    const told = problems.find((each) => each.path === blamed)!.message;
    expect(told).toBe(`${blamed}: found ${found}, expected ${expected}.`);
  });

  it('but not where a length stands in any of its texts', () => {
    for (const path of ['title.en', 'question.en', 'predictions[0].says.en', 'explanation[0].en'])
      expect(spoilt(path, 'At {20 cm}, {1.25 m} and {6 mm}')).toEqual([]);
  });

  it('with the places in its site and in the rest of it at once', () => {
    const document = withValue(
      withValue(soundLesson(), 'site.loops[0].turns', 0),
      'predictions[0].when.measure',
      'none'
    );
    expect(problemsOf(document).map(({ path }) => path)).toEqual([
      'site.loops[0].turns',
      'predictions[0].when.measure'
    ]);
  });

  it('that has a family and designs at once', () => {
    const family = { variable: { kind: 'width', subject: 'L1' }, values: [1, 2] };
    const designs = [{ variant: null, label: { en: 'this' } }];
    const document = withValue(
      withValue(soundLesson(), 'experiment.family', family),
      'experiment.designs',
      designs
    );
    expect(problemsOf(document)).toContainEqual(
      expect.objectContaining({ path: 'experiment.designs', expected: 'either a family or designs' })
    );
  });
});
