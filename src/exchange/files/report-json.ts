/** The report as a file: what the command prints for one file. */
import { t } from '#i18n/message';
import { breathe } from '../job';
import { reportJson, reportOf } from '../report';
import { designsReported } from '../report-designs';
import type { Exporter } from './exported';
import { fileNameFor } from './file-name';
import { reckoned } from './reckoned';

const INDENT = 2;

export const reportFile: Exporter = async ({ site, assessment, file }, surroundings, job) => {
  await breathe(job, 0);
  // a site on which nothing was read asks nobody
  const visits =
    site.readings.length > 0 ? await reckoned(surroundings, 'evaluate-readings', {}, site, job) : [];
  // and one without variants asks for none
  const designs = designsReported(site);
  const compared =
    designs.length > 0
      ? await reckoned(surroundings, 'compare-designs', { designs, pass: null }, site, job)
      : [];
  const content = `${reportJson(reportOf(site, file, assessment, visits, compared), INDENT)}\n`;
  await breathe(job, 1);
  return {
    name: fileNameFor(file, t('exports.file.report'), 'json'),
    mediaType: 'application/json',
    content
  };
};
