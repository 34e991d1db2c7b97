/** The lessons that come with the program: every file of the folder is one, each loaded when somebody asks for it. */
import type { LessonShelf } from '#ui/lessons/shelf';

const ENDING = '.kerfline-lesson.json';
const FILES: Readonly<Record<string, () => Promise<string>>> = import.meta.glob<string>(
  '../../lessons/*.kerfline-lesson.json',
  { query: '?raw', import: 'default' }
);

const byName = new Map(
  Object.entries(FILES).map(([path, load]) => [path.slice(path.lastIndexOf('/') + 1, -ENDING.length), load])
);

export const lessonShelf: LessonShelf = {
  // their files are numbered in that order
  names: [...byName.keys()].sort(),
  async load(name) {
    const load = byName.get(name);
    if (!load) throw new RangeError(`no lesson ${name}`);
    return load();
  }
};
