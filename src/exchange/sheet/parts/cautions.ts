/** The usual cautions of work on a road, and the remarks of the user. */
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Block } from '../layout/block';
import { textsBlock } from '../layout/texts-block';
import { cleanLines } from '../text/clean';

export const cautions = (): Block =>
  textsBlock(
    t('sheet.cautions'),
    [
      t('sheet.caution.codes'),
      t('sheet.caution.safety'),
      t('sheet.caution.services'),
      t('sheet.caution.traffic'),
      t('sheet.caution.dust'),
      t('sheet.caution.mains'),
      t('sheet.caution.test'),
      t('sheet.caution.measure')
    ],
    '•'
  );

export function remarks({ sheet }: Pick<Site, 'sheet'>): Block {
  const lines = cleanLines(sheet?.remarks ?? '').filter((text) => text !== '');
  return textsBlock(t('sheet.remarks'), lines);
}
