/** The designs of a site side by side, as a file. */
import { designsCompared } from '#analysis/designs/compared';
import { t } from '#i18n/message';
import { designsTables } from '../tables/designs';
import { Unfit } from './exported';
import { csvExporter, workbookExporter } from './made';
import { reckoned } from './reckoned';

const part = () => t('exports.file.designs');
const tables: Parameters<typeof csvExporter>[1] = async ({ site }, surroundings, job) => {
  const designs = designsCompared(site);
  if (designs.length < 2) throw new Unfit(t('exports.oneDesign'));
  return designsTables(
    site,
    await reckoned(surroundings, 'compare-designs', { designs, pass: null }, site, job)
  );
};

export const designsCsv = csvExporter(part, tables);
export const designsXlsx = workbookExporter(part, tables);
