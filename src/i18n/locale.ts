/** How the spoken language writes numbers, dates and lists. */
import { spokenLanguage, type Language } from './message';

export type DecimalSign = '.' | ',';

interface Habits {
  readonly decimalSign: DecimalSign;
  /** Day before month, 24 hours, whoever reads it. */
  readonly dates: string;
}

const HABITS: Readonly<Record<Language, Habits>> = {
  en: { decimalSign: '.', dates: 'en-GB' },
  de: { decimalSign: ',', dates: 'de' }
};

export const decimalSign = (language: Language = spokenLanguage()): DecimalSign =>
  HABITS[language].decimalSign;

/** A date with the time of day; milliseconds since 1970. */
export const dateTime = (at: number): string =>
  new Intl.DateTimeFormat(HABITS[spokenLanguage()].dates, { dateStyle: 'medium', timeStyle: 'short' }).format(
    at
  );

/** Hours and minutes; milliseconds since 1970. */
export const timeOfDay = (at: number): string =>
  new Intl.DateTimeFormat(HABITS[spokenLanguage()].dates, { hour: '2-digit', minute: '2-digit' }).format(at);

/** "A, B, and C". */
export const listed = (items: readonly string[]): string =>
  new Intl.ListFormat(spokenLanguage(), { type: 'conjunction' }).format(items);

/** A noun that begins with a capital, inside a sentence: German nouns keep theirs. */
export const withinSentence = (noun: string): string =>
  spokenLanguage() === 'en' ? noun.toLowerCase() : noun;
