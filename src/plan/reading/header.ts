/** Is this one of our documents, and of a version that we know? */
import { t } from '#i18n/message';
import { type Migration, newestVersion } from '../migrations/index';
import { type Problem, inWords, problem } from './problem';

const FORMAT = 'kerfline-site';

const article = (newest: number) =>
  newest === 1 ? t('read.theWholeNumber', { value: 1 }) : t('read.wholeNumber', { min: 1, max: newest });

/** Null when the header is sound; `version` then is a whole number from 1 to the chain's newest. */
export function headerProblem(
  document: Readonly<Record<string, unknown>>,
  chain?: readonly Migration[]
): Problem | null {
  const { format, version } = document;
  const newest = newestVersion(chain);
  if (format !== FORMAT) return problem(['format'], inWords(format), `"${FORMAT}"`);
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return problem(['version'], inWords(version), article(newest));
  if (version <= newest) return null;
  const message = t('read.newer', { version, newest });
  return { path: 'version', found: String(version), expected: article(newest), message };
}
