/** The sheet as PDF. */
import { t } from '#i18n/message';
import { pdfOf } from '../pdf/pdf';
import { composeSheet } from '../sheet/compose';
import { designsOnSheet } from '../sheet/parts/designs';
import { clean } from '../sheet/text/clean';
import { Unfit, type Exporter } from './exported';
import { fileNameFor } from './file-name';
import { reckoned } from './reckoned';

/** Rejects with `Unfit` where the scale that is asked for does not fit: nothing is ever made smaller in silence. */
export const sheetPdf: Exporter = async (source, surroundings, job) => {
  const wish = designsOnSheet(source.site);
  const designs = wish && (await reckoned(surroundings, 'compare-designs', wish, source.site, job));
  const sheet = composeSheet({ ...source, designs });
  if (sheet.kind === 'unfit') throw new Unfit(sheet.message);
  const title = [source.site.name, source.site.sheet?.number ?? ''].map(clean).filter(Boolean).join(' – ');
  return {
    name: fileNameFor(source.file, t('exports.file.sheet'), 'pdf'),
    mediaType: 'application/pdf',
    content: await pdfOf(sheet.pages, { title }, await surroundings.typeface(), job)
  };
};
