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

/** "A, B, and C". */
export const listed = (items: readonly string[]): string =>
  new Intl.ListFormat(spokenLanguage(), { type: 'conjunction' }).format(items);

/** A noun that begins with a capital, inside a sentence: German nouns keep theirs. */
export const withinSentence = (noun: string): string =>
  spokenLanguage() === 'en' ? noun.toLowerCase() : noun;
