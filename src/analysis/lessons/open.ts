/** A lesson's text read whole: its fields, its site, and whether there is everything that its experiment varies and asks for. */
import { readLesson, type LessonReading } from '#plan/lesson';
import { experimentProblems } from './check';

/** Never throws. A lesson that this opens can be asked for its sweep. */
export function openLesson(text: string): LessonReading {
  const reading = readLesson(text);
  if (!reading.ok) return reading;
  const problems = experimentProblems(reading.lesson, reading.site);
  return problems.length > 0 ? { ok: false, problems } : reading;
}
