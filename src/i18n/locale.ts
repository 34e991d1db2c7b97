/** How the spoken language writes numbers, dates and lists. */
import { DECIMAL_SIGNS, spokenLanguage, type DecimalSign, type Language } from './message';

export type { DecimalSign } from './message';

/** Day before month, 24 hours, whoever reads it. */
const DATES: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de' };

export const decimalSign = (): DecimalSign => DECIMAL_SIGNS[spokenLanguage()];

/** A date with the time of day; milliseconds since 1970. */
export const dateTime = (at: number): string =>
  new Intl.DateTimeFormat(DATES[spokenLanguage()], { dateStyle: 'medium', timeStyle: 'short' }).format(at);

/** Hours and minutes; milliseconds since 1970. */
export const timeOfDay = (at: number): string =>
  new Intl.DateTimeFormat(DATES[spokenLanguage()], { hour: '2-digit', minute: '2-digit' }).format(at);

/** Names that hold a comma are told apart by semicolons. */
const isComposite = (items: readonly string[]): boolean => items.some((item) => item.includes(','));

/** "A, B, and C". */
export function listed(items: readonly string[]): string {
  const format = new Intl.ListFormat(spokenLanguage(), { type: 'conjunction' });
  if (!isComposite(items)) return format.format(items);
  return format
    .formatToParts(items)
    .map(({ type, value }) => (type === 'literal' ? value.replace(/^,/, ';') : value))
    .join('');
}

/** "A, B, C". */
export const inRow = (items: readonly string[]): string => items.join(isComposite(items) ? '; ' : ', ');

/** A noun that begins with a capital, inside a sentence: German nouns keep theirs. */
export const withinSentence = (noun: string): string =>
  spokenLanguage() === 'en' ? noun.toLowerCase() : noun;
