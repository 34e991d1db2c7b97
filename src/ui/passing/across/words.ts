import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';

/** Metres: nearer to the middle than this is the middle. */
const MIDDLE = 0.005;

/** "0.85 m left". */
export function pathText({ displayUnits }: Pick<Site, 'displayUnits'>, offset: number): string {
  if (Math.abs(offset) < MIDDLE) return t('across.middle');
  const text = format(Math.abs(offset), 'length', displayUnits).text;
  return t(offset < 0 ? 'across.left' : 'across.right', { offset: text });
}
