/** A lesson's text in the language that is spoken, with its measures filled in in the units that are shown. Text stays text. */
import { spokenLanguage } from '#i18n/message';
import { statedLength, type StatedLength } from '#plan/lesson-lengths';
import type { Lesson, Measure, Words } from '#plan/lesson';
import { typeset } from '#units/digits';
import { format, joined, type FormatOptions } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { withoutRemainder } from '../sweep/remainder';
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

/** As people in a class say them, in feet with decimals: no sixteenths of an inch. */
const IMPERIAL: Partial<Record<QuantityKind, FormatOptions>> = {
  length: { unit: 'ft', digits: 3 },
  smallLength: { unit: 'in', digits: 3 }
};

const inLanguage = (words: Words): string => (spokenLanguage() === 'de' ? words.de : undefined) ?? words.en;

const BRACES = /\{([^{}]*)\}/gu;
const NO_BREAK_SPACE = '\u00a0';
const NO_BREAK_HYPHEN = '\u2011';

/** A number stays on one line with its unit, and with the word that is made of it: "5 Ω", "3,5-Fache". */
const together = (text: string): string =>
  text
    .replace(/(?<=\d) (?=(?:[nµmk]?[mFHΩ]|k?Hz|cm|ft|%)(?![\p{L}\d]))/gu, NO_BREAK_SPACE)
    .replace(/(?<=\d)-(?=\p{L})/gu, NO_BREAK_HYPHEN);

/** In feet or inches with the length as it was stated beside it, since that is the round one: "7.87 in (20 cm)". */
function lengthText({ metres, number, symbol }: StatedLength, system: UnitSystem): string {
  const written = joined(typeset(number), symbol);
  if (system === 'metric') return written;
  const kind = symbol === 'm' ? 'length' : 'smallLength';
  return `${format(metres, kind, 'imperial', IMPERIAL[kind]).text} (${written})`;
}

/** Every brace becomes what `filled` makes of it; null leaves it as it stands. */
const filledIn = (words: Words, system: UnitSystem, filled: (name: string) => string | null): string =>
  together(
    inLanguage(words).replace(BRACES, (braces, inner: string) => {
      const stated = statedLength(inner);
      const text = stated ? lengthText(stated, system) : filled(inner);
      return text?.replaceAll(' ', NO_BREAK_SPACE) ?? braces;
    })
  );

/** What is read before the outcome: its lengths in the units that are shown. The English where the language is missing. */
export const spoken = (words: Words, system: UnitSystem): string => filledIn(words, system, () => null);

export function measureText({ shown, digits }: Measure, value: number | null, system: UnitSystem): string {
  const isShare = shown === 'percent' || shown === 'number';
  const meant = isShare && value !== null ? withoutRemainder(value) : value;
  const options: FormatOptions = {
    ...(system === 'imperial' ? IMPERIAL[KINDS[shown]] : {}),
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
  filledIn(words, system, (name) => {
    const measure = Object.hasOwn(described, name) ? described[name] : undefined;
    return measure ? measureText(measure, measures.get(name) ?? null, system) : null;
  });
