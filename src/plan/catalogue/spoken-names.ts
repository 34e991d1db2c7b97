/**
 * Entries of the catalogue name themselves in the spoken language whenever they are read: they are made once and outlive a
 * change of language. A copy (a vehicle taken over into a site, a message to the worker) holds the name as it was.
 */
import { t, type PlainMessageKey } from '#i18n/message';

/** Ids come from data; a test sees to it that each has its message. */
const named = <T extends object>(thing: T, key: string): T & { readonly name: string } =>
  Object.defineProperty({ ...thing }, 'name', {
    enumerable: true,
    get: () => t(`catalogue.${key}` as PlainMessageKey)
  }) as T & { readonly name: string };

export const withSpokenNames = <E extends { readonly id: string }>(
  entries: readonly E[]
): readonly (E & { readonly name: string })[] => entries.map((entry) => named(entry, entry.id));

interface Parted {
  readonly id: string;
  readonly parts: readonly { readonly name?: string | undefined }[];
}

/** Its parts, too: the name in the data is the end of their message's key. */
export const withSpokenParts = <E extends Parted>(
  entries: readonly E[]
): readonly (E & { readonly name: string })[] =>
  withSpokenNames(
    entries.map((entry) => ({
      ...entry,
      parts: entry.parts.map((part) => (part.name === undefined ? part : named(part, `part.${part.name}`)))
    }))
  );
