/** The lessons of this visit: those that come with the program, those from a person's own files, and how each went. */
import { SvelteMap } from 'svelte/reactivity';
import { openLesson } from '#analysis/lessons/open';
import { t } from '#i18n/message';
import type { Lesson } from '#plan/lesson';
import type { Problem } from '#plan/reading/problem';
import type { Site } from '#plan/schema';
import type { LessonShelf } from './shelf';

export interface OpenLesson {
  readonly lesson: Lesson;
  readonly site: Site;
  readonly isOwn: boolean;
}

export interface RefusedLesson {
  readonly name: string;
  /** `message`: the whole sentence, where it says more, such as the line of a text that is no JSON. */
  readonly problems: readonly (Omit<Problem, 'message'> & Partial<Pick<Problem, 'message'>>)[];
}

/** How a lesson ended: the prediction that was chosen came true, or another or none did. */
export type Ending = 'right' | 'other';

/** Bytes; far above a lesson with the largest site that one would look at in a class. */
const LARGEST = 5_000_000;

/** Kept while the page is open, whether the dialog is or not. */
const ended = new SvelteMap<string, Ending>();
const own = new SvelteMap<string, OpenLesson>();

export class LessonCollection {
  readonly ended: ReadonlyMap<string, Ending> = ended;
  #given = $state.raw<readonly OpenLesson[]>([]);
  #state = $state.raw<'loading' | 'there' | 'missing'>('loading');

  get all(): readonly OpenLesson[] {
    return [...this.#given, ...own.values()];
  }

  /** `missing`: some or all of them could not be loaded. */
  get state(): 'loading' | 'there' | 'missing' {
    return this.#state;
  }

  end(id: string, ending: Ending): void {
    ended.set(id, ending);
  }

  async load(shelf: () => Promise<LessonShelf>): Promise<void> {
    this.#state = 'loading';
    try {
      const { names, load } = await shelf();
      const texts = await Promise.allSettled(names.map(load));
      const read = texts.map((each) => (each.status === 'fulfilled' ? openLesson(each.value) : null));
      this.#given = read.flatMap((each) => (each?.ok ? [{ ...each, isOwn: false }] : []));
      this.#state = this.#given.length === names.length ? 'there' : 'missing';
    } catch {
      this.#state = 'missing';
    }
  }

  /** A lesson from a person's file, or why it is none. Never rejects. */
  async open(file: File): Promise<OpenLesson | RefusedLesson> {
    const refused = (found: string, expected: string): RefusedLesson => ({
      name: file.name,
      problems: [{ path: '', found, expected }]
    });
    if (file.size > LARGEST)
      return refused(
        t('lessons.tooLarge', { size: Math.ceil(file.size / 1e6) }),
        t('lessons.atMost', { size: LARGEST / 1e6 })
      );
    try {
      const reading = openLesson(await file.text());
      if (!reading.ok) return { name: file.name, problems: reading.problems };
      const lesson: OpenLesson = { lesson: reading.lesson, site: reading.site, isOwn: true };
      own.set(lesson.lesson.id, lesson);
      return lesson;
    } catch (problem) {
      return refused(problem instanceof Error ? problem.message : String(problem), t('lessons.readable'));
    }
  }
}
