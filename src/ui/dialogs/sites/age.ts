/** How long ago something was kept, in the largest unit that makes a whole number of it. */
import { t } from '#i18n/message';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** Milliseconds since 1970 both. */
export function ageInWords(at: number, now: number): string {
  const age = Math.max(0, now - at);
  if (age < HOUR) return t('sites.minutes', { count: Math.round(age / MINUTE) });
  if (age < DAY) return t('sites.hours', { count: Math.round(age / HOUR) });
  return t('sites.days', { count: Math.round(age / DAY) });
}
