/**
 * From a lesson's text to a lesson and its site, or to every reason why not. Never throws and executes nothing. What only
 * `analysis` knows, such as which figures there are, `analysis/lessons/check.ts` checks.
 */
import { t, type PlainMessageKey } from '#i18n/message';
import { lessonConflicts } from './lesson-conflicts';
import { lesson as schema, LESSON_VERSION, type Lesson } from './lesson-schema';
import { readSiteValue } from './read';
import { expectedAt, valueAt } from './reading/expectation';
import { parseJson } from './reading/parse-json';
import { type Problem, inWords, problem } from './reading/problem';
import { scan } from './reading/scan';
import type { Site } from './schema';

export type { Lesson, Measure, Words } from './lesson-schema';

export type LessonReading =
  | { readonly ok: true; readonly lesson: Lesson; readonly site: Site }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const FORMAT = 'kerfline-lesson';

/** By the names that the schema gives its patterns. */
const FORMS: Readonly<Record<string, PlainMessageKey>> = {
  lessonId: 'lesson.id',
  measureName: 'lesson.measureForm'
};

type Raw = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function headerProblem({ format, version }: Raw): Problem | null {
  if (format !== FORMAT) return problem(['format'], inWords(format), `"${FORMAT}"`);
  const expected = t('read.theWholeNumber', { value: LESSON_VERSION });
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return problem(['version'], inWords(version), expected);
  if (version <= LESSON_VERSION) return null;
  const message = t('read.newer', { version, newest: LESSON_VERSION });
  return { path: 'version', found: String(version), expected, message };
}

/** Of the whole document, from one of its site. */
function inSite({ path, found, expected, message }: Problem): Problem {
  const where = `site${path === '' || path.startsWith('[') ? '' : '.'}${path}`;
  const usual = t('read.problem', { where: path === '' ? t('read.theFile') : path, found, expected });
  return {
    path: where,
    found,
    expected,
    message: message === usual ? t('read.problem', { where, found, expected }) : `${where}: ${message}`
  };
}

function fieldProblems(raw: Raw): readonly Problem[] {
  const result = schema.safeParse(raw);
  if (result.success) return [];
  return result.error.issues.flatMap((issue) => {
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) =>
        problem([...issue.path, key], t('lesson.unknownField'), t('lesson.knownFields'))
      );
    if (issue.code === 'invalid_key')
      return [problem(issue.path, inWords(issue.path.at(-1)), t('lesson.measureForm'))];
    const form = FORMS[issue.message];
    const expected = form ? t(form) : expectedAt(schema, raw, issue.path);
    return [problem(issue.path, inWords(valueAt(raw, issue.path)), expected)];
  });
}

const MOST_PROBLEMS = 50;

export function readLesson(text: string): LessonReading {
  const refused = (problems: readonly Problem[]): LessonReading => ({
    ok: false,
    problems: problems.slice(0, MOST_PROBLEMS)
  });
  const parsed = parseJson(text);
  if (!parsed.ok) {
    const isEmpty = parsed.problem.expected === t('read.siteDocument');
    return refused([isEmpty ? problem([], parsed.problem.found, t('lesson.document')) : parsed.problem]);
  }
  const raw = parsed.value;
  const { unsafe, infinite } = scan(raw);
  if (unsafe.length > 0) return refused(unsafe);
  if (!isObject(raw)) return refused([problem([], inWords(raw), t('read.object'))]);
  const wrongHeader = headerProblem(raw);
  if (wrongHeader) return refused([wrongHeader]);

  const fields = [...fieldProblems(raw), ...infinite];
  const site = isObject(raw['site']) ? readSiteValue(raw['site']) : null;
  const inTheSite = site && !site.ok ? site.problems.map(inSite) : [];
  if (fields.length > 0 || !site) return refused([...fields, ...inTheSite]);
  const lesson = schema.parse(raw);
  const problems = [...inTheSite, ...lessonConflicts(lesson)];
  return problems.length > 0 || !site.ok ? refused(problems) : { ok: true, lesson, site: site.site };
}
