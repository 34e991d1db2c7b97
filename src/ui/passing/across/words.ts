import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { placeText } from '../along/words';

/** Metres: nearer to the middle than this is the middle. */
const MIDDLE = 0.005;

/** "0.85 m left". */
export function pathText(site: Pick<Site, 'displayUnits'>, offset: number): string {
  if (Math.abs(offset) < MIDDLE) return t('across.middle');
  const text = placeText(site, Math.abs(offset));
  return t(offset < 0 ? 'across.left' : 'across.right', { offset: text });
}
