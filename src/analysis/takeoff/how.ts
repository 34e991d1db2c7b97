/** How a line came about: a message and its numbers, typed by the message; put into words by whoever shows it. */
import { t, type Arguments, type MessageKey, type PlainMessageKey } from '#i18n/message';
import type { How, HowValue } from './results';

type KeyUnder<Area extends string> = MessageKey extends infer Key
  ? Key extends `takeoff.${Area}.${infer Name}`
    ? Name
    : never
  : never;

type Given<Area extends string, Key extends string> =
  Arguments<Extract<MessageKey, `takeoff.${Area}.${Key}`>> extends [infer Values]
    ? [values: { readonly [Name in keyof Values]: HowValue | string }]
    : [];

export const how = <Key extends KeyUnder<'how'>>(key: Key, ...[values]: Given<'how', Key>): How => ({
  key,
  values: values ?? {}
});

export const caution = <Key extends KeyUnder<'caution'>>(
  key: Key,
  ...[values]: Given<'caution', Key>
): How => ({ key, values: values ?? {} });

const valueOf =
  (kind: HowValue['kind']) =>
  (value: number): HowValue => ({ value, kind });

export const [count, length, smallLength, volume, share, time, pace, perMetre] = (
  ['count', 'length', 'smallLength', 'volume', 'share', 'time', 'pace', 'perMetre'] as const
).map(valueOf) as unknown as readonly [V, V, V, V, V, V, V, V];
type V = (value: number) => HowValue;

/** The sentence, with every number as `say` writes it. */
const sentence = (
  area: 'how' | 'caution',
  { key, values }: How,
  say: (value: HowValue) => string
): string => {
  const said = Object.entries(values).map(([name, value]): [string, string] => [
    name,
    typeof value === 'string' ? value : say(value)
  ]);
  const speak = t as (key: PlainMessageKey, values: Readonly<Record<string, string>>) => string;
  return speak(`takeoff.${area}.${key}` as PlainMessageKey, Object.fromEntries(said));
};

export const howText = (how: How, say: (value: HowValue) => string): string => sentence('how', how, say);
export const cautionText = (each: How, say: (value: HowValue) => string): string =>
  sentence('caution', each, say);
