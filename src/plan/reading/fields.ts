/** The schema's verdict on a document, one problem a place, in words. */
import { site } from '../schema';
import { expectedAt, valueAt } from './expectation';
import { type Problem, inWords, problem } from './problem';

export type Fields =
  | { readonly ok: true; readonly site: ReturnType<typeof site.parse> }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export function readFields(document: unknown): Fields {
  const result = site.safeParse(document);
  if (result.success) return { ok: true, site: result.data };
  const problems = result.error.issues.map(({ path }) =>
    problem(path, inWords(valueAt(document, path)), expectedAt(site, document, path))
  );
  return { ok: false, problems };
}
