/** The measured readings, with what was expected of them, as a file. */
import { t } from '#i18n/message';
import { measuredTables } from '../tables/measured';
import { csvExporter, workbookExporter } from './made';
import { reckoned } from './reckoned';

const part = () => t('exports.file.measured');
const tables: Parameters<typeof csvExporter>[1] = async ({ site }, surroundings, job) =>
  measuredTables(site, await reckoned(surroundings, 'check-readings', {}, site, job));

export const measuredCsv = csvExporter(part, tables);
export const measuredXlsx = workbookExporter(part, tables);
