/** What a lesson's experiment names must be there; and its texts stay texts. */
import { afterEach, describe, expect, it } from 'vitest';
import { speakWhole } from '#i18n/whole';
import { openLesson } from '#analysis/lessons/open';
import { measureText, spoken, told } from '#analysis/lessons/told';
import { soundLesson } from '../../plan/lesson-document';
import { withValue } from '../../plan/reading/sound-document';
import { computed, opened } from './shelf';

const open = (document: unknown) => openLesson(JSON.stringify(document));
const problemsOf = (document: unknown) => {
  const reading = open(document);
  return reading.ok ? [] : reading.problems;
};
const spoilt = (path: string, value: unknown) => problemsOf(withValue(soundLesson(), path, value));

type Row = readonly [path: string, value: unknown, found: string, expected: string | RegExp, blamed?: string];
const rows: readonly Row[] = [
  ['experiment.figures[0].kind', 'colour', '"colour" (text)', /^one of "loopInductance", /u],
  ['experiment.figures[0].subject', 'L9', '"L9" (text)', 'the id of a loop in the file'],
  ['experiment.figures[0].subject', null, 'null', 'the id of a loop in the file'],
  ['experiment.figures[0]', { kind: 'q', subject: 'L1' }, '"L1" (text)', 'the id of a circuit in the file', 'experiment.figures[0].subject'], // prettier-ignore
  ['experiment.figures[0]', { kind: 'mutual', subject: 'L1' }, 'nothing', 'the id of a loop in the file', 'experiment.figures[0].other'], // prettier-ignore
  ['experiment.figures[0]', { kind: 'response', subject: 'C1', vehicle: 'boat' }, '"boat" (text)', 'the id of a vehicle in the file or the catalogue', 'experiment.figures[0].vehicle'], // prettier-ignore
  ['experiment.x.variable', { kind: 'turns', subject: 'L9' }, 'turns, L9', 'a number that this site has'],
  ['experiment.x.variable', { kind: 'gap', subject: 'L1', other: 'L2' }, 'gap, L1, L2', 'a number that this site has'], // prettier-ignore
  ['experiment.x.values[3]', 51, '51', 'a value that the number can have'],
  ['experiment.family', { variable: { kind: 'steelDepth', subject: 's1' }, values: [0.1, 0.2] }, 'steelDepth, s1', 'a number that this site has', 'experiment.family.variable'], // prettier-ignore
  ['experiment.designs', [{ variant: 'v1', label: { en: 'One' } }], '"v1" (text)', 'the id of a variant of the site, or null', 'experiment.designs[0].variant'], // prettier-ignore
  ['experiment.field', { source: { kind: 'circuit', id: 'L1' }, from: [0, 0], to: [1, 0], low_m: 0, high_m: 1 }, '"L1" (text)', 'the id of a circuit in the file', 'experiment.field.source.id'] // prettier-ignore
];

describe('an experiment that names what is not there', () => {
  it.each(
    rows.map(([path, value, found, expected, blamed = path]) => ({ path, value, found, expected, blamed }))
  )('$path = $value', ({ path, value, found, expected, blamed }) => {
    const wanted = expected instanceof RegExp ? (expect.stringMatching(expected) as string) : expected;
    expect(spoilt(path, value)).toContainEqual(
      expect.objectContaining({ path: blamed, found, expected: wanted })
    );
  });
});

/** Every place of a document, as a path that `withValue` takes. */
function placesIn(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => {
    const here = Array.isArray(value) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`;
    return [here, ...placesIn(below, here)];
  });
}

describe('a lesson with anything anywhere', () => {
  it('is opened, or refused with a sentence, and never throws', () => {
    let refused = 0;
    for (const place of placesIn(soundLesson()))
      for (const value of [undefined, null, [], {}, '', 'x', -1, 0.5, 1e300, true]) {
        const problems = spoilt(place, value);
        refused += problems.length > 0 ? 1 : 0;
        for (const { message } of problems) expect(message).toMatch(/[.\]]$/u);
      }
    expect(refused).toBeGreaterThan(500);
  });

  it('is opened, or refused, however early its text ends', () => {
    const text = JSON.stringify(soundLesson());
    for (let end = 0; end < text.length; end += 23) expect(openLesson(text.slice(0, end)).ok).toBe(false);
  });
});

describe('the text of a lesson', () => {
  afterEach(() => {
    speakWhole('en');
  });

  const shelved = opened('sound', JSON.stringify(soundLesson()));

  it('has its figures filled in, in the language that is spoken', () => {
    const outcome = computed(shelved);
    const words = { en: '{two} to {four}: {times}', de: 'von {two} auf {four}: {times}' };
    const english = told(words, shelved.lesson, outcome, 'metric');
    expect(english).toMatch(/^\d+\.\d+\s\SH to \d+\.\d+\s\SH: 3\.\d\d$/u);
    speakWhole('de');
    expect(told(words, shelved.lesson, outcome, 'metric')).toBe(
      english.replace(/^(.*) to /u, 'von $1 auf ').replaceAll('.', ',')
    );
    expect(told({ en: '{times}' }, shelved.lesson, outcome, 'metric')).toMatch(/^3,\d\d$/u);
  });

  it('is written in the units that are shown', () => {
    const ofTwo = { is: { kind: 'ratio', of: 'a', to: 'b' } } as const;
    // 1.8288 m = 6 ft and 0.0508 m = 2 in by the definition of the inch
    expect(measureText({ shown: 'length', ...ofTwo }, 1.8288, 'imperial')).toBe('6.00 ft');
    expect(measureText({ shown: 'smallLength', ...ofTwo }, 0.0508, 'imperial')).toBe('2.00 in');
    expect(measureText({ shown: 'length', ...ofTwo, digits: 2 }, 1.8288, 'imperial')).toBe('6.0 ft');
    expect(measureText({ shown: 'percent', ...ofTwo, digits: 2 }, 0.0456, 'metric')).toBe('4.6 %');
    expect(measureText({ shown: 'percent', ...ofTwo }, -2e-16, 'metric')).toBe('0 %');
    expect(measureText({ shown: 'number', ...ofTwo }, null, 'metric')).toBe('–');
  });

  it('states lengths in feet or inches with the metric one beside it, or as they are written', () => {
    const words = {
      en: 'from {20 cm} to {2.5 m}, {6 mm} wide',
      de: 'von {20 cm} bis {2.5 m}, {6 mm} breit'
    };
    const said = (system: 'metric' | 'imperial') => spoken(words, system).replaceAll('\u00a0', ' ');
    expect(said('metric')).toBe('from 20 cm to 2.5 m, 6 mm wide');
    // 20/2.54 = 7.874, 2.5/0.3048 = 8.202, 6/25.4 = 0.2362
    expect(said('imperial')).toBe('from 7.87 in (20 cm) to 8.20 ft (2.5 m), 0.236 in (6 mm) wide');
    speakWhole('de');
    expect(said('imperial')).toBe('von 7,87 in (20 cm) bis 8,20 ft (2,5 m), 0,236 in (6 mm) breit');
  });

  it('does not part a number from its unit at the end of a line', () => {
    expect(spoken({ en: '5 Ω in 0.18 % of 14 m and a 3-fold 20 men' }, 'metric')).toBe(
      '5\u00a0Ω in 0.18\u00a0% of 14\u00a0m and a 3\u2011fold 20 men'
    );
  });

  it('stays text, whatever stands in it', () => {
    const nasty = '<img src=x onerror=alert(1)> $& $1 {two}';
    const shelvedNasty = opened(
      'nasty',
      JSON.stringify(withValue(soundLesson(), 'explanation[0].en', nasty))
    );
    const outcome = computed(shelvedNasty);
    const { lesson } = shelvedNasty;
    expect(told(lesson.explanation[0]!, lesson, outcome, 'metric')).toMatch(
      /^<img src=x onerror=alert\(1\)> \$& \$1 \d+\.\d+\s\SH$/u
    );
  });

  it('takes braces that name nothing for what they are', () => {
    const outcome = computed(shelved);
    expect(told({ en: '{toString} {nothing}' }, shelved.lesson, outcome, 'metric')).toBe(
      '{toString} {nothing}'
    );
  });
});
