/** What the schema wants at a place of the document, in words: both bounds of a number, all choices of a list. */
import { t } from '#i18n/message';
import { z } from 'zod';
import { BASE64 } from '../schema/drawing';
import { CURRENCY } from '../schema/estimate';
import type { Path } from './problem';

const choices = (values: readonly unknown[]): string =>
  values.length === 1
    ? `"${String(values[0])}"`
    : t('read.oneOf', { choices: values.map((value) => `"${String(value)}"`).join(', ') });

function kindsOf(union: z.ZodDiscriminatedUnion): string {
  return choices(union.options.flatMap((option) => literalsOf(option, union.def.discriminator)));
}

const literalsOf = (option: unknown, key: string): readonly unknown[] => {
  const field: unknown = option instanceof z.ZodObject ? option.shape[key] : undefined;
  return field instanceof z.ZodLiteral ? [...field.values] : [];
};

function countOf(schema: z.ZodArray): string {
  let least = 0;
  let most: number | null = null;
  for (const check of schema.def.checks ?? []) {
    if (check instanceof z.core.$ZodCheckMinLength) least = check._zod.def.minimum;
    if (check instanceof z.core.$ZodCheckMaxLength) most = check._zod.def.maximum;
  }
  if (most === null) return least > 0 ? t('read.listAtLeast', { least }) : t('read.list');
  return least > 0 ? t('read.listRange', { least, most }) : t('read.listAtMost', { most });
}

function numberOf(schema: z.ZodNumber): string {
  const bounds = { min: String(schema.minValue), max: String(schema.maxValue) };
  return schema.isInt ? t('read.wholeNumber', bounds) : t('read.number', bounds);
}

const looksLike = (schema: z.ZodString, pattern: RegExp): boolean =>
  (schema.def.checks ?? []).some(
    (check) => check instanceof z.core.$ZodCheckRegex && check._zod.def.pattern === pattern
  );

function textOf(schema: z.ZodString): string {
  const least = schema.minLength ?? 0;
  const most = String(schema.maxLength);
  if (looksLike(schema, CURRENCY)) return t('read.currency');
  if (looksLike(schema, BASE64)) return t('read.bytes', { most });
  return least > 0 ? t('read.textRange', { least, most }) : t('read.textAtMost', { most });
}

const isWrapper = (schema: unknown) =>
  schema instanceof z.ZodDefault || schema instanceof z.ZodOptional || schema instanceof z.ZodNullable;

/** In words; null for a kind of schema that the document does not use. */
function expectation(schema: unknown): string | null {
  if (schema instanceof z.ZodNullable)
    return t('read.orNull', { expected: String(expectation(schema.unwrap())) });
  if (isWrapper(schema)) return expectation(schema.unwrap());
  if (schema instanceof z.ZodNumber) return numberOf(schema);
  if (schema instanceof z.ZodString) return textOf(schema);
  if (schema instanceof z.ZodBoolean) return t('read.trueOrFalse');
  if (schema instanceof z.ZodLiteral) return choices([...schema.values]);
  if (schema instanceof z.ZodEnum) return choices(schema.options);
  if (schema instanceof z.ZodTuple) return t('read.numbers', { count: schema.def.items.length });
  if (schema instanceof z.ZodArray) return countOf(schema);
  if (schema instanceof z.ZodObject || schema instanceof z.ZodDiscriminatedUnion) return t('read.object');
  if (schema instanceof z.ZodRecord) return t('read.object');
  return null;
}

const field = (value: unknown, key: PropertyKey): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined;

export const valueAt = (value: unknown, path: Path): unknown => path.reduce<unknown>(field, value);

/** One step down the schema; `value` tells which member of a union applies. */
function child(schema: unknown, key: PropertyKey, value: unknown): unknown {
  if (isWrapper(schema)) return child(schema.unwrap(), key, value);
  if (schema instanceof z.ZodObject) return schema.shape[String(key)];
  if (schema instanceof z.ZodArray) return schema.element;
  if (schema instanceof z.ZodRecord) return schema.valueType;
  if (schema instanceof z.ZodTuple) return schema.def.items[Number(key)];
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return undefined;
  const by = schema.def.discriminator;
  const option = schema.options.find((each) => literalsOf(each, by).includes(field(value, by)));
  return child(option, key, value);
}

/** What belongs at `path`, in words; `root` is the whole raw document. */
export function expectedAt(schema: unknown, root: unknown, path: Path): string {
  let here = schema;
  let value = root;
  for (const key of path) {
    const below = child(here, key, value);
    if (below === undefined && here instanceof z.ZodDiscriminatedUnion) return kindsOf(here);
    here = below;
    value = field(value, key);
  }
  return expectation(here) ?? t('read.anotherValue');
}
