/** Typed messages: a key that does not exist, or a parameter that is missing, does not compile. */
import { en } from './en';

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
type Arguments<Key extends MessageKey> = [NamesOf<Messages[Key]>] extends [never]
  ? []
  : [values: Values<NamesOf<Messages[Key]>>];

const plural = new Intl.PluralRules('en');

/** The message of that key; a message with `one` and `other` is chosen by its `count`. */
export function t<Key extends MessageKey>(key: Key, ...[values]: Arguments<Key>): string {
  const message: string | { readonly one: string; readonly other: string } = en[key];
  const given = values as Readonly<Record<string, string | number>> | undefined;
  const text =
    typeof message === 'string'
      ? message
      : message[plural.select(Number(given?.['count'])) === 'one' ? 'one' : 'other'];
  return text.replace(/\{(\w+)\}/g, (_, name: string) => String(given?.[name] ?? ''));
}
