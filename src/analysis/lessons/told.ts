/** A lesson's text in the language that is spoken, with its measures filled in in the units that are shown. Text stays text. */
import { spokenLanguage } from '#i18n/message';
import type { Lesson, Measure, Words } from '#plan/lesson';
import { format, type FormatOptions } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';
import type { Outcome } from './outcome';

const KINDS: Readonly<Record<Measure['shown'], QuantityKind>> = {
  number: 'plain',
  percent: 'ratio',
  length: 'length',
  smallLength: 'smallLength',
  inductance: 'inductance',
  frequency: 'frequency',
  resistance: 'resistance',
  time: 'time',
  count: 'count'
};

/** The English where the language is missing. */
export const spoken = (words: Words): string =>
  (spokenLanguage() === 'de' ? words.de : undefined) ?? words.en;

/** Shares and ratios below this are what rounding left of nothing: fields that cancel. */
const NOTHING = 1e-8;

export function measureText({ shown, digits }: Measure, value: number | null, system: UnitSystem): string {
  const isShare = shown === 'percent' || shown === 'number';
  const meant = isShare && value !== null && Math.abs(value) < NOTHING ? 0 : value;
  const options: FormatOptions = {
    ...(shown === 'percent' ? { unit: '%' } : {}),
    ...(digits === undefined ? {} : { digits })
  };
  return format(meant, KINDS[shown], system, options).text;
}

/** {name} becomes the measure; a dash where it could not be computed. */
export const told = (
  words: Words,
  { measures: described }: Pick<Lesson, 'measures'>,
  { measures }: Pick<Outcome, 'measures'>,
  system: UnitSystem
): string =>
  spoken(words).replace(/\{([^{}]*)\}/gu, (braces, name: string) => {
    const measure = Object.hasOwn(described, name) ? described[name] : undefined;
    if (!measure) return braces;
    // a number and its unit stay on one line
    return measureText(measure, measures.get(name) ?? null, system).replaceAll(' ', '\u00a0');
  });
