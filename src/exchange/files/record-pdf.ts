/** The commissioning record, and the empty form for it, as PDF. */
import type { CheckedCircuit } from '#analysis/fault-finding/checked';
import { t } from '#i18n/message';
import { pdfOf } from '../pdf/pdf';
import { composeForm, composeRecord } from '../sheet/record/compose';
import type { Sheet } from '../sheet/page';
import { clean } from '../sheet/text/clean';
import { Unfit, type Exporter, type ExportSource } from './exported';
import { fileNameFor } from './file-name';
import { reckoned } from './reckoned';

type Compose = (source: ExportSource, checked: readonly CheckedCircuit[]) => Sheet;

const pdfExporter =
  (compose: Compose, part: () => string, called: () => string): Exporter =>
  async (source, surroundings, job) => {
    const sheet = compose(source, await reckoned(surroundings, 'check-readings', {}, source.site, job));
    if (sheet.kind === 'unfit') throw new Unfit(sheet.message);
    const title = [source.site.name, called()].map(clean).filter(Boolean).join(' – ');
    return {
      name: fileNameFor(source.file, part(), 'pdf'),
      mediaType: 'application/pdf',
      content: await pdfOf(sheet.pages, { title }, await surroundings.typeface(), job)
    };
  };

export const recordPdf = pdfExporter(
  composeRecord,
  () => t('exports.file.record'),
  () => t('record.title')
);
export const formPdf = pdfExporter(
  composeForm,
  () => t('exports.file.form'),
  () => t('record.formTitle')
);
