/**
 * Entries of the catalogue speak in the spoken language whenever they are read: they are made once and outlive a change of
 * language. A copy (a vehicle taken over into a site, a message to the worker) holds the words as they were.
 */
import { t, type PlainMessageKey } from '#i18n/message';

type Spoken<Field extends string> = { readonly [F in Field]: string };

/** Ids come from data; a test sees to it that each has its message. */
const spoken = <T extends object, Field extends string>(
  thing: T,
  field: Field,
  key: string
): T & Spoken<Field> =>
  Object.defineProperty(thing, field, {
    enumerable: true,
    get: () => t(key as PlainMessageKey)
  }) as T & Spoken<Field>;

const named = <T extends object>(thing: T, key: string): T & Spoken<'name'> =>
  spoken({ ...thing }, 'name', `catalogue.${key}`);

export const withSpokenNames = <E extends { readonly id: string }>(
  entries: readonly E[]
): readonly (E & Spoken<'name'>)[] => entries.map((entry) => named(entry, entry.id));

interface Parted {
  readonly id: string;
  readonly parts: readonly { readonly name?: string | undefined }[];
}

/**
 * Vehicles also say where their sizes come from, and what their parts are: the name in the data is the end of the part's
 * message's key.
 */
export const withSpokenParts = <E extends Parted>(
  entries: readonly E[]
): readonly (E & Spoken<'name' | 'source'>)[] =>
  withSpokenNames(
    entries.map((entry) => ({
      ...entry,
      parts: entry.parts.map((part) => (part.name === undefined ? part : named(part, `part.${part.name}`)))
    }))
  ).map((entry) => spoken(entry, 'source', `source.${entry.id}`));
