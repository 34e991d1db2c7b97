/** The lessons that come with the program, read and computed as the page does it. */
import { readFileSync, readdirSync } from 'node:fs';
import { openLesson } from '#analysis/lessons/open';
import { outcomeOf, type Outcome } from '#analysis/lessons/outcome';
import { sweepOf } from '#analysis/lessons/wish';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { SweepPicture } from '#analysis/sweep/results';
import { sweepInSteps } from '#analysis/sweep/sweep';
import type { Lesson } from '#plan/lesson';
import type { Site } from '#plan/schema';

export const folder = new URL('../../../lessons/', import.meta.url);

export interface Shelved {
  readonly file: string;
  readonly text: string;
  readonly lesson: Lesson;
  readonly site: Site;
}

/** Throws with every reason where a lesson cannot be opened. */
export function opened(file: string, text: string): Shelved {
  const reading = openLesson(text);
  if (!reading.ok) throw new Error(`${file}: ${reading.problems.map(({ message }) => message).join('\n')}`);
  return { file, text, lesson: reading.lesson, site: reading.site };
}

export const shelf: readonly Shelved[] = readdirSync(folder)
  .filter((name) => name.endsWith('.kerfline-lesson.json'))
  .sort()
  .map((file) => opened(file, readFileSync(new URL(file, folder), 'utf8')));

export interface Computed extends Outcome {
  readonly picture: SweepPicture;
  /** A measure that must be there. */
  readonly of: (name: string) => number;
}

const means = createMeans();

export function computed({ file, lesson, site }: Pick<Shelved, 'file' | 'lesson' | 'site'>): Computed {
  const picture = finish(sweepInSteps(site, sweepOf(lesson), means));
  if (!picture) throw new Error(`${file}: the experiment cannot be made`);
  const outcome = outcomeOf(lesson, picture);
  const of = (name: string): number => {
    const value = outcome.measures.get(name);
    if (typeof value !== 'number') throw new Error(`${file}: no ${name}`);
    return value;
  };
  return { ...outcome, picture, of };
}

const known = new Map<string, Computed>();

/** By the lesson's own id; computed once a test file. */
export function outcomeOfLesson(id: string): Computed {
  const found = known.get(id) ?? computed(shelf.find(({ lesson }) => lesson.id === id)!);
  known.set(id, found);
  return found;
}
