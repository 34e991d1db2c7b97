/** What every lesson on the shelf must be. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { spoken, told } from '#analysis/lessons/told';
import { FIGURE_KINDS } from '#analysis/sweep/results';
import { builtInCables } from '#plan/catalogue/cables';
import { builtInWires } from '#plan/catalogue/wires';
import { namesIn } from '#plan/lesson-conflicts';
import type { Lesson, Words } from '#plan/lesson';
import { VARIABLE_KINDS } from '#plan/variables/variable';
import { computed, folder, opened, outcomeOfLesson, shelf } from './shelf';

const textsOf = ({ title, question, predictions, explanation, published }: Lesson): readonly Words[] => [
  title,
  question,
  ...predictions.map(({ says }) => says),
  ...explanation,
  ...(published ? [published.says, published.source] : [])
];

describe('the shelf', () => {
  it('has the dozen lessons in the order of a class', () => {
    expect(shelf.map(({ lesson }) => lesson.id)).toEqual([
      'turns',
      'short-side',
      'figure-of-eight',
      'dead-spot',
      'lead-in',
      'steel',
      'neighbours',
      'high-lorry',
      'q',
      'deep-loop',
      'aiding-opposing',
      'shorted-turn'
    ]);
  });

  it.each(shelf)('$file is named after its lesson', ({ file, lesson }) => {
    expect(file).toMatch(new RegExp(`^\\d\\d-${lesson.id}\\.kerfline-lesson\\.json$`, 'u'));
  });

  it.each(shelf)('$file says everything in both languages, with the same figures', ({ lesson }) => {
    const texts = [...textsOf(lesson), ...(lesson.experiment.designs ?? []).map(({ label }) => label)];
    for (const words of texts) {
      expect(words.de).toBeDefined();
      expect([...new Set(namesIn(words.de!))].sort()).toEqual([...new Set(namesIn(words.en))].sort());
    }
  });

  it.each(shelf)('$file measures nothing that it does not use', ({ lesson }) => {
    const inTexts = textsOf(lesson).flatMap(({ en }) => namesIn(en));
    const asked = lesson.predictions.map(({ when }) => when.measure);
    const built = Object.values(lesson.measures).flatMap(({ is }) => ('of' in is ? [is.of, is.to] : []));
    const used = new Set([...inTexts, ...asked, ...built]);
    expect(Object.keys(lesson.measures).filter((name) => !used.has(name))).toEqual([]);
  });

  it.each(shelf)(
    '$file is small: one to three loops, one question, three or four predictions',
    ({ lesson, site }) => {
      expect(site.loops.length).toBeLessThanOrEqual(3);
      expect(lesson.predictions.length).toBeGreaterThanOrEqual(3);
      expect(spoken(lesson.question, 'metric')).toContain('?');
    }
  );

  it.each(shelf)('$file has exactly one prediction that the computed figures bear out', ({ lesson }) => {
    const { right, measures, picture } = outcomeOfLesson(lesson.id);
    expect(right.filter(Boolean)).toHaveLength(1);
    expect([...measures].filter(([, value]) => value === null)).toEqual([]);
    expect(picture.doubtful).toEqual([]);
  });

  it('does not have the right one always in the same place', () => {
    const places = shelf.map(({ lesson }) => outcomeOfLesson(lesson.id).right.indexOf(true));
    for (const place of places)
      expect(places.filter((each) => each === place).length).toBeLessThanOrEqual(shelf.length / 2);
  });

  /** A length that is not in braces would stay in metres for whoever works in feet. Beside its feet it may stand. */
  it.each(shelf)('$file states its lengths in the units that are shown', ({ lesson }) => {
    for (const words of [...textsOf(lesson), ...(lesson.experiment.designs ?? []).map(({ label }) => label)])
      for (const text of [words.en, words.de ?? ''])
        expect(text.replace(/\{[^{}]*\}|ft \([^()]*\)/gu, '')).not.toMatch(/\d (?:mm|cm|m|ft|in)\b/u);
  });

  it.each(shelf)('$file fills in all its figures', ({ lesson }) => {
    const outcome = outcomeOfLesson(lesson.id);
    for (const words of [...lesson.explanation, ...(lesson.published ? [lesson.published.says] : [])])
      for (const system of ['metric', 'imperial'] as const)
        expect(told(words, lesson, outcome, system)).not.toMatch(/[{}]|e[−-]|NaN|Infinity/u);
  });
});

describe('the instructions', () => {
  const text = readFileSync(new URL('README.md', folder), 'utf8');
  const [, example] = /```json\n([\s\S]*?)```/u.exec(text)!;

  it('name wires and cables in the order in which a lesson counts them', () => {
    for (const ids of [builtInWires, builtInCables].map((list) => list.map(({ id }) => `\`${id}\``)))
      expect(text).toContain(ids.join(', '));
  });

  it('name every number that can be varied and every figure', () => {
    for (const name of [...VARIABLE_KINDS, ...FIGURE_KINDS]) expect(text).toContain(`\`${name}\``);
  });

  it('hold an example that can be opened and has one right prediction', () => {
    const shelved = opened('README.md', example!);
    expect(computed(shelved).right.filter(Boolean)).toHaveLength(1);
  });
});
