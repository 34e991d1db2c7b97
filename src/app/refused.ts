/** Files that cannot be opened, in words. */
import { t } from '#i18n/message';
import { LARGEST_FILE, type Opened } from '#storage/files';
import { refusalOf } from '#storage/refusal';
import type { RefusedFile } from '#ui/bench';

const megabytes = (bytes: number) => (bytes / 1e6).toFixed(0);

export const tooLarge = ({ name, size }: Extract<Opened, { kind: 'too large' }>): RefusedFile => {
  const found = t('file.tooLarge', { size: megabytes(size) });
  const expected = t('file.atMost', { size: megabytes(LARGEST_FILE) });
  return { name, problems: [{ path: '', found, expected }], isNewer: false };
};

/** `problem`: whatever was thrown while it was read. */
export const unreadable = (name: string, problem: unknown): RefusedFile => {
  const found = t('file.unreadable', { reason: refusalOf(problem).detail });
  return { name, problems: [{ path: '', found, expected: t('file.readable') }], isNewer: false };
};
