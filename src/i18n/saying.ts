/**
 * Words that are kept: the name of a step in the history outlives a change of language, so that it is said anew whenever it
 * is read. What a thing or a person is called stays as it was.
 */
import { t, type Arguments, type MessageKey } from './message';

export type Saying = () => string;

/** What stays as it was written, or is said anew. */
export type Words = string | Saying;

export const told = (words: Words): string => (typeof words === 'string' ? words : words());

type OrSaid<Given> = Given extends [values: infer Values]
  ? [values: { readonly [Name in keyof Values]: Values[Name] | Saying }]
  : [];

/** A message to be said later, in the language of then. */
export const saying =
  <Key extends MessageKey>(key: Key, ...[values]: OrSaid<Arguments<Key>>): Saying =>
  () => {
    const entries = Object.entries((values ?? {}) as Readonly<Record<string, string | number | Saying>>);
    const said = entries.map(([name, value]) => [name, typeof value === 'function' ? value() : value]);
    // of the same names as the values that were asked for
    return t(key, ...([Object.fromEntries(said)] as unknown as Arguments<Key>));
  };
