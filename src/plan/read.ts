/**
 * From a file's text to a site, or to every reason why not. Never throws. All or nothing: a document with one wrong
 * field is refused whole, so that nothing is computed from a guess.
 */
import { t } from '#i18n/message';
import { followRoutes, followVariants } from './lead-out';
import { type JsonObject, migrate } from './migrations/index';
import { readFields } from './reading/fields';
import { headerProblem } from './reading/header';
import { readableLists } from './reading/lists';
import { parseJson } from './reading/parse-json';
import { impossibilities } from './reading/possibility';
import { type Problem, inWords, problem } from './reading/problem';
import { danglingReferences, duplicates } from './reading/references';
import { scan } from './reading/scan';
import { variantProblems } from './reading/variants';
import type { Site } from './schema';

export { emptySite } from './empty';
export type { Problem } from './reading/problem';
export { writeSite } from './write';

export type Reading =
  { readonly ok: true; readonly site: Site } | { readonly ok: false; readonly problems: readonly Problem[] };

const MOST_PROBLEMS = 50;

/** The first problem of each place, in the order given, the rest of a long list only counted. */
function refused(problems: readonly Problem[]): Reading {
  const byPlace = new Map<string, Problem>();
  for (const each of problems) if (!byPlace.has(each.path)) byPlace.set(each.path, each);
  const distinct = [...byPlace.values()];
  const more = distinct.length - MOST_PROBLEMS;
  if (more <= 0) return { ok: false, problems: distinct };
  const rest = {
    path: '',
    found: t('read.problems', { count: distinct.length }),
    expected: t('read.none'),
    message: t('read.more', { count: more })
  };
  return { ok: false, problems: [...distinct.slice(0, MOST_PROBLEMS), rest] };
}

const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A file may name its display system `units`, the name that the list of units has; the list is then empty. */
function withDisplayUnits(document: JsonObject): JsonObject {
  const { units, ...rest } = document;
  return units === 'metric' || units === 'imperial' ? { ...rest, displayUnits: units, units: [] } : document;
}

export function readSite(text: string): Reading {
  const parsed = parseJson(text);
  if (!parsed.ok) return refused([parsed.problem]);
  return readSiteValue(parsed.value);
}

/** The same from plain values, such as the site inside another document. */
export function readSiteValue(value: unknown): Reading {
  const { unsafe, infinite } = scan(value);
  if (unsafe.length > 0) return refused(unsafe);
  if (!isObject(value)) return refused([problem([], inWords(value), t('read.object'))]);
  const wrongHeader = headerProblem(value);
  if (wrongHeader) return refused([wrongHeader]);

  const document = withDisplayUnits(migrate(value, Number(value['version'])));
  const fields = readFields(document);
  const lists = readableLists(document);
  const problems = [
    ...(fields.ok ? [] : fields.problems),
    ...infinite,
    ...duplicates(document),
    ...danglingReferences(document, lists),
    ...impossibilities(lists),
    ...variantProblems(document)
  ];
  return fields.ok && problems.length === 0
    ? { ok: true, site: followVariants(followRoutes(fields.site)) }
    : refused(problems);
}
