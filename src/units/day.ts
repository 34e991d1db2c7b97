/** Days and hours as the language writes them: those of the wall clock where something was read, never converted to another place's. */
import { spokenLanguage } from '#i18n/message';

const WALL = /^(\d{4})-(\d\d)-(\d\d)(?:T(\d\d):(\d\d))?/;
const LOCALES = { en: 'en-GB', de: 'de' } as const;

/** "2025-11-26T08:12" of a stamp of ISO 8601, whatever its zone; empty for what is none. */
export function wallOf(at: string | undefined): string {
  const found = WALL.exec(at ?? '');
  return found ? `${found[1]}-${found[2]}-${found[3]}T${found[4] ?? '00'}:${found[5] ?? '00'}` : '';
}

/** Milliseconds along the wall's clock, for an axis; null for what is no date. */
export function wallTime(at: string | undefined): number | null {
  const wall = wallOf(at);
  const time = wall === '' ? Number.NaN : Date.parse(`${wall}:00Z`);
  return Number.isNaN(time) ? null : time;
}

const written = (at: string, options: Intl.DateTimeFormatOptions): string => {
  const time = wallTime(at);
  if (time === null) return at;
  return new Intl.DateTimeFormat(LOCALES[spokenLanguage()], { ...options, timeZone: 'UTC' }).format(time);
};

/** "26 Nov 2025"; what is no date stays as it is. */
export const dayText = (at: string): string => written(at, { dateStyle: 'medium' });

/** "08:12"; empty where only a day is known. */
export const hourText = (at: string): string =>
  /T\d\d:\d\d/.test(at) ? written(at, { hour: '2-digit', minute: '2-digit' }) : '';

/** "26 Nov 2025, 08:12". */
export const momentText = (at: string): string => {
  const hour = hourText(at);
  return hour === '' ? dayText(at) : `${dayText(at)}, ${hour}`;
};
