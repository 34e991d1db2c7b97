/** Why the browser would not keep something, from the error it threw. */

export type RefusalKind = 'full' | 'forbidden' | 'failed' | 'silent' | 'taken' | 'newer';

export interface Refusal {
  readonly kind: RefusalKind;
  /** The browser's own words. */
  readonly detail: string;
}

/** Another tab writes to this slot now. */
export class TakenOverError extends Error {
  override readonly name = 'TakenOverError';
}

/** A newer release writes to this slot: what it wrote might mean something that this one does not know. */
export class NewerReleaseError extends Error {
  override readonly name = 'NewerReleaseError';
}

/** The browser was asked and says nothing. */
export class SilentError extends Error {
  override readonly name = 'SilentError';
}

/** Each engine, and each of its storages, has its own name for a full disk. */
const FULL = new Set([
  'QuotaExceededError',
  'QUOTA_EXCEEDED_ERR',
  'NS_ERROR_DOM_QUOTA_REACHED',
  'NS_ERROR_DOM_INDEXEDDB_QUOTA_ERR',
  'NS_ERROR_FILE_NO_DEVICE_SPACE'
]);
const FULL_CODES = new Set<unknown>([22, 1014]);
const FORBIDDEN = new Set(['SecurityError', 'InvalidStateError', 'NotAllowedError']);
/** A database that a newer release has made over cannot be opened by an older one. */
const NEWER = new Set(['NewerReleaseError', 'VersionError']);
const FULL_WORDS = /quota|disk (?:is )?full|not enough (?:disk )?space|no space/i;

export function refusalOf(problem: unknown): Refusal {
  const { name, message, code } = (
    typeof problem === 'object' && problem !== null ? problem : { message: String(problem) }
  ) as { name?: unknown; message?: unknown; code?: unknown };
  const title = typeof name === 'string' ? name : '';
  const detail = [title, message].filter((word) => typeof word === 'string' && word !== '').join(': ');
  if (title === 'TakenOverError') return { kind: 'taken', detail };
  if (title === 'SilentError') return { kind: 'silent', detail };
  if (NEWER.has(title)) return { kind: 'newer', detail };
  if (FULL.has(title) || FULL_CODES.has(code) || FULL_WORDS.test(detail)) return { kind: 'full', detail };
  return { kind: FORBIDDEN.has(title) ? 'forbidden' : 'failed', detail };
}

/** Nothing that the same tab tries again can mend it. */
export const isFinal = ({ kind }: Refusal): boolean => kind === 'taken' || kind === 'newer';
