/**
 * Typed messages: a key that does not exist, or a parameter that is missing, does not compile.
 *
 * Every room may say something, so this one knows no other; the messages come in bundles, in one language at a time, and
 * whoever starts (page, worker, report, tests) brings the bundles that it needs: see `load.ts`.
 */
import type { en } from './en';

type Messages = typeof en;
export type MessageKey = keyof Messages;

type Names<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Names<Rest>
  : never;
type NamesOf<Message> = Message extends string
  ? Names<Message>
  : Message extends { readonly one: infer One extends string; readonly other: infer Other extends string }
    ? Names<One> | Names<Other> | 'count'
    : never;

/** Messages that need nothing filled in. */
export type PlainMessageKey = {
  [Key in MessageKey]: [NamesOf<Messages[Key]>] extends [never] ? Key : never;
}[MessageKey];

type Values<Name extends string> = { readonly [N in Name]: N extends 'count' ? number : string | number };
export type Arguments<Key extends MessageKey> = [NamesOf<Messages[Key]>] extends [never]
  ? []
  : [values: Values<NamesOf<Messages[Key]>>];

type Text = string | { readonly one: string; readonly other: string };

/** The same messages in another language. */
export type Translation = {
  readonly [Key in MessageKey]: Messages[Key] extends string
    ? string
    : { readonly one: string; readonly other: string };
};

export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

export type DecimalSign = '.' | ',';
export const DECIMAL_SIGNS: Readonly<Record<Language, DecimalSign>> = { en: '.', de: ',' };

let language: Language = 'en';
let spoken: Readonly<Record<string, Text>> = {};
let plural = new Intl.PluralRules(language);

export const spokenLanguage = (): Language => language;

/** Adds messages; another language than before drops the ones that there were. */
export function speak(next: Language, messages: Readonly<Record<string, Text>>): void {
  spoken = next === language ? { ...spoken, ...messages } : { ...messages };
  if (next === language) return;
  language = next;
  plural = new Intl.PluralRules(next);
}

/** The keys of the messages that read so, with nothing to fill in. */
export const keysOf = (text: string): readonly PlainMessageKey[] =>
  Object.entries(spoken)
    .filter(([, message]) => message === text)
    .map(([key]) => key as PlainMessageKey);

/** Marks that turn the direction of whatever follows them: in a name they would turn the rest of the sentence. */
const TURNING = /[\u202a-\u202e\u2066-\u2069]/g;
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;

/** A value that leaves the words around it where they are. */
function contained(value: string): string {
  const plain = value.replace(TURNING, '');
  return RIGHT_TO_LEFT.test(plain) ? `\u2068${plain}\u2069` : plain;
}

/** The message of that key; a message with `one` and `other` is chosen by its `count`. */
export function t<Key extends MessageKey>(key: Key, ...[values]: Arguments<Key>): string {
  const message = spoken[key] ?? key;
  const given = values as Readonly<Record<string, string | number>> | undefined;
  const text =
    typeof message === 'string'
      ? message
      : message[plural.select(Number(given?.['count'])) === 'one' ? 'one' : 'other'];
  return text.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = given?.[name] ?? '';
    return typeof value === 'number' ? String(value).replace('.', DECIMAL_SIGNS[language]) : contained(value);
  });
}
